import type {ChangeVerdict} from '../../measures/change.js';
import type {Trend} from '../../measures/trend.js';
import {dayText} from '../dates.js';
import {listed, mm, percent, plainNumber, plural, printsAsZero, rounded, span} from '../numbers.js';
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
	changed: 'verändert',
	perhaps: 'vielleicht verändert; noch einmal messen',
	unchanged: 'nicht verändert',
};

/** Which way a figure went: a pull toward rim or spindle, a band wider or narrower. */
function wayOfChange({figure, movedPct}: Moved): string {
	if (figure === 'band') return movedPct < 0 ? 'kleiner' : 'größer';
	return movedPct < 0 ? 'zur Tellerachse' : 'zum Rand';
}

/** '1,4 % ± 0,6 % zum Rand'; a difference that prints as zero has no way. */
function sizeOfChange(moved: Moved): string {
	const size = `${percent(Math.abs(moved.movedPct), 1)} ± ${percent(moved.uncertaintyPct, 1)}`;
	return printsAsZero(moved.movedPct, 1) ? size : `${size} ${wayOfChange(moved)}`;
}

const atRadius = ({place, radiusMm}: AtRadius): string => `bei ${mm(radiusMm)} (${placeName(place)})`;
const nameOf = (moved: Moved): string => `${moved.figure === 'pull' ? 'Zug' : 'Reibung'} ${atRadius(moved)}`;

/** Several figures, each with its size. */
const sizes = (figures: readonly Moved[]): string =>
	figures.map((one) => `${nameOf(one)} ${sizeOfChange(one)}`).join('; ');

/** A slope: '0,52 % ± 0,07 %'; without the ± where that would be printed as zero. */
const slopeText = ({slope, slopeUncertainty}: Trend): string =>
	printsAsZero(slopeUncertainty, 2)
		? percent(Math.abs(slope), 2)
		: `${percent(Math.abs(slope), 2)} ± ${percent(slopeUncertainty, 2)}`;

const towardText = ({slope}: Trend): string => (slope < 0 ? 'zur Tellerachse' : 'zum Rand');

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
	done.length === 0 ? '' : ` Seitdem getan: ${done.map(({date, what}) => `${dayText(date)} ${what}`).join('; ')}.`;

/** How a check stands against those before it. */
const comparison = {
	summary: {
		changed: 'Seit der letzten Prüfung VERÄNDERT.',
		perhaps: 'Seit der letzten Prüfung VIELLEICHT VERÄNDERT. Noch einmal messen.',
		unchanged: 'Seit der letzten Prüfung nicht verändert.',
	} satisfies Record<ChangeVerdict, string>,
	/** Of two checks that somebody chose. */
	between: {
		changed: 'Zwischen beiden VERÄNDERT.',
		perhaps: 'Zwischen beiden VIELLEICHT VERÄNDERT.',
		unchanged: 'Zwischen beiden nicht verändert.',
	} satisfies Record<ChangeVerdict, string>,
	notWithLast: ({date}: Since) => `Nicht vergleichbar mit der letzten Prüfung vom ${dayText(date)}.`,
	moved: ({date, verdict, ...moved}: Since & Moved & {readonly verdict: ChangeVerdict}) =>
		`${nameOf(moved)} seit ${dayText(date)} um ${sizeOfChange(moved)}${moved.figure === 'pull' ? ' gewandert' : ''}: ${verdicts[verdict]}.`,
	unchanged: ({date, figures}: Since & {readonly figures: readonly Moved[]}) =>
		`Seit ${dayText(date)} gleich geblieben: ${figures.map((one) => `${nameOf(one)}, Unterschied ${sizeOfChange(one)}`).join('; ')}.`,
	doneBetween: ({what}: {readonly what: readonly string[]}) => `Zwischen beiden: ${listed(what)}.`,
	done: ({what}: {readonly what: readonly string[]}) => `Zwischen beiden: ${listed(what)}. Der Trend beginnt hier neu.`,
	room: ({byC, place, radiusMm, pullPct}: AtRadius & {readonly byC: number; readonly pullPct: number}) =>
		`Der Raum ist ${rounded(Math.abs(byC), 0)} °C ${byC > 0 ? 'wärmer' : 'kälter'}. Nach allen Prüfungen ändert das allein den Zug ${atRadius({place, radiusMm})} um ${forceWithWay(pullPct, '%', 1)}.`,
	wireFirst:
		'Zuerst die Litzen ansehen. Litzen, die steif sind oder in freier Schlaufe hängen, verziehen sich übers Jahr.',
	againstFirst: 'Gegen die erste Prüfung seitdem:',
};

/** The long run of an arm. */
const longRun = {
	drifts: ({trend, checks, date, ...radius}: TrendAt & Since) =>
		`Zug ${atRadius(radius)}: wandert im Jahr ${slopeText(trend)} ${towardText(trend)} (${checks} Prüfungen seit ${dayText(date)}).`,
	noTrend: ({checks, date, ...radius}: AtRadius & Since & {readonly checks: number}) =>
		`Zug ${atRadius(radius)}: kein Trend zu sehen (${checks} Prüfungen seit ${dayText(date)}).`,
	seasonOpen: (radius: AtRadius) =>
		`Zug ${atRadius(radius)}: ob Jahreszeit oder Drift, ist offen. In anderer Jahreszeit prüfen oder jedes Mal die Raumtemperatur eintippen.`,
	withTemperature: ({trend, checks, ...radius}: TrendAt) =>
		`Zug ${atRadius(radius)}: ändert sich mit der Temperatur, je °C ${slopeText(trend)} ${towardText(trend)} (${checks} Prüfungen).`,
	step: ({what, date, figures}: Since & {readonly what: readonly string[]; readonly figures: readonly Moved[]}) =>
		`Sprung bei der Prüfung vom ${dayText(date)} (davor: ${listed(what)}): ${sizes(figures)}. Der Trend zählt ab da.`,
	tooFew: ({checks, date, least}: Since & {readonly checks: number; readonly least: number}) =>
		`${plural(checks, {one: '1 Prüfung', other: `${checks} Prüfungen`})} seit ${dayText(date)} sind vergleichbar. Für einen Trend sind ${plainNumber(least)} nötig.`,
};

/** The pictures of pull and hold band over time. */
const pictures = {
	pull: ({place, radiusMm}: AtRadius) => `Zug, ${placeName(place)} ${mm(radiusMm)}, oben heißt zum Rand`,
	pullInWords: ({place, radiusMm, points, done}: HistoryAt) =>
		`Zug ${atRadius({place, radiusMm})} über die Zeit: ${pointList(points, sideForce)}.${doneText(done)}`,
	band: ({place, radiusMm}: AtRadius) => `Reibung, ${placeName(place)} ${mm(radiusMm)}`,
	bandInWords: ({place, radiusMm, points, done}: HistoryAt) =>
		`Reibung ${atRadius({place, radiusMm})} über die Zeit: ${pointList(points, span)}.${doneText(done)}`,
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
