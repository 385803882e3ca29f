import type {ChangeVerdict} from '../../measures/change.js';
import type {Trend} from '../../measures/trend.js';
import {dayText} from '../dates.js';
import {listed, mm, percent, plainNumber, printsAsZero, rounded, span} from '../numbers.js';
import {placeName} from './entries.js';
import {forceWithWay, sideForce} from './figures.js';

/** A figure at a radius, and how it moved since an earlier check, in percent of the playing force. */
type Moved = {
	readonly figure: 'pull' | 'band';
	/** By its id. */
	readonly place: string;
	readonly radiusMm: number;
	readonly movedPct: number;
	readonly uncertaintyPct: number;
};

type AtRadius = Pick<Moved, 'place' | 'radiusMm'>;
/** Day of an earlier check, yyyy-mm-dd. */
type Since = {readonly date: string};

/** The word for a change, the same everywhere. */
const verdicts: Readonly<Record<ChangeVerdict, string>> = {
	changed: 'changed',
	perhaps: 'perhaps; probe again',
	unchanged: 'not changed',
};

/** Which way a figure went: a pull toward rim or spindle, a band wider or narrower. */
function wayOfChange({figure, movedPct}: Moved): string {
	if (figure === 'band') return movedPct < 0 ? 'down' : 'up';
	return movedPct < 0 ? 'toward the spindle' : 'toward the rim';
}

/** '1.4 % ± 0.6 %', without its way. */
const sizeAlone = ({movedPct, uncertaintyPct}: Moved): string =>
	`${percent(Math.abs(movedPct), 1)} ± ${percent(uncertaintyPct, 1)}`;

/** '1.4 % ± 0.6 % toward the rim'; a difference that prints as zero has no way. */
function sizeOfChange(moved: Moved): string {
	const size = sizeAlone(moved);
	return printsAsZero(moved.movedPct, 1) ? size : `${size} ${wayOfChange(moved)}`;
}

const atRadius = ({place, radiusMm}: AtRadius): string => `at the ${placeName(place)} radius (${mm(radiusMm)})`;
const nameOf = (moved: Moved): string => `${moved.figure === 'pull' ? 'pull' : 'friction'} ${atRadius(moved)}`;

/** 'moved 1.4 % ± 0.6 % toward the rim', 'fell by 1.0 % ± 0.6 %'. */
function howChanged(moved: Moved): string {
	if (moved.figure === 'pull') return `moved ${sizeOfChange(moved)}`;
	const verb = printsAsZero(moved.movedPct, 1) ? 'changed' : moved.movedPct < 0 ? 'fell' : 'grew';
	return `${verb} by ${sizeAlone(moved)}`;
}

/** Several figures, each with its size. */
const sizes = (figures: readonly Moved[]): string =>
	figures.map((one) => `${nameOf(one)} ${sizeOfChange(one)}`).join('; ');

/** A slope: '0.52 % ± 0.07 %'; without the ± where that would be printed as zero. */
const slopeText = ({slope, slopeUncertainty}: Trend): string =>
	printsAsZero(slopeUncertainty, 2)
		? percent(Math.abs(slope), 2)
		: `${percent(Math.abs(slope), 2)} ± ${percent(slopeUncertainty, 2)}`;

const towardText = ({slope}: Trend): string => (slope < 0 ? 'toward the spindle' : 'toward the rim');

type TrendAt = AtRadius & {readonly trend: Trend; readonly checks: number};

const pointList = (
	points: readonly (Since & {readonly pct: number; readonly uncertaintyPct: number})[],
	text: typeof span,
) => points.map(({date, pct, uncertaintyPct}) => `${dayText(date)} ${text(pct, uncertaintyPct)}`).join('; ');

type HistoryAt = AtRadius & {
	readonly points: Parameters<typeof pointList>[0];
	/** What was done meanwhile, with its day. */
	readonly done: readonly (Since & {readonly what: string})[];
};

const doneText = (done: HistoryAt['done']): string =>
	done.length === 0 ? '' : ` Done since: ${done.map(({date, what}) => `${dayText(date)} ${what}`).join('; ')}.`;

/** How a check stands against those before it. */
const comparison = {
	summary: {
		changed: 'CHANGED since the last check.',
		perhaps: 'PERHAPS CHANGED since the last check. Probe again.',
		unchanged: 'Not changed since the last check.',
	} satisfies Record<ChangeVerdict, string>,
	/** Of two checks that somebody chose. */
	between: {
		changed: 'CHANGED between the two.',
		perhaps: 'PERHAPS CHANGED between the two.',
		unchanged: 'Not changed between the two.',
	} satisfies Record<ChangeVerdict, string>,
	notWithLast: ({date}: Since) => `Not comparable with the last check, of ${dayText(date)}.`,
	moved: ({date, verdict, ...moved}: Since & Moved & {readonly verdict: ChangeVerdict}) =>
		`The ${nameOf(moved)} ${howChanged(moved)} since ${dayText(date)}: ${verdicts[verdict]}.`,
	unchanged: ({date, figures}: Since & {readonly figures: readonly Moved[]}) =>
		`Not changed since ${dayText(date)}: ${figures.map((one) => `${nameOf(one)}, difference ${sizeOfChange(one)}`).join('; ')}.`,
	doneBetween: ({what}: {readonly what: readonly string[]}) => `Between the two: ${listed(what)}.`,
	done: ({what}: {readonly what: readonly string[]}) =>
		`Between the two: ${listed(what)}. The trend starts again here.`,
	room: ({byC, place, radiusMm, pullPct}: AtRadius & {readonly byC: number; readonly pullPct: number}) =>
		`The room is ${rounded(Math.abs(byC), 0)} °C ${byC > 0 ? 'warmer' : 'colder'}. By all past checks that alone moves the pull ${atRadius({place, radiusMm})} ${forceWithWay(pullPct, '%', 1)}.`,
	wireFirst: 'Likely cause: the leads. Leads that are stiff or hang in a free loop creep over the seasons.',
	againstFirst: 'Against the first check since then:',
};

/** The long run of an arm. */
const longRun = {
	drifts: ({trend, checks, date, ...radius}: TrendAt & Since) =>
		`Pull ${atRadius(radius)}: drifts ${slopeText(trend)} a year ${towardText(trend)} (${checks} checks since ${dayText(date)}).`,
	noTrend: ({checks, date, ...radius}: AtRadius & Since & {readonly checks: number}) =>
		`Pull ${atRadius(radius)}: no trend seen (${checks} checks since ${dayText(date)}).`,
	seasonOpen: (radius: AtRadius) =>
		`Pull ${atRadius(radius)}: season or drift, not known. Check in another season, or type the room temperature each time.`,
	withTemperature: ({trend, checks, ...radius}: TrendAt) =>
		`Pull ${atRadius(radius)}: changes with the temperature, ${slopeText(trend)} per °C ${towardText(trend)} (${checks} checks).`,
	step: ({what, date, figures}: Since & {readonly what: readonly string[]; readonly figures: readonly Moved[]}) =>
		`A jump at the check of ${dayText(date)}, after ${listed(what)}: ${sizes(figures)}. The trend counts from there.`,
	tooFew: ({checks, date, least}: Since & {readonly checks: number; readonly least: number}) =>
		`${checks} checks since ${dayText(date)} can be compared. A trend needs ${plainNumber(least)}.`,
};

/** The pictures of pull and hold band over time. */
const pictures = {
	pull: ({place, radiusMm}: AtRadius) => `pull, ${placeName(place)} ${mm(radiusMm)}, up is toward the rim`,
	pullInWords: ({place, radiusMm, points, done}: HistoryAt) =>
		`Pull ${atRadius({place, radiusMm})} over time: ${pointList(points, sideForce)}.${doneText(done)}`,
	band: ({place, radiusMm}: AtRadius) => `friction, ${placeName(place)} ${mm(radiusMm)}`,
	bandInWords: ({place, radiusMm, points, done}: HistoryAt) =>
		`Friction ${atRadius({place, radiusMm})} over time: ${pointList(points, span)}.${doneText(done)}`,
};

/** Something that was done to an arm: what kind of thing, and the few words that were typed of it. */
const event = ({
	what,
	note,
	isOther,
}: {
	readonly what: string;
	readonly note: string | undefined;
	readonly isOther: boolean;
}) => (note === undefined ? what : isOther ? note : `${what}: ${note}`);

/** Comparison, trend and pictures over the years. */
export const years = {event, comparison, longRun, pictures};
