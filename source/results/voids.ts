import {line, type Shown} from '../pages/shown-lines.js';
import {readText} from '../procedure/read-answer.js';
import type {Option} from '../procedure/step.js';

/** Whether a past check is marked void, and marks of that kind that were taken back. */
export type Voids = {
	readonly voided?: {readonly reason: string; readonly at: string} | undefined;
	readonly formerVoids?:
		| readonly {readonly reason: string; readonly at: string; readonly takenBackAt: string}[]
		| undefined;
};

const typedReason = 'typed';
const reasons = [
	'something was forgotten before the probe',
	'the deck was disturbed',
	'another arm or profile was meant',
	'it was only tried out',
] as const;

/** Reasons for marking a check void, by number; the last one is typed. */
export const voidReasons: readonly Option[] = [
	...reasons.map((reason) => ({id: reason, label: reason})),
	{id: typedReason, label: 'another reason (type it)'},
];
export const isTypedReason = (id: string): boolean => id === typedReason;

/** A reason as it is kept: one line, at most 80 letters. */
export function readReason(typed: string): {ok: true; reason: string} | {ok: false; sentence: string} {
	const read = readText(typed.trim());
	return read.kind === 'value'
		? {ok: true, reason: read.typed}
		: {ok: false, sentence: 'Type the reason in a few words, at most 80 letters.'};
}

/** What stands beside a past check about its being void. */
export const voidLines = ({voided, formerVoids = []}: Voids): Shown[] => [
	...(voided
		? [
				line(
					`VOID since ${voided.at.slice(0, 10)}: ${voided.reason}. It does not count: comparisons, trend and the day of the next check leave it out.`,
					'bad',
				),
			]
		: []),
	...formerVoids.map(({reason, at, takenBackAt}) =>
		line(`Was void from ${at.slice(0, 10)} to ${takenBackAt.slice(0, 10)} (${reason}); counts again.`),
	),
];
