import {readdirSync, readFileSync} from 'node:fs';
import path from 'node:path';
import {describe, expect, it} from 'vitest';

const root = path.resolve(import.meta.dirname, '../source');
const files = readdirSync(root, {recursive: true, encoding: 'utf8'})
	.filter((name) => /\.tsx?$/.test(name) && !name.startsWith('build'))
	.map((name) => ({name: name.replaceAll(path.sep, '/'), text: readFileSync(path.join(root, name), 'utf8')}));

type Source = (typeof files)[number];
type Import = {readonly from: string; readonly typeOnly: boolean};

/** The folder of a file in source/, or the name of a file that stands there by itself. */
const layerOf = (name: string): string =>
	name.includes('/') ? (name.split('/')[0] ?? '') : name.replace(/\.tsx?$/, '');

/** Without comments, so that what is merely told of does not count. */
const codeOf = ({text}: Source): string =>
	text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/^\s*\/\/.*$|\s\/\/ .*$/gm, '');

/** Where an import leads: a layer of source/, `shared`, or a package. */
function importsOf(file: Source): Import[] {
	const found = [
		...codeOf(file).matchAll(
			/^(?:import|export)\s+(type\s)?[^;'"]*?from\s+'([^']+)'|^import\s+'([^']+)'|import\(\s*'([^']+)'/gm,
		),
	];
	return found.map(([, type, from, bare, lazy]) => {
		const target = from ?? bare ?? lazy ?? '';
		const typeOnly = type !== undefined;
		if (target.startsWith('#language/')) return {from: 'words', typeOnly};
		if (!target.startsWith('.')) return {from: target.replace(/^node:/, ''), typeOnly};
		const whole = path.posix.join(path.posix.dirname(file.name), target);
		if (whole.startsWith('../shared/')) return {from: 'shared', typeOnly};
		return {from: layerOf(whole.replace(/\.jsx?$/, '')), typeOnly};
	});
}

type Fence = {
	readonly layer: string;
	readonly why: string;
	readonly may: readonly (string | RegExp)[];
	readonly typesOf?: readonly string[];
};

/** What each layer may import beside itself. A package is named as it is imported. */
const fences: readonly Fence[] = [
	{layer: 'units', why: 'one table, checkable against handbooks', may: ['shared']},
	{layer: 'language', why: 'the list of languages, which is the same in all of them', may: []},
	{layer: 'spellings', why: 'what was typed under one language is read again under another', may: []},
	{layer: 'said', why: 'something to be told is an id and its values', may: []},
	{layer: 'visible-text', why: 'text from outside is made safe in one way, whoever shows it', may: []},
	{
		layer: 'measures',
		why: 'numbers in, numbers out: checkable value for value against an independent calculation',
		may: ['shared', '@stdlib/stats-base-dists-t-quantile', /^date-fns\//],
	},
	{
		layer: 'procedure',
		why: 'the document of the technician: readable from top to bottom by someone who only knows the bench',
		may: ['shared', 'units', 'spellings', 'language', 'measures', 'zod/mini'],
	},
	{
		layer: 'words',
		why: 'what a person reads stands in one place, and another language is another folder',
		may: ['shared', 'units', 'visible-text', 'language', 'spellings'],
		typesOf: ['measures', 'procedure', 'check', 'results', 'store', 'practice'],
	},
	{
		layer: 'check',
		why: 'thousands of random walks in a moment, and resuming is nothing but reading back',
		may: ['procedure', 'zod/mini', /^date-fns\//],
	},
	{
		layer: 'results',
		why: 'one pure function from answers to figures and findings, called by pages, documents and tests alike',
		may: ['shared', 'units', 'visible-text', 'measures', 'procedure', 'check', 'zod/mini', /^date-fns\//],
	},
	{
		layer: 'pages',
		why: 'what a screen shows is data: both faces draw the same',
		may: ['shared', 'units', 'measures', 'procedure', 'check', 'results', 'words', /^date-fns\//],
		typesOf: ['workbench'],
	},
	{
		layer: 'workbench',
		why: 'the door to the world outside is a type',
		may: [],
		typesOf: ['check', 'pages', 'results', 'procedure', 'words'],
	},
	{
		layer: 'practice',
		why: 'an invented arm without screen, disk or clock: the same seed gives the same run, and a proof takes seconds',
		may: ['shared', 'units', 'measures', 'words', /^pure-rand\//],
		typesOf: ['results'],
	},
	{
		layer: 'teaching',
		why: 'practice is taught beside the steps and not in them: a real check never meets it',
		may: ['units', 'measures', 'procedure', 'check', 'results', 'pages', 'words', 'practice'],
		typesOf: ['workbench'],
	},
	{
		layer: 'reports',
		why: 'a report is made of what was found and kept, and of nothing else: the same record gives the same report',
		may: [
			'shared',
			'units',
			'visible-text',
			'check',
			'procedure',
			'results',
			'pages',
			'words',
			'teaching',
			'ical-generator',
			'crypto',
			/^date-fns\//,
		],
		typesOf: ['measures'],
	},
	{
		layer: 'store',
		why: 'one place to be suspicious of the disk, and it need not know what it keeps',
		may: ['zod/mini', 'conf', /^date-fns\//, 'fs', 'fs/promises', 'path', 'os', 'crypto', 'buffer', 'util', 'url'],
		typesOf: ['check', 'results', 'pages'],
	},
	{
		layer: 'desk',
		why: 'all that a face may ask of the disk and the clock is done in one place',
		may: [
			'check',
			'pages',
			'practice',
			'procedure',
			'results',
			'store',
			'teaching',
			'words',
			'zod/mini',
			'fastest-levenshtein',
			/^date-fns\//,
		],
		typesOf: ['workbench'],
	},
	{
		layer: 'exchange',
		why: 'an export is read, compared and added by the same rules, whoever asks for it',
		may: ['desk', 'pages', 'reports', 'results', 'store', 'words', 'visible-text', 'fs', 'path', 'crypto', 'util'],
	},
	{
		layer: 'plain',
		why: 'a face draws; it cannot compute, save or look at the clock behind the back of the rest',
		may: ['pages', 'words', 'spellings'],
		typesOf: ['check', 'procedure', 'workbench'],
	},
	{
		layer: 'screens',
		why: 'a screen cannot do physics or save behind the back of the reducer',
		may: ['pages', 'words', 'spellings', 'terminal', 'react', /^ink/, 'string-width', 'wrap-ansi'],
		typesOf: ['check', 'procedure', 'workbench'],
	},
	{
		layer: 'terminal',
		why: 'keys, sizes and ways out are the same whatever is drawn',
		may: [
			'visible-text',
			'words',
			'react',
			'ink',
			'string-width',
			'events',
			'fs',
			'stream',
			'tty',
			'string_decoder',
			'child_process',
			'util',
		],
	},
];

const allowed = ({may, layer}: Fence, from: string): boolean =>
	// What is told by an id and its values may be told from anywhere.
	from === layer || from === 'said' || may.some((one) => (typeof one === 'string' ? one === from : one.test(from)));

describe('Imports keep to their layer', () => {
	it.each(fences.map((one) => [one.layer, one.why, one] as const))('%s: %s', (layer, _why, fence) => {
		const own = files.filter(({name}) => layerOf(name) === layer);
		expect(own.length).toBeGreaterThan(0);
		const strays = own.flatMap((file) =>
			importsOf(file)
				.filter(({from, typeOnly}) => !allowed(fence, from) && !(typeOnly && fence.typesOf?.includes(from)))
				.map(({from}) => `${file.name} imports ${from}`),
		);
		expect(strays).toEqual([]);
	});

	it('names every layer that there is', () => {
		const layers = new Set(files.map(({name}) => layerOf(name)));
		const edges = ['cli', 'choose-language', 'commands'];
		expect([...layers].filter((one) => !edges.includes(one) && !fences.some(({layer}) => layer === one))).toEqual([]);
	});

	it('commands know one door to the screens, so that the plain face never loads them', () => {
		const doors = files
			.filter(({name}) => layerOf(name) === 'commands')
			.flatMap(({text}) => [...text.matchAll(/'\.\.\/screens\/([^']+)'/g)].map(([, door]) => door));
		expect(new Set(doors)).toEqual(new Set(['show-app.js']));
	});

	it('the reader of import lines finds them, types and lazy ones too', () => {
		const text = [
			"import {a} from '../units.js';",
			"import type {B} from '../check/check.js';",
			"export type {C} from './c.js';",
			'import {',
			'\td,',
			"} from 'node:fs';",
			"const e = () => import('../store/e.js');",
			"// import {f} from '../screens/f.js';",
		].join('\n');
		expect(importsOf({name: 'plain/x.ts', text})).toEqual([
			{from: 'units', typeOnly: false},
			{from: 'check', typeOnly: true},
			{from: 'plain', typeOnly: true},
			{from: 'fs', typeOnly: false},
			{from: 'store', typeOnly: false},
		]);
	});
});

describe('The world outside', () => {
	// The edges: they alone may look at clock, process and chance, so that everything else can be replayed.
	const edges = ['cli', 'choose-language', 'commands', 'desk', 'terminal', 'store'];
	const outside = [/\bprocess\b/, /\bDate\.now\b/, /\bnew Date\(\)/, /\bMath\.random\b/, /\bperformance\b/];
	// A bounce of the Enter key is told by its time on the screen; nothing that is kept depends on it.
	// A sentence may tell of a process.
	const exceptions = ['screens/use-field-keys.ts: performance', 'words/en/store.ts: process'];

	it('is looked at only by the edges: anything else can be replayed', () => {
		const strays = files
			.filter(({name}) => !edges.includes(layerOf(name)))
			.flatMap((file) =>
				outside.flatMap((one) => {
					const found = one.exec(codeOf(file));
					return found ? [`${file.name}: ${found[0]}`] : [];
				}),
			);
		expect(strays.filter((one) => !exceptions.includes(one))).toEqual([]);
	});

	it('is reached through conf in one folder only', () => {
		const users = files
			.filter((file) => importsOf(file).some(({from}) => from === 'conf'))
			.map(({name}) => layerOf(name));
		expect([...new Set(users)]).toEqual(['store']);
	});
});

describe('Every file', () => {
	it('has named exports only: a thing is called the same everywhere', () => {
		expect(files.filter((file) => /^export default/m.test(codeOf(file))).map(({name}) => name)).toEqual([]);
	});

	it('is short enough to be read in one go: 200 lines at most', () => {
		const long = files.map(({name, text}) => `${name}: ${text.trimEnd().split('\n').length}`);
		expect(long.filter((one) => Number(one.split(': ')[1]) > 200)).toEqual([]);
	});

	it('is named in lower case with hyphens', () => {
		expect(files.map(({name}) => name).filter((name) => !/^(?:[a-z0-9-]+\/)*[a-z0-9-]+\.tsx?$/.test(name))).toEqual([]);
	});
});
