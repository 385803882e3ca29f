const CHECK_ID = /^\d{8}-\d{6}-[0-9a-z]{4,32}$/;
const RANDOM_LETTERS = 8;

/**
 * A new id for a check: start time in UTC, then random letters, so that ids sort by start and two copies never meet.
 * Lower case and digits only: it becomes a file name.
 */
export const newCheckId = (start: Date, random: () => number = Math.random): string => {
	const time = start.toISOString().slice(0, 19).replace(/[-:]/g, '').replace('T', '-');
	const letters = Array.from({length: RANDOM_LETTERS}, () => Math.floor(random() * 36).toString(36));
	return `${time}-${letters.join('')}`;
};

/** Whether a text has the form of a check's id; nothing else ever becomes a file name. */
export const isCheckId = (text: string): boolean => CHECK_ID.test(text);

/** Month of the start of a check in UTC, `2026-11`. */
export const monthOf = (id: string): string => `${id.slice(0, 4)}-${id.slice(4, 6)}`;
