import {beforeAll, expect, it} from 'vitest';
import {csvExport} from '../../source/exchange/write-export.js';
import {
	asDocument,
	asLines,
	type DataFolder,
	dataFolder,
	documentOf,
	exported,
	fileWith,
	fullFolder,
	importing,
} from '../helpers/data-folders.js';

let from: DataFolder;
let text: string;
beforeAll(async () => {
	from = await fullFolder();
	text = exported(from);
});

/** All keys the other way round. */
const turned = (value: unknown): unknown => {
	if (typeof value !== 'object' || value === null) return value;
	if (Array.isArray(value)) return value.map(turned);
	const entries = Object.entries(value).map(([key, one]) => [key, turned(one)]);
	return Object.fromEntries(entries.reverse());
};

const importedInTurn = async (...texts: readonly string[]): Promise<DataFolder> => {
	const to = dataFolder();
	for (const one of texts) await importing(fileWith(one), to);
	return to;
};

const csvOf = ({store}: DataFolder, table: 'probe' | 'bias'): string =>
	[...csvExport({store, program: '0.0.0', at: '2026-11-25T15:00:00+01:00', tell: () => {}}, table)].join('');

it('The same data make the same bytes, whichever way they came', async () => {
	const {checks, profiles, settings, ...head} = documentOf(text);
	const [one, other] = [checks.slice(0, 3), checks.slice(3)].map((some) =>
		asLines({...head, profiles, settings, checks: some}),
	);
	const backwards = asDocument({...head, settings, profiles, checks: checks.map(turned).toReversed()});
	const ways = [[one, other], [other, one], [backwards], [other, backwards, one]];
	for (const way of ways) {
		const to = await importedInTurn(...way.map((some = '') => some));
		expect(exported(to)).toBe(text);
		for (const table of ['probe', 'bias'] as const) expect(csvOf(to, table)).toBe(csvOf(from, table));
	}
});

it('What is noted beside a check is in one order too, whichever was noted first', async () => {
	const mark = {void: {reason: 'draught', at: '2026-06-01T08:00:00Z'}};
	const done = {putBackAt: '2026-06-02T08:00:00Z'};
	const texts: string[] = [];
	for (const noted of [
		{...mark, ...done},
		{...done, ...mark},
	]) {
		const to = await importedInTurn(text);
		const [id = ''] = to.store.ids();
		await to.store.saveRemark(id, noted);
		texts.push(exported(to));
	}
	expect(texts[0]).toBe(texts[1]);
});
