import {expect, it} from 'vitest';
import {storeText} from '../../source/words/store-text.js';
import {
	dataFolder,
	documentOf,
	exported,
	exportForms,
	fileWith,
	fullFolder,
	refusedImport,
} from '../helpers/data-folders.js';
import {words} from '../helpers/said.js';

const twice = storeText({id: 'unusable', values: {file: '', damage: {id: 'twofold-key', values: {key: 'bell'}}}});
const changed = [
	['twice', '"settings":{"bell":true,', twice.split('""')[1]],
	['of no object', '"settings":{"__proto__":{"x":1},', words.commands.exchange.forbiddenKey({where: 'settings'})],
] as const;

it.each(exportForms.flatMap(({form, written}) => changed.map((one) => [form, ...one, written] as const)))(
	'An export as %s with a key %s is refused, and nothing is taken from it',
	async (_form, _what, put, said, written) => {
		const text = written(documentOf(exported(await fullFolder()))).replace('"settings":{', put);
		const folder = dataFolder();
		expect((await refusedImport(fileWith(text), folder)).sentence).toContain(said);
		expect(folder.store.ids()).toEqual([]);
	},
);
