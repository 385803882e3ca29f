import type {Check} from '../../check/check.js';
import {dayText} from '../../pages/years/day-text.js';
import type {StepId} from '../../procedure/step-ids.js';
import type {Imprint} from '../check-source.js';
import {typed, type Words} from '../report.js';

/** The name of the arm, as it was typed. */
export const armName = (check: Check): string => typedAt(check, 'arm-name') ?? 'unnamed arm';

const typedAt = (check: Check, step: StepId): string | undefined => {
	const text = check.answers[step]?.typed;
	return text === undefined || text === '' ? undefined : text;
};

const named = [
	['arm-serial', 'Serial number'],
	['cartridge-name', 'Cartridge'],
	['playing-force', 'Playing force'],
	['tools-name', 'Gauge and tools'],
	['room-temperature', 'Room'],
	['room-note', 'Note'],
] as const;

/** What a check is about: day, arm, cartridge, gauge, room. */
export const aboutCheck = (check: Check): (readonly [string, Words])[] => [
	...(check.practice ? [['Practice', 'an invented arm: nothing here is real'] as const] : []),
	['Arm', typed(armName(check))],
	['Date', dayText(check.startedAt.slice(0, 10))],
	...named.flatMap(([step, name]) => {
		const text = typedAt(check, step);
		return text === undefined ? [] : [[name, typed(text)] as const];
	}),
];

/** Where a report comes from. */
export const footOf = ({version, writtenOn}: Imprint, check: Check): string =>
	`Check ${check.id}, made with armdrift ${check.program}; report written on ${dayText(writtenOn)} by armdrift ${version}.`;
