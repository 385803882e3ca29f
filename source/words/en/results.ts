import type {MissingPart} from '../../results/document-of-check.js';
import type {NextCheckValues} from '../../results/next-check.js';
import type {ProfileRefusals} from '../../results/profile-changes.js';
import type {RadiusApart} from '../../results/rounds-agree.js';
import type {VoidReason} from '../../results/voids.js';
import type {NoteValues, ObstacleValues} from '../../results/years/comparison.js';
import type {DueArm} from '../../results/years/due.js';
import type {Sentences} from '../../said.js';
import {decimalsApart, units} from '../../units.js';
import {dayText} from '../dates.js';
import {inUnit, listed, mm, percent, plainNumber, plural, rounded, stepDecimals} from '../numbers.js';
import {speaker} from '../speaker.js';
import {problems, ways} from './problems.js';
import {inQuotes, refusals} from './refusals.js';

const nextCheck: Sentences<NextCheckValues> = {
	'to-put-right': () => 'Put the cause right, then check again, within a month (default of this program).',
	soon: ({isUndecided, change}) =>
		`In a month: ${listed([
			...(isUndecided ? ['something is undecided'] : []),
			...(change === 'changed' ? ['something changed since the last check'] : []),
			...(change === 'perhaps' ? ['something may have changed since the last check'] : []),
		])} (default of this program).`,
	'wire-creeps': () =>
		'In three months: leads that are stiff or hang in a free loop creep sooner (default of this program).',
	usual: () => 'In six months (common practice, no source).',
};

/** Why a check has no figures yet. */
const missing: Readonly<Record<MissingPart, string>> = {
	description: 'No figures yet: describe and weigh the arm first.',
	inner: 'No figures yet: take a whole round at the inner radius.',
	outer: 'No figures yet: take a whole round at the outer radius.',
};

const kinds = {arm: 'arm', cartridge: 'cartridge', tools: 'set of tools'};

const profileRefused: Sentences<ProfileRefusals> = {
	gone: () => 'That profile is gone. Look at the list again.',
	'no-name': () => 'Type a name.',
	'not-read': ({refusal}) => speaker(refusals)(refusal),
	'name-taken': ({kind, name}) => `Another ${kinds[kind]} is called "${name}". Choose another name.`,
	'name-was-taken': ({kind, name, today}) =>
		`The ${kinds[kind]} "${today}" was called "${name}" before. Choose another name.`,
	'name-has-checks': ({name}) => `Another arm called "${name}" has checks. Choose another name.`,
	'no-day': ({typed}) => `${inQuotes(typed)} is no day. Type it like 2026-11-25.`,
	'day-ahead': ({on}) => `${dayText(on)} lies ahead. Type the day on which it was done.`,
	'does-not-apply': () => 'This profile has no such answer. Look at its list again.',
	'side-wanted': ({plus, minus}) => `Type it with its side, ${plus} or ${minus}.`,
	'does-not-pass': ({problem}) =>
		`${speaker(problems)(problem)} What helps: ${problem.ways.map(({id}) => ways[id]).join(', or ')}.`,
};

/** Printed in the gauge's own unit, so that it can be checked against the readings as they were typed. */
const differ = ({apart, usual, step, unit}: RadiusApart): string => {
	const {label} = units[unit];
	const size = rounded(apart, decimalsApart(apart, usual, Math.max(1, stepDecimals(step))));
	return `their middles differ by ${size} ${label} (usual with this step and nudge: up to ${plainNumber(usual)} ${label})`;
};

const loading = (id: string): string => (id === 'spring' ? 'a spring' : 'gravity');

/** Why a check cannot be compared with an earlier one, as a whole or at a radius. */
const obstacles: Sentences<ObstacleValues> = {
	'no-figures': ({date}) => `Not comparable with ${dayText(date)}: one of the two has no figures.`,
	'other-loading': ({date, before, today}) =>
		`Not comparable with ${dayText(date)}: its tracking force was made by ${loading(before)} then, by ${loading(today)} now.`,
	'other-length': ({date, thenMm, nowMm}) =>
		`Not comparable with ${dayText(date)}: its effective length was ${inUnit(thenMm, 'mm')} then, ${inUnit(nowMm, 'mm')} now.`,
	'radius-missing': ({date, radiusMm}) =>
		`Not comparable with ${dayText(date)}: there are no figures of both at ${mm(radiusMm)}.`,
};

const weighed: Readonly<Record<string, string>> = {
	included: 'weighed with the guard',
	'left-out': 'weighed without the guard',
	none: 'without a guard',
};
const weighedFirst: Readonly<Record<string, string>> = {
	included: 'Weighed with the guard',
	'left-out': 'Weighed without the guard',
	none: 'Without a guard',
};

/** What was otherwise in an earlier check, though the two can be compared. */
const notes: Sentences<NoteValues> = {
	'level-not-read': () => 'The level was not read both times. So the pulls include the tilt.',
	'other-force': ({thenMn, nowMn}) =>
		`The playing force was ${inUnit(thenMn, 'gf')} then, ${inUnit(nowMn, 'gf')} now. So forces are compared, not percents.`,
	'other-tools': ({before, today}) => `Measured with '${before}' then, with '${today}' now.`,
	'other-guard': ({before, today}) => `${weighedFirst[before] ?? before} then, ${weighed[today] ?? today} now.`,
};

const voidReasons: Readonly<Record<VoidReason, string>> = {
	forgotten: 'a step before the probe was forgotten',
	disturbed: 'the deck was bumped',
	'other-meant': 'wrong arm or profile',
	tried: 'I was only trying it out',
	typed: 'another reason (type it)',
};

/** What is said of results beside the findings. */
export const results = {
	nextCheck,
	/** Why a profile was not changed. */
	profileRefused,
	/** What a kind of profile is called. */
	kinds,
	missing,
	profileLacks: ({title}: {title: string}): string => `${title}: no answer yet. The next check asks.`,
	/** No radius has two rounds alike. */
	repeatabilityAssumed: 'With fewer than three rounds the scatter is assumed: the ± may be too small.',
	/** What one round more would make of both uncertainties (95 %). */
	oneMoreRound: (more: {pullUncertaintyPct: number; bandUncertaintyPct: number}): string =>
		`One more round would bring the pull to ± ${percent(more.pullUncertaintyPct, 2)}, the friction to ± ${percent(more.bandUncertaintyPct, 2)}.`,
	oneMoreIsIdle: 'One more round would hardly help.',
	roundsApart: (here: RadiusApart): string =>
		`The rounds do not agree: ${differ(here)}. Take them again, or strike the odd one out.`,
	/** Their spread counts at the other radii too. */
	roundsApartElsewhere: (there: RadiusApart): string =>
		`The rounds at ${mm(there.radiusMm)} do not agree, so the ± here is larger: ${differ(there)}.`,
	obstacles,
	notes,
	/** Why a check is marked void. What is kept is the text, as it was on the day; the last one is typed. */
	voidReasons,
	voidReasonWanted: 'Type the reason in a few words, at most 80 letters.',
	void: ({at, reason}: {at: string; reason: string}): string =>
		`VOID since ${dayText(at.slice(0, 10))}: ${reason}. It does not count in comparisons, trend and the date of the next check.`,
	voidUnknown: 'Not known whether this check counts: its notes cannot be read.',
	wasVoid: ({at, takenBackAt, reason}: {at: string; takenBackAt: string; reason: string}): string =>
		`Was void from ${dayText(at.slice(0, 10))} to ${dayText(takenBackAt.slice(0, 10))} (${reason}). It counts again.`,
	/** How far off the day of the next check is. */
	due: ({inDays}: Pick<DueArm, 'inDays'>): string => {
		if (inDays === 0) return 'due today';
		const days = plural(Math.abs(inDays), {one: '1 day', other: `${Math.abs(inDays)} days`});
		return inDays < 0 ? `overdue by ${days}` : `in ${days}`;
	},
};
