import {expect, it} from 'vitest';
import type {Damage} from '../../source/store/store-fault.js';
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

const damageSaid = (damage: Damage) => storeText({id: 'unusable', values: {file: '', damage}}).split('""')[1] ?? '';
/** What is said of such a key, from its place within a check or beside the checks on. */
const forbidden = (at: string) => at + damageSaid({id: 'forbidden-key', values: {at: '@'}}).split('@')[1];
const changed = [
	['twice', '"settings":{', '"bell":true,', damageSaid({id: 'twofold-key', values: {key: 'bell'}})],
	['of no object', '"settings":{', '"__proto__":{"x":1},', forbidden('settings.__proto__')],
	['of no object, escaped', '"settings":{', '"__pr\\u006fto__":{"x":1},', forbidden('settings.__proto__')],
	['of no object in a record', '"issued":{', '"__proto__":{"x":1},', forbidden('record.issued.__proto__')],
	['of every object', '"issued":{', '"constructor":{"x":1},', forbidden('record.issued.constructor')],
] as const;

it.each(exportForms.flatMap(({form, written}) => changed.map((one) => [form, ...one, written] as const)))(
	'An export as %s with a key %s is refused, and nothing is taken from it',
	async (_form, _what, behind, key, said, written) => {
		const text = written(documentOf(exported(await fullFolder()))).replace(behind, behind + key);
		const folder = dataFolder();
		expect((await refusedImport(fileWith(text), folder)).sentence).toContain(said);
		expect(folder.store.ids()).toEqual([]);
	},
);
