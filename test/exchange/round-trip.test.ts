import {existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync} from 'node:fs';
import path from 'node:path';
import fc from 'fast-check';
import {beforeAll, describe, expect, it} from 'vitest';
import {Shelf} from '../../source/desk/shelf.js';
import {compute} from '../../source/results/compute.js';
import {documentOfCheck} from '../../source/results/document-of-check.js';
import {newCheckId} from '../../source/store/check-id.js';
import {sealDocument} from '../../source/store/document.js';
import {forbiddenKeyIn} from '../../source/store/forbidden-key.js';
import {StoreError} from '../../source/store/store-error.js';
import {CURRENT_VERSION} from '../../source/store/upgrades.js';
import {
	asDocument,
	type DataFolder,
	dataFolder,
	documentOf,
	exported,
	exportForms,
	fileWith,
	fullFolder,
	importing,
	inventedRecords,
	leftId,
	plainId,
} from '../helpers/data-folders.js';
import {words} from '../helpers/said.js';

const say = words.commands.exchange;

let from: DataFolder;
let text: string;
beforeAll(async () => {
	from = await fullFolder();
	text = exported(from);
});

const listOf = ({dataDir}: DataFolder) => new Shelf(dataDir, () => new Date()).all();

/** Every file of a data folder with its bytes. */
const bytesOf = ({dataDir}: DataFolder): Record<string, string> =>
	existsSync(dataDir)
		? Object.fromEntries(
				readdirSync(dataDir, {recursive: true, withFileTypes: true})
					.filter((entry) => entry.isFile())
					.map((entry) => path.join(entry.parentPath, entry.name))
					.map((one) => [path.relative(dataDir, one), readFileSync(one, 'latin1')]),
			)
		: {};

const figuresOf = ({store}: DataFolder): unknown =>
	store.ids().map((id) => {
		const record = store.record(id);
		if (record instanceof StoreError) throw record;
		const found = documentOfCheck(record.check);
		return found.ok ? compute(found.document) : found.missing;
	});

describe.each(exportForms)('From one data folder to another, with $form', ({written}) => {
	let file: string;
	beforeAll(() => {
		file = fileWith(written(documentOf(text)));
	});

	it('everything goes over: the same list, the same figures, notes, profiles and settings', async () => {
		const to = dataFolder();
		const {lines} = await importing(file, to);
		expect(lines[1]).toBe(say.newParts({checks: 7, remarks: 0, profiles: 3, settings: true}));
		expect(listOf(to)).toEqual(listOf(from));
		expect(listOf(to).find(({id}) => id === plainId)?.voidBecause).toBe('another arm was meant');
		expect(listOf(to).find(({id}) => id === leftId)?.outcome).toBe('put back');
		expect(figuresOf(to)).toEqual(figuresOf(from));
		for (const {check} of inventedRecords) expect(to.store.filed(check.id)).toEqual(from.store.filed(check.id));
		expect(to.store.profiles().value).toEqual(from.store.profiles().value);
		expect(to.store.settings().value).toEqual(from.store.settings().value);
		expect(to.notices).toEqual([]);
	});

	it('a second import finds nothing new and changes no file', async () => {
		const to = dataFolder();
		await importing(file, to);
		const before = bytesOf(to);
		const {plan, lines} = await importing(file, to);
		expect(plan).toMatchObject({
			newChecks: [],
			newRemarks: [],
			same: 7,
			clashes: [],
			remarkClashes: [],
			settings: 'same',
		});
		expect(lines.slice(1)).toEqual([say.nothingNew, say.hereAlready({checks: 7, profiles: 3, settings: true})]);
		expect(bytesOf(to)).toEqual(before);
	});

	it('looking at what an import would do changes nothing, not even an empty place', async () => {
		const to = dataFolder();
		await importing(file, to, {add: false});
		expect(existsSync(to.dataDir)).toBe(false);
	});

	it('an export of what was imported is the same export', async () => {
		const to = dataFolder();
		await importing(file, to);
		expect(exported(to)).toBe(text);
	});

	it('the way in which the file is laid out, and the order of its keys, do not matter', async () => {
		const to = dataFolder();
		await importing(file, to);
		const turned = (value: unknown): unknown => {
			if (typeof value !== 'object' || value === null) return value;
			if (Array.isArray(value)) return value.map(turned);
			return Object.fromEntries(
				Object.entries(value)
					.map(([key, one]) => [key, turned(one)])
					.reverse(),
			);
		};
		const lines = text.split('\n').filter((line) => line !== '');
		const other =
			written === asDocument
				? JSON.stringify(turned(JSON.parse(readFileSync(file, 'utf8'))), null, '\t').replaceAll('\n', '\r\n')
				: lines.map((line) => `${JSON.stringify(turned(JSON.parse(line)))} \r\n\r\n`).join('');
		expect((await importing(fileWith(`\uFEFF${other}`), to)).lines[1]).toBe(say.nothingNew);
	});

	it('a zero with a minus, which is written without one, is the same zero the second time', async () => {
		const to = dataFolder();
		const other = fileWith(readFileSync(file, 'utf8').replace('"record":{', '"record":{"more":-0,'));
		await importing(other, to);
		expect((await importing(other, to)).plan).toMatchObject({same: 7, clashes: []});
	});

	it('what lies in a file of a check that this program does not know goes over too', async () => {
		const to = dataFolder();
		const [record] = inventedRecords;
		if (!record) throw new Error('there is no check');
		const id = newCheckId(new Date('2026-01-02T03:04:05Z'), () => 0.5);
		const json = {
			...record,
			check: {...record.check, id, fromALaterProgram: [1, {toString: 'x', hasOwnProperty: {x: 1}}]},
			more: {'a.b': -0},
		};
		const one = dataFolder();
		mkdirSync(path.join(one.dataDir, 'checks'), {recursive: true});
		const sealed = sealDocument({
			kind: 'armdrift-check',
			version: CURRENT_VERSION,
			id,
			finishedAt: '2026-01-02T04:04:05.000Z',
			record: json,
		});
		writeFileSync(path.join(one.dataDir, 'checks', `${id}.json`), sealed.text);
		await importing(fileWith(written(documentOf(exported(one)))), to);
		expect(to.store.filed(id)).toMatchObject({json: JSON.parse(JSON.stringify(json))});
		expect((await importing(fileWith(exported(one)), to)).plan.same).toBe(1);
	});

	it('any text and any number in it comes over as it was', async () => {
		const [record] = inventedRecords;
		if (!record) throw new Error('there is no check');
		const entry = fc.record({
			note: fc.string({unit: 'binary', maxLength: 60}),
			celsius: fc.double({noNaN: true, noDefaultInfinity: true}),
			// A key that would make another object of it is refused: `odd-keys.test.ts`.
			extra: fc.jsonValue().filter((value) => forbiddenKeyIn(JSON.stringify(value), value) === undefined),
		});
		let count = 0;
		await fc.assert(
			fc.asyncProperty(entry, async ({note, celsius, extra}) => {
				const id = newCheckId(new Date(Date.UTC(2026, 0, 1) + count++ * 1000), () => 0.5);
				const {at} = record.check.answers['room-note'] ?? {at: record.finishedAt};
				const answers = {
					...record.check.answers,
					'arm-name': {typed: note, value: note, at},
					'room-temperature': {typed: `${celsius} °C`, value: celsius, at},
				};
				const one = dataFolder();
				const to = dataFolder();
				await one.store.finish(id, {...record, check: {...record.check, id, answers}, extra});
				await importing(fileWith(written(documentOf(exported(one)))), to);
				expect(to.store.filed(id)).toEqual(one.store.filed(id));
				expect((await importing(fileWith(exported(one)), to)).plan.same).toBe(1);
			}),
			{numRuns: 40},
		);
	});
});
