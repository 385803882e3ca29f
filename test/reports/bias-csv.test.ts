import {parse} from 'csv-parse/sync';
import {describe, expect, it} from 'vitest';
import * as z from 'zod/mini';
import {biasHeader, biasRecords} from '../../source/reports/bias-csv.js';
import {filed} from '../helpers/filed-checks.js';
import {fullStory, played} from '../helpers/invented-checks.js';

const record = played(fullStory);

/** Another parser's reading, with line breaks as RFC 4180 has them and nothing forgiven. */
const rowsOf = (text: string): Readonly<Record<string, string>>[] =>
	z
		.array(z.record(z.string(), z.string()))
		.parse(parse(biasHeader() + text, {record_delimiter: '\r\n', columns: true}));

describe('The table of readings with the bias on', () => {
	it('has a row a round: setting, radius and both limits as they were read', () => {
		const rows = rowsOf(biasRecords({record}));
		// What was typed in the invented check, at the radii in the order of reading.
		expect(rows.map((row) => [row.place, row.radius_mm, row.inner_limit, row.outer_limit])).toEqual([
			['outer', '136', '7.5', '11'],
			['inner', '68', '6.5', '11.5'],
		]);
		const same = {check_id: record.check.id, started_at: record.check.startedAt, arm: 'north deck', void: 'no'};
		const set = {device: 'weighted-lever', trial: '1', chosen: 'yes', round: '1', struck: 'no', gauge_unit: 'percent'};
		for (const row of rows) expect(row).toMatchObject({...same, ...set, series: String(record.check.series.length)});
		expect(rows[0]?.setting).toContain('third notch');
	});

	it('keeps settings that were given up for another one, struck rounds and half ones, and texts that look like formulas', () => {
		const {check} = record;
		const series = check.series.at(-1);
		if (!series) throw new Error('there is no series');
		const at = check.startedAt;
		const [round] = series['bias-outer'];
		if (!round) throw new Error('nothing was read with the bias on');
		const struck = {...round, struck: {reason: {id: 'draught'}, at}};
		const half = {innerLimit: round.innerLimit};
		const trial = {
			closedAt: at,
			answers: {'bias-set': {typed: '=1+1, "first"', value: '=1+1, "first"', at}},
			'bias-outer': [struck, half],
			'bias-middle': [],
			'bias-inner': [],
		};
		const tried = {...check, series: [...check.series.slice(0, -1), {...series, trials: [trial]}]};
		const rows = rowsOf(biasRecords({record: {...record, check: tried}, voidBecause: 'draught'}));
		expect(rows.map(({trial: number}) => number)).toEqual(['1', '1', '2', '2']);
		expect(rows[0]).toMatchObject({struck: 'yes', void: 'yes', setting: `'=1+1, "first"`, inner_limit: '7.5'});
		expect(rows[1]).toMatchObject({struck: 'no', round: '2', outer_limit: ''});
	});

	it('is empty for a check without any', () => {
		expect(biasRecords({record: filed({at: '2026-01-01T10:00:00Z'})})).toBe('');
	});
});
