import {readdirSync, readFileSync} from 'node:fs';
import {createRequire} from 'node:module';
import path from 'node:path';
import {parse} from 'csv-parse/sync';
import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import * as z from 'zod/mini';
import {csvRecord, radiusHeader, radiusRecords} from '../../source/reports/radius-csv.js';
import {isMeasured} from '../../source/results/figures.js';
import {driftingArm, fullStory, played} from '../helpers/invented-checks.js';

/** Another parser's reading, with line breaks as RFC 4180 has them and nothing forgiven. */
const readBack = (text: string): string[][] =>
	z.array(z.array(z.string())).parse(parse(text, {record_delimiter: '\r\n'}));

/** Rows by the names of their columns. */
const tableOf = (text: string): Readonly<Record<string, string>>[] => {
	const [head = [], ...rows] = readBack(text);
	return rows.map((row) => Object.fromEntries(head.map((name, index) => [name, row[index] ?? ''])));
};

const FIRST = /^[=+\-@\t\r\n＝＋－＠]/;

describe('A CSV record', () => {
	it('is read back by another parser as it was, whatever text is in it', () => {
		const harmless = fc
			.string({unit: 'grapheme'})
			.filter((text) => !FIRST.test(text) && !/(?![\t\r\n])\p{Cc}/u.test(text));
		const tricky = fc.constantFrom(
			'a"b',
			'"',
			'""',
			',',
			'a\r\nb',
			'a\nb',
			'a\rb',
			' a ',
			'a;b',
			'\u2028',
			'\uFEFFa',
			'',
		);
		const rows = fc.array(fc.array(fc.oneof(harmless, tricky), {minLength: 2, maxLength: 5}), {minLength: 1});
		fc.assert(
			fc.property(rows, (written) => {
				const width = Math.max(...written.map((row) => row.length));
				const even = written.map((row) => [...row, ...Array<string>(width - row.length).fill('')]);
				// A mark at the very beginning of a file belongs to its encoding.
				const text = csvRecord(Array<string>(width).fill('head')) + even.map(csvRecord).join('');
				expect(readBack(text).slice(1)).toEqual(even);
			}),
		);
	});

	const samples = path.join(path.dirname(createRequire(import.meta.url).resolve('csv-spectrum')), 'json');
	// One of them holds bytes that are not UTF-8.
	const names = readdirSync(samples).filter((name) => name !== 'location_coordinates.json');

	it.each(names)('holds a known hard case: %s', (name) => {
		const rows = z
			.array(z.record(z.string(), z.string()))
			.parse(JSON.parse(readFileSync(path.join(samples, name), 'utf8')));
		const head = Object.keys(rows[0] ?? {});
		expect(tableOf(csvRecord(head) + rows.map((row) => csvRecord(head.map((key) => row[key]))).join(''))).toEqual(rows);
	});

	// From memory of the common advice against formulas in exports: these signs at the start are taken for a formula.
	it.each(['=1+1', '+1', '-1', '@sum', '\t=1', '\r=1', '\n=1', '＝1', '=HYPERLINK("http://x")', '-'])(
		'makes the text %j harmless by an apostrophe, and leaves numbers alone',
		(text) => {
			expect(readBack(csvRecord([text, -1.5, 2]))).toEqual([[`'${text}`, '-1.5', '2']]);
		},
	);

	it('shows control characters instead of passing them on', () => {
		expect(csvRecord(['a\u001B]0;x\u0007b', '\u0085'])).toBe('a\\x1b]0;x\\x07b,\\x85\r\n');
	});

	it('leaves empty what is not there, and says yes and no', () => {
		expect(csvRecord([null, undefined, '', true, false, 0])).toBe(',,,yes,no,0\r\n');
	});
});

describe('The table of probe radii', () => {
	const record = played({...fullStory});
	const text = radiusHeader() + radiusRecords({record});

	it('has plain blanks, unlike sentences', () => {
		expect(text).toContain(' ');
		expect(text).not.toContain('\u00a0');
	});

	it('has a row for each probe radius, with the figures that were issued to the last digit', () => {
		const rows = tableOf(text);
		const probe = record.issued?.figures.probe.filter(isMeasured) ?? [];
		expect(probe.length).toBeGreaterThan(1);
		expect(
			rows.map((row) => [row.place, Number(row.radius_mm), Number(row.pull_pct), Number(row.band_uncertainty_95_pct)]),
		).toEqual(probe.map((one) => [one.place, one.radiusMm, one.pullPct, one.bandUncertaintyPct]));
		expect(rows.every((row) => row.check_id === record.check.id && row.started_at === record.check.startedAt)).toBe(
			true,
		);
	});

	it('names the unit of every number but counts in its header', () => {
		const [head = []] = readBack(text);
		const [row = []] = readBack(text).slice(1);
		const numbers = head.filter((_, index) => row[index] !== '' && Number.isFinite(Number(row[index])));
		const units = /_(?:mm|mn|pct|celsius|micro_nm)$/;
		expect(numbers.filter((name) => !units.test(name))).toEqual(['steps_overridden', 'rounds']);
	});

	it('has a row, empty but for names and conditions, for a check that came to no figures', () => {
		const left = played({at: '2026-03-02T09:00:00+01:00', script: fullStory.script, leftAt: 'probe-inner'});
		const [row, ...others] = tableOf(radiusHeader() + radiusRecords({record: left}));
		expect(others).toEqual([]);
		expect(row).toMatchObject({
			outcome: 'interrupted',
			void: 'no',
			place: '',
			radius_mm: '',
			pull_pct: '',
			verdict: '',
		});
		expect(row?.arm).toBe('north deck');
	});

	it('says what was noted later: put back, and void with its reason and without a next date', () => {
		const [drifting] = driftingArm;
		if (!drifting) throw new Error('there is no such check');
		const noted = {record: played(drifting), putBackAt: '2026-05-20T10:00:00Z', voidBecause: '=a reason'};
		for (const row of tableOf(radiusHeader() + radiusRecords(noted)))
			expect(row).toMatchObject({
				outcome: 'put back',
				put_back_at: '2026-05-20T10:00:00Z',
				void: 'yes',
				void_reason: "'=a reason",
				next_check_date: '',
			});
	});

	it('says what was done since the check before: noted by itself first, then what was told at the check', () => {
		const record = played(fullStory);
		const {startedAt, answers} = record.check;
		const given = (value: string | readonly string[]) => ({typed: 'as typed', value, at: startedAt});
		const told = {...answers, 'done-since': given(['leads', 'other']), 'done-since-note': given('=a new belt')};
		const check = {...record.check, recheckOf: 'earlier', answers: told};
		const noted = [{kind: 'moved', on: '2026-01-05'}];
		const [row] = tableOf(radiusHeader() + radiusRecords({record: {...record, check}, noted}));
		expect(row).toMatchObject({
			done_since: 'moved leads other',
			done_on: ['2026-01-05', startedAt.slice(0, 10), startedAt.slice(0, 10)].join(' '),
			done_note: "'=a new belt",
		});
		const [bare] = tableOf(radiusHeader() + radiusRecords({record}));
		expect(bare).toMatchObject({done_since: '', done_on: '', done_note: ''});
	});

	it('leaves the figures of a radius that was off scale empty, and says so', () => {
		const off = {
			...fullStory.script,
			rounds: {
				...fullStory.script.rounds,
				inner: [
					['4 out', '20 out'],
					['-4', '-20'],
					['4 out', '20 out'],
				] as const,
			},
		};
		const row = tableOf(
			radiusHeader() + radiusRecords({record: played({at: '2026-03-02T09:00:00+01:00', script: off})}),
		)[0];
		expect(row).toMatchObject({place: 'inner', radius_mm: '68', pull_pct: '', band_pct: '', pull_verdict: 'off-scale'});
	});
});
