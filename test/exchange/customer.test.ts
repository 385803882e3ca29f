import {readFileSync} from 'node:fs';
import {describe, expect, it} from 'vitest';
import {checkAsData, reportAsData} from '../../source/commands/check-data.js';
import {csvExport, jsonExport} from '../../source/exchange/write-export.js';
import {procedure} from '../../source/procedure/index.js';
import {armReport} from '../../source/reports/arm-report.js';
import {checkReport} from '../../source/reports/check-report.js';
import {htmlOf} from '../../source/reports/html/html-of.js';
import {makerReport} from '../../source/reports/maker-report.js';
import {markdownOf} from '../../source/reports/markdown-of.js';
import {documentOfCheck} from '../../source/results/document-of-check.js';
import type {FinishedCheck} from '../../source/results/record.js';
import {summaryOf} from '../../source/results/record.js';
import {dataFolder, fileWith, importing} from '../helpers/data-folders.js';
import {fullStory, played} from '../helpers/invented-checks.js';

const secrets = {shop: 'Shop of the seventh stair', name: 'Ms Larkspur-Quill', complaint: 'it hums like a hive'};
const story = played(fullStory);
const typed = (text: string) => ({typed: text, value: text, at: story.check.startedAt});
const record: FinishedCheck = {
	...story,
	check: {
		...story.check,
		shop: secrets.shop,
		answers: {
			...story.check.answers,
			'customer-name': typed(secrets.name),
			'customer-complaint': typed(secrets.complaint),
		},
	},
};
const source = {
	record,
	history: [{...summaryOf(story), id: 'earlier', date: '2025-01-01', startedAt: '2025-01-01T09:00:00+01:00'}],
};
const imprint = {version: '0.0.0', writtenOn: '2026-11-25'};
const isTold = (text: string) => Object.values(secrets).map((secret) => text.includes(secret));
const whole = {store: undefined, program: '0.0.0', at: '2026-11-25T15:00:00+01:00', tell: () => {}};

describe('A customer, what the customer told, and the shop', () => {
	it('stand on the sheet of the check, and nowhere else in its report', () => {
		const {sheet: _sheet, about: _about, ...rest} = checkReport(source, imprint);
		expect(isTold(htmlOf(checkReport(source, imprint)))).toEqual([true, true, true]);
		expect(isTold(JSON.stringify(rest))).toEqual([false, false, false]);
	});

	it('stand in no report for the maker, none over the years, no figures for others', () => {
		const arm = armReport({arm: 'an arm', newest: source, overridden: [], notCounted: []}, imprint);
		for (const report of [makerReport(source, imprint), arm])
			for (const text of [htmlOf(report), markdownOf(report)]) expect(isTold(text)).toEqual([false, false, false]);
		expect(isTold(JSON.stringify(documentOfCheck(record.check)))).toEqual([false, false, false]);
		expect(isTold(JSON.stringify(summaryOf(record)))).toEqual([false, false, false]);
	});

	it('stand in no data for scripts', () => {
		const shelf = {profiles: () => [], record: () => ({ok: true, record}) as const};
		const all = [summaryOf(record)];
		const check = reportAsData({of: 'check', source}, {all, shelf});
		expect(check).toHaveProperty('record.check.answers.arm-name');
		const arm = {arm: 'north deck', newest: source, overridden: [], notCounted: []};
		for (const data of [
			check,
			reportAsData({of: 'arm', source: arm}, {all, shelf}),
			checkAsData(summaryOf(record), shelf),
		])
			expect(isTold(JSON.stringify(data))).toEqual([false, false, false]);
	});

	it('stand in no table, and come back whole from a back-up', async () => {
		const folder = dataFolder();
		await folder.store.finish(record.check.id, record);
		const from = {...whole, store: folder.store};
		for (const table of ['probe', 'bias'] as const)
			expect(isTold([...csvExport(from, table)].join(''))).toEqual([false, false, false]);
		const file = fileWith([...jsonExport(from)].join(''));
		expect(isTold(readFileSync(file, 'utf8'))).toEqual([true, true, true]);
		const other = dataFolder();
		await importing(file, other);
		expect(other.store.record(record.check.id)).toEqual(record);
	});

	it('are all the steps of a customer that there are', () => {
		expect(procedure.filter(({isPrivate}) => isPrivate).map(({id}) => id)).toEqual([
			'customer-name',
			'customer-complaint',
		]);
		expect(procedure.filter(({id}) => id.startsWith('customer')).every(({isPrivate}) => isPrivate)).toBe(true);
	});
});
