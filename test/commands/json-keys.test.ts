import {beforeAll, describe, expect, it} from 'vitest';
import * as z from 'zod/mini';
import {runDue} from '../../source/commands/due.js';
import {runList} from '../../source/commands/list.js';
import {runReport} from '../../source/commands/report.js';
import {parseDocument} from '../../source/results/document.js';
import {recordSchema} from '../../source/results/record.js';
import {jsonKeys} from '../../source/words/en/commands/scripts.js';
import {topics} from '../../source/words/help-topics.js';
import {armProfile, filed, folderWith} from '../helpers/filed-checks.js';
import {fullStory, played} from '../helpers/invented-checks.js';
import {printedBy} from '../helpers/printed.js';

const next = {date: '2026-05-20', because: 'In six months.'};
const full = played(fullStory);
let data = '';
beforeAll(async () => {
	data = await folderWith([filed({at: '2025-11-20T10:00:00+01:00', next}), full], {
		profiles: [armProfile('north deck', {formerNames: ['old name']})],
	});
});

const parsed = async (work: () => Promise<number>): Promise<unknown> => JSON.parse((await printedBy(work)).out);
const objects = z.array(z.record(z.string(), z.unknown()));

/** Every key with something other than an object in it, as `probe[].radiusMm`. */
function keysIn(value: unknown, at = ''): string[] {
	if (Array.isArray(value)) return value.length === 0 ? [at] : value.flatMap((one) => keysIn(one, `${at}[]`));
	if (typeof value !== 'object' || value === null) return [at];
	return Object.entries(value).flatMap(([key, one]) => keysIn(one, at === '' ? key : `${at}.${key}`));
}

/** A key that is told as a whole stands for all that is in it. */
const toldBy = (told: object, key: string): string | undefined =>
	Object.keys(told).find((one) => key === one || key.startsWith(`${one}.`) || key.startsWith(`${one}[]`));

function expectTold(values: readonly unknown[], told: object): void {
	const keys = values.flatMap((value) => keysIn(value));
	expect(keys.filter((key) => toldBy(told, key) === undefined && !isEmptyList(told, key))).toEqual([]);
	const used = new Set(keys.map((key) => toldBy(told, key)));
	expect(Object.keys(told).filter((key) => !used.has(key))).toEqual([]);
}

/** A list without anything in it has none of the keys of its items. */
const isEmptyList = (told: object, key: string): boolean =>
	Object.keys(told).some((one) => one.startsWith(`${key}[].`));

describe('What --as json prints has the keys that the help tells of, all of them and no others', () => {
	it('in the list, the same ones for every check', async () => {
		const rows = objects.parse(await parsed(() => runList({as: 'json', data})));
		expectTold(rows, jsonKeys.list);
		const [one, other] = rows.map((row) => Object.keys(row));
		expect(one).toEqual(other);
	});

	it('in the dates', async () => {
		expectTold(objects.parse(await parsed(() => runDue({as: 'json', data}))), jsonKeys.due);
	});

	const reportOf = (named: {id?: string; arm?: string}) =>
		parsed(() => runReport({...named, as: 'json', data, version: '0.0.0'}));

	it('in the report of a check', async () => {
		expectTold([await reportOf({id: full.check.id})], {...jsonKeys.list, ...jsonKeys.report});
	});

	it('in the report of an arm', async () => {
		const report = z.object({arm: z.string(), formerNames: z.array(z.string()), checks: objects});
		const {checks, ...arm} = report.parse(await reportOf({arm: 'old name'}));
		expect(arm).toEqual({arm: 'north deck', formerNames: ['old name']});
		expectTold([{...arm, checks: []}], jsonKeys.arm);
		expect(checks).toEqual(await parsed(() => runList({as: 'json', data})));
	});

	it('and the report holds the record, the figures as issued, and a document that compute takes', async () => {
		const {record, figures, findings, document} = z.record(z.string(), z.unknown()).parse(await reportOf({}));
		expect(z.safeParse(recordSchema, record).success).toBe(true);
		expect({figures, findings}).toEqual(JSON.parse(JSON.stringify({...full.issued, form: undefined})));
		expect(parseDocument(document).ok).toBe(true);
	});

	it('and they stand in a help topic, which is part of the manual page', () => {
		const rows = topics.flatMap(({blocks}) =>
			blocks.flatMap((block) => (typeof block !== 'string' && 'rows' in block ? block.rows : [])),
		);
		for (const told of Object.values(jsonKeys)) expect(rows).toEqual(expect.arrayContaining(Object.entries(told)));
	});
});
