import type {Check} from '../../check/check.js';
import type {IdOf, StepId} from '../../procedure/step-ids.js';
import {dayText} from '../../words/dates.js';
import {reportWords} from '../../words/reports.js';
import type {Imprint} from '../check-source.js';
import {type Phrase, typed} from '../report.js';

const {about} = reportWords;

/** The name of the arm, as it was typed. */
export const armName = (check: Check): string => typedAt(check, 'arm-name') ?? about.unnamedArm;

/** What was typed at a step, where it was. */
export const typedAt = (check: Check, step: StepId): string | undefined => {
	const text = check.answers[step]?.typed;
	return text === undefined || text === '' ? undefined : text;
};

/** A force that was typed in some unit, in that of the scale and in mN. */
export const forceAt = (check: Check, step: IdOf<'number'>): string => {
	const value = check.answers[step]?.value;
	return typeof value === 'number' ? about.force(value) : '';
};

const named = [
	'arm-serial',
	'cartridge-name',
	'playing-force',
	'tools-name',
	'room-temperature',
	'room-note',
] as const satisfies readonly (keyof typeof about.answers)[];

/** What a check is about: day, arm, cartridge, gauge, room. */
export const aboutCheck = (check: Check): (readonly [string, Phrase])[] => [
	...(check.practice ? [[about.practice, about.invented] as const] : []),
	[about.arm, typed(armName(check))],
	[about.date, dayText(check.startedAt.slice(0, 10))],
	...named.flatMap((step) => {
		const text = typedAt(check, step);
		return text === undefined
			? []
			: [[about.answers[step], step === 'playing-force' ? forceAt(check, step) : typed(text)] as const];
	}),
];

/** Where a report comes from. */
export const imprinted = ({version, writtenOn}: Imprint, {id, program}: Check) => ({
	id,
	program,
	day: dayText(writtenOn),
	version,
});

/** What stands at the head of every printed page. */
export const runningHead = (arm: string, {startedAt}: Check) => ({arm, day: dayText(startedAt.slice(0, 10))});
