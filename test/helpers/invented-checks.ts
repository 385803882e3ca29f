import {startDialogue} from '../../source/check/dialogue.js';
import type {PastCheck} from '../../source/check/past-check.js';
import {newCheck} from '../../source/check/reduce.js';
import type {Entry} from '../../source/check/respond.js';
import {finishedCheck} from '../../source/desk/filing.js';
import {limitsOf, usualSettings} from '../../source/procedure/settings.js';
import {type FinishedCheck, summaryOf} from '../../source/results/record.js';
import {biasAnswers, northDeckWith} from './sample-check.js';
import {choose, clockFrom, follow, type Script, say, text, waysOut, yes} from './script.js';

/** How one invented check is played. */
export type Played = {
	/** Time of its start, with the offset of the place. */
	readonly at: string;
	readonly script: Script;
	/** What is done at some steps in place of the script's answer. */
	readonly detours?: readonly {readonly until: string; readonly entries: readonly Entry[]}[];
	/** Left just before this step: the deck is in pieces. */
	readonly leftAt?: string;
};

/** An id in the form that ids have, made of the time of the start. */
export const idFor = (at: string): string =>
	`${new Date(at).toISOString().slice(0, 19).replace(/[-:]/g, '').replace('T', '-')}-invented`;

/** Plays an invented check to its end, or to where it is left. */
export function played({at, script, detours = [], leftAt}: Played, history: readonly PastCheck[] = []): FinishedCheck {
	const now = clockFrom(at);
	const check = newCheck({id: idFor(at), at, program: '0.0.0', limits: limitsOf(usualSettings), setAnew: true});
	const there = detours.reduce(
		(here, {until, entries}) => say(follow(here, script, {until, now}), entries, now),
		startDialogue(check, [], history),
	);
	const end = follow(there, script, leftAt === undefined ? {now} : {now, until: leftAt});
	return finishedCheck(end.check, now(), history);
}

/** Checks of one arm, oldest first, each with those before it as its history, newest first. */
export function playedInTurn(
	plays: readonly Played[],
): readonly {readonly record: FinishedCheck; readonly history: readonly PastCheck[]}[] {
	const past: PastCheck[] = [];
	return plays.map((one) => {
		const history = past.toReversed();
		const record = played(one, history);
		past.push(summaryOf(record));
		return {record, history};
	});
}

type Rounds = Script['rounds'][keyof Script['rounds']];

const shifted = (by: number, band = 0): Script['rounds'] => {
	const round = (inner: number, outer: number) => [`${inner + by - band} out`, `${outer + by + band} out`] as const;
	const turned = [`-${2.5 + by - band}`, `-${7 + by + band}`] as const;
	const inner: Rounds = [round(2.5, 7), turned, round(3, 7)];
	const outer: Rounds = [round(1.5, 5.5), round(1.5, 5), round(2, 5.5)];
	return {inner, outer, closing: [round(2.5, 7)]};
};

/** Two and a half years of an invented arm whose stiff wire slowly turns outward. */
export const driftingArm: readonly Played[] = [
	['2024-05-11T09:30:00+02:00', 0, 0, '19'],
	['2024-11-16T14:00:00+01:00', 0.5, 0, '17'],
	['2025-05-17T09:15:00+02:00', 1, 0.5, '20'],
	['2025-11-22T11:00:00+01:00', 1, 0, '18'],
	['2026-05-16T10:00:00+02:00', 2, 0.5, '21'],
].map(([at = '', by, band, temperature]) => ({
	at: String(at),
	script: northDeckWith(
		{
			'arm-wire-path': 'free-loop',
			'arm-wire-stiffness': 'stiff',
			'arm-serial': 'N 0042',
			'room-temperature': String(temperature),
		},
		shifted(Number(by), Number(band)),
	),
}));

/** A check with everything in it: a clearance gone past, a round struck out, a remedy, and the bias set. */
export const fullStory: Played = {
	at: '2026-11-14T09:40:00+01:00',
	script: northDeckWith({
		'arm-wire-path': 'free-loop',
		'arm-wire-stiffness': 'stiff',
		'arm-serial': 'N 0042',
		...biasAnswers,
	}),
	detours: [
		{until: 'guard-gap', entries: [text('1.7'), waysOut, choose('override'), choose('arm-touches-elsewhere')]},
		{
			until: 'verdict',
			entries: [
				choose('strike'),
				choose('inner:0'),
				choose('draught'),
				text('3.5 out'),
				text('8.5 out'),
				choose('go-on'),
				yes,
				choose('other-way'),
				choose('try:again'),
			],
		},
	],
};
