import {ascii} from './ascii.js';

/** Every key of the check, in one table: the foot lines are printed from it. */
export const hints = {
	accept: 'Enter accept',
	choose: 'digit or Enter',
	yesNo: 'y yes · n not yet',
	still: 'y all so · number of what is not',
	settle: 'Space settle',
	side: 'one key answers',
	close: 'other keys close',
	pages: '← → pages',
	back: 'Esc back',
	why: '? why',
	steps: 'Tab steps, stop',
	leave: 'Ctrl+C leave',
} as const;

export type HintId = keyof typeof hints;

/** The foot line, in ASCII where the terminal has no more. */
export const footText = (ids: readonly HintId[], unicode: boolean): string => {
	const text = ids.map((id) => hints[id]).join(' · ');
	return unicode ? text : ascii(text.replaceAll(' · ', ', '));
};
