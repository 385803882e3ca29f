import {factsOfSeries} from '../check/progress.js';
import {openSeries} from '../check/series.js';
import type {ArmEvent} from '../procedure/arm-event.js';
import type {Facts} from '../procedure/facts.js';
import {documentOfCheck} from '../results/document-of-check.js';
import type {Document} from '../results/document-schema.js';
import type {RadiusFigures} from '../results/figures-types.js';
import {doneSince} from '../results/past-row.js';
import type {FinishedCheck} from '../results/record.js';
import {toldAt} from '../results/years/events.js';

/** What a cell may hold; empty where there is nothing to say. */
export type CsvValue = string | number | boolean | null | undefined;

/**
 * Signs at which spreadsheets take a text for a formula (from memory of the common advice against injected formulas: the
 * four signs, tab and carriage return; line feed and the wide forms of the signs beside them).
 */
const FORMULA = /^[=+\-@\t\r\n＝＋－＠]/;

// RFC 4180 knows printable characters and, in quotes, line breaks; a tab is harmless.
const CONTROL = /(?![\t\r\n])\p{Cc}/gu;

const hex = (character: string): string => `\\x${(character.codePointAt(0) ?? 0).toString(16).padStart(2, '0')}`;

const harmless = (text: string): string => {
	const visible = text.replaceAll(CONTROL, hex);
	return FORMULA.test(visible) ? `'${visible}` : visible;
};

/** RFC 4180, 2.6 and 2.7: in quotes where it holds a quote, a comma or a line break, and quotes in it doubled. */
const inQuotes = (text: string): string => (/[",\r\n]|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

const csvField = (value: CsvValue): string => {
	if (value === null || value === undefined) return '';
	if (typeof value === 'string') return inQuotes(harmless(value));
	if (typeof value === 'boolean') return value ? 'yes' : 'no';
	return String(value);
};

/**
 * One record of a CSV file (RFC 4180) with its line break. Numbers stay numbers, a minus included; a text that a
 * spreadsheet would take for a formula gets an apostrophe before it, and control characters are shown as `\x1b`.
 */
export const csvRecord = (values: readonly CsvValue[]): string => `${values.map(csvField).join(',')}\r\n`;

/** A filed check with what was noted beside it later. */
export type NotedCheck = {
	readonly record: FinishedCheck;
	/** Time at which the deck was put back, where that was done later. */
	readonly putBackAt?: string | undefined;
	/** Why it does not count, where it was marked void. */
	readonly voidBecause?: string | undefined;
	/** What is noted beside it cannot be read. */
	readonly isVoidUnknown?: boolean;
	/** What was noted outside checks as done between the check before and this one. */
	readonly noted?: readonly ArmEvent[];
};

/** Undefined where nobody knows. */
export const isVoid = ({voidBecause, isVoidUnknown}: NotedCheck): boolean | undefined =>
	isVoidUnknown ? undefined : voidBecause !== undefined;

/** A probe radius of a check; a check without figures has one row without a radius. */
type RadiusRow = NotedCheck & {
	readonly facts: Facts;
	readonly document: Document | undefined;
	readonly figures: Partial<RadiusFigures>;
};

/** Name of the column, with the unit of its numbers, and what stands in it. */
type Column = readonly [name: string, value: (row: RadiusRow) => CsvValue];

/** A part of each thing that was done since the check before; what was told at the check stands on its day. */
const done = ({noted = [], record: {check}}: RadiusRow, part: (event: ArmEvent) => string, between = ' '): string => {
	const told = toldAt({...doneSince(check), date: check.startedAt.slice(0, 10)});
	return [...noted, ...told]
		.map(part)
		.filter((text) => text !== '')
		.join(between);
};

const ofTheCheck: readonly Column[] = [
	['check_id', ({record}) => record.check.id],
	['started_at', ({record}) => record.check.startedAt],
	['finished_at', ({record}) => record.finishedAt],
	['arm', ({facts}) => facts.text('arm-name')],
	['arm_serial', ({facts}) => facts.text('arm-serial')],
	['cartridge', ({facts}) => facts.text('cartridge-name')],
	['tools', ({facts}) => facts.text('tools-name')],
	['outcome', ({record, putBackAt}) => (putBackAt === undefined ? record.outcome : 'put back')],
	['put_back_at', ({putBackAt}) => putBackAt],
	['void', isVoid],
	['void_reason', ({voidBecause}) => voidBecause],
	['done_since', (row) => done(row, ({kind}) => kind)],
	['done_on', (row) => done(row, ({on}) => on)],
	['done_note', (row) => done(row, ({note = ''}) => note, '; ')],
	['verdict', ({record}) => record.issued?.figures.verdict],
	['at_worst', ({record}) => record.issued?.figures.atWorst],
	['findings', ({record}) => record.issued?.findings.map(({code}) => code).join(' ')],
	['steps_overridden', ({record}) => record.check.overrides.length],
];

const ofTheRadius: readonly Column[] = [
	['place', ({figures}) => figures.place],
	['radius_mm', ({figures}) => figures.radiusMm],
	[
		'rounds',
		({document, figures}) =>
			document?.probe.find(({place, radiusMm}) => place === figures.place && radiusMm === figures.radiusMm)?.rounds
				.length,
	],
	['pull_pct', ({figures}) => figures.pullPct],
	['pull_uncertainty_95_pct', ({figures}) => figures.pullUncertaintyPct],
	['pull_verdict', ({figures}) => figures.pullVerdict],
	['pull_at_worst', ({figures}) => figures.pullAtWorst],
	['band_pct', ({figures}) => figures.bandPct],
	['band_uncertainty_95_pct', ({figures}) => figures.bandUncertaintyPct],
	['band_verdict', ({figures}) => figures.bandVerdict],
	['band_at_worst', ({figures}) => figures.bandAtWorst],
	['breakaway_pct', ({figures}) => figures.breakawayPct],
	['torque_micro_nm', ({figures}) => figures.torqueMicroNm],
	['tilt_share_pct', ({figures}) => figures.tiltSharePct],
	['tilt_share_uncertainty_95_pct', ({figures}) => figures.tiltShareUncertaintyPct],
];

const ofConditions: readonly Column[] = [
	['playing_force_mn', ({document}) => document?.trackingForce.playingMn],
	['scale_reading_mn', ({document}) => document?.trackingForce.scaleReadingMn],
	['guard', ({document}) => document?.trackingForce.guard],
	['effective_length_mm', ({document}) => document?.arm.effectiveLengthMm],
	['clearance_mm', ({document}) => document?.clearance?.stylusMm],
	['temperature_celsius', ({facts}) => facts.number('room-temperature')],
	['room_note', ({facts}) => facts.text('room-note')],
	['pull_good_limit_pct', ({record}) => record.check.limits.pullGoodPct],
	['pull_usable_limit_pct', ({record}) => record.check.limits.pullUsablePct],
	['band_good_limit_pct', ({record}) => record.check.limits.bandGoodPct],
	['band_usable_limit_pct', ({record}) => record.check.limits.bandUsablePct],
	['next_check_date', (row) => (isVoid(row) === false ? row.record.nextCheck?.date : undefined)],
	['program', ({record}) => record.check.program],
];

const csvColumns: readonly Column[] = [...ofTheCheck, ...ofTheRadius, ...ofConditions];

/** The names of the columns, as the first record of the file. */
export const radiusHeader = (): string => csvRecord(csvColumns.map(([name]) => name));

/**
 * The records of one check, one for each probe radius: figures as they were issued on the day, in percent of the playing
 * tracking force and positive toward the rim. What was not measured, or was off scale, is empty. Readings with the bias
 * on are not in it.
 */
export function radiusRecords(filed: NotedCheck): string {
	const {check, issued} = filed.record;
	const facts = factsOfSeries(check, openSeries(check));
	const found = documentOfCheck(check);
	const document = found.ok ? found.document : undefined;
	const probe: readonly Partial<RadiusFigures>[] = issued?.figures.probe ?? [{}];
	return probe
		.map((figures) => ({...filed, facts, document, figures}))
		.map((row) => csvRecord(csvColumns.map(([, value]) => value(row))))
		.join('');
}
