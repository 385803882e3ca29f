import {listed} from '../../words/wording.js';
import type {ArmOnFile} from './arm-on-file.js';

const counted = (count: number, word: string): string => `${count} ${word}${count === 1 ? '' : 's'}`;

const partsOf = ({checkIds, profile}: ArmOnFile): string =>
	listed([...(checkIds.length > 0 ? [counted(checkIds.length, 'check')] : []), ...(profile ? ['its profile'] : [])]);

/** What is about to go, and where it is kept. */
export function goingLines(arm: ArmOnFile, file: string): string[] {
	const {name, formerNames, days, remarks} = arm;
	const noted = remarks === 0 ? '' : `, with what is noted beside ${counted(remarks, 'check')}`;
	return [
		`${name}: ${partsOf(arm)}${days.length === 0 ? '' : ` (${days.join(' to ')})`}${noted}.`,
		...(formerNames.length > 0 ? [`Called ${listed(formerNames.map((one) => `"${one}"`))} before.`] : []),
		`All of it goes for good, once a back-up is written to "${file}".`,
	];
}

/** What went, and the way back. */
export const goneLines = (arm: ArmOnFile, file: string, wayBack: string): string[] => [
	`Deleted ${arm.name}: ${partsOf(arm)}.`,
	`Back-up: "${file}". To bring it back: ${wayBack}`,
];

/** A word as it is typed in a shell. */
export const asTyped = (word: string): string =>
	/^[\w./:@%+,=-]+$/.test(word) ? word : `'${word.replaceAll("'", "'\\''")}'`;
