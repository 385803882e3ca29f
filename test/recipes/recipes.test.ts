import {readFileSync} from 'node:fs';
import path from 'node:path';
import ts from 'typescript';
import {describe, expect, it} from 'vitest';

// What DEVELOPERS.md says of where things are added, done on a copy in memory: after the first edit the compiler must
// name every file that is still to be edited, and after the last one it must be content.

const root = path.resolve(import.meta.dirname, '../..');

/** One spot of a file: text that stands in front of what is put in. An empty one is a file of its own. */
type Spot = readonly [file: string, before: string, added: string];

const config = ts.parseJsonConfigFileContent(
	ts.readConfigFile(path.join(root, 'tsconfig.json'), ts.sys.readFile).config,
	ts.sys,
	root,
);
const sources = config.fileNames.filter((name) => name.startsWith(path.join(root, 'source')));
const options: ts.CompilerOptions = {...config.options, noEmit: true, incremental: false};

/** Files as they stand, read in once for all programs. */
const known = new Map<string, ts.SourceFile | undefined>();

/** Files that do not compile with these spots edited, of those that are looked at. */
function faulty(spots: readonly Spot[], lookedAt?: readonly string[]): string[] {
	const edited = new Map<string, string>();
	for (const [file, after, added] of spots) {
		const name = path.join(root, 'source', file);
		const text = edited.get(name) ?? (after === '' ? '' : readFileSync(name, 'utf8'));
		if (!text.includes(after)) throw new Error(`${file} has no ${after}`);
		edited.set(
			name,
			text.replace(after, () => `${after}${added}`),
		);
	}
	const host = ts.createCompilerHost(options);
	const {readFile, fileExists, getSourceFile} = host;
	host.readFile = (name) => edited.get(name) ?? readFile(name);
	host.fileExists = (name) => edited.has(name) || fileExists(name);
	// A folder that is in memory only is looked into all the same.
	Reflect.deleteProperty(host, 'directoryExists');
	host.getSourceFile = (name, ...rest) => {
		const text = edited.get(name);
		if (text !== undefined) return ts.createSourceFile(name, text, rest[0]);
		if (!known.has(name)) known.set(name, getSourceFile(name, ...rest));
		return known.get(name);
	};
	const names = [...new Set([...sources, ...edited.keys()])];
	const program = ts.createProgram(names, options, host);
	const files = lookedAt?.map((file) => program.getSourceFile(path.join(root, 'source', file))) ?? [undefined];
	const found = files.flatMap((file) => program.getSemanticDiagnostics(file)).flatMap(({file}) => file?.fileName ?? []);
	return [...new Set(found)].map((name) => path.relative(path.join(root, 'source'), name)).sort();
}

type Recipe = {
	readonly first: readonly Spot[];
	/** What the compiler names after the first edits. */
	readonly asks: readonly string[];
	readonly rest: readonly Spot[];
};

const inEnglish: Readonly<Record<string, Recipe>> = {
	'a step': {
		first: [['procedure/step-ids.ts', "\tsafe: 'ticks',\n", "\t'lid-off': 'confirm',\n"]],
		asks: ['words/en/problems.ts', 'words/en/steps/index.ts'],
		rest: [
			[
				'procedure/steps-still.ts',
				'export const firstSteps: readonly Step[] = [\n',
				"\tstepsOf('safe')('lid-off', {}),\n",
			],
			[
				'words/en/steps/safe.ts',
				'export const safe = {\n',
				"\t'lid-off': {title: '', ask: '', why: '', mistake: ''},\n",
			],
			[
				'words/en/problems.ts',
				'const notConfirmed: Readonly<Record<UnconfirmedStep, string>> = {\n',
				"\t'lid-off': '',\n",
			],
		],
	},
	'a setting': {
		first: [
			['procedure/settings.ts', 'export type Settings = VerdictLimits & {\n', '\treadonly hush: boolean;\n'],
			['procedure/settings.ts', "export const switchIds = ['setAnew', ", "'hush', "],
			['procedure/settings.ts', 'export const usualSettings: Settings = {\n', '\thush: false,\n'],
		],
		asks: ['desk/stored-forms.ts', 'words/en/beside/settings.ts'],
		rest: [
			['words/en/beside/settings.ts', 'const switches = {\n', "\thush: () => '',\n"],
			['desk/stored-forms.ts', 'const settingsSchema = z.looseObject({\n', '\thush: z.boolean(),\n'],
		],
	},
	'a bias device that is set in a new way': {
		first: [
			['procedure/bias-devices.ts', "export type SetBy = 'nothing' ", "| 'cord' "],
			['procedure/bias-devices.ts', "\tspring: {setBy: 'dial'},\n", "\tcord: {setBy: 'cord', reads: 'angle'},\n"],
			['procedure/step-ids.ts', "'arm-bias-device': ['none', ", "'cord', "],
		],
		asks: ['words/en/bias-devices.ts', 'words/en/bias/advice.ts', 'words/en/options.ts'],
		rest: [
			[
				'words/en/bias-devices.ts',
				'export const deviceWords: Readonly<Record<BiasDeviceId, BiasDeviceWords>> = {\n',
				"\tcord: {off: '', mistake: '', on: '', restore: ''},\n",
			],
			['words/en/bias/advice.ts', '\tswitch (setBy) {\n', "\t\tcase 'cord':\n\t\t\treturn '';\n"],
			['words/en/options.ts', "\t'arm-bias-device': {\n", "\t\tcord: '',\n"],
		],
	},
	'a finding with its cure': {
		first: [
			[
				'results/severe-rows.ts',
				'export const severeRows = [\n',
				"\t{code: 'bent', who: 'maker', bias: 'after-cure', find: () => ({places: ['inner'], values: {byDeg: 1}})},\n",
			],
		],
		asks: ['results/next-action.ts', 'words/en/findings.ts'],
		rest: [
			[
				'words/en/findings.ts',
				'export const findings: {readonly [Code in FindingCode]: FindingWords<FindingValues[Code]>} = {\n',
				"\tbent: {brief: '', found: ({byDeg}) => String(byDeg.toFixed(1)), likely: '', next: () => ''},\n",
			],
			[
				'results/next-action.ts',
				'\tswitch (code) {\n',
				"\t\tcase 'bent':\n\t\t\treturn {code, kind: 'maker', who: 'maker', minutes: null, finestPct: null};\n",
			],
		],
	},
	'a language': {
		first: [['language.ts', "de: 'Deutsch'", ", other: 'other'"]],
		asks: ['words/said-alike.ts'],
		rest: [['words/said-alike.ts', 'type Held = {\n', '\tother: German;\n']],
	},
};

/** What is edited in the words of one language is edited in those of the other. */
const inBoth = (file: string): readonly string[] =>
	file.startsWith('words/en/') ? [file, file.replace('/en/', '/de/')] : [file];

const recipes = Object.fromEntries(
	Object.entries(inEnglish).map(([name, {first, asks, rest}]): [string, Recipe] => {
		const spots = (all: readonly Spot[]) =>
			all.flatMap(([file, before, added]) => inBoth(file).map((one): Spot => [one, before, added]));
		return [name, {first: spots(first), asks: asks.flatMap(inBoth), rest: spots(rest)}];
	}),
);

describe('A recipe', () => {
	const all = Object.values(recipes);

	it('begins with one table, and the compiler names every file that is left', () => {
		const wanted = all.flatMap(({asks}) => asks);
		const named = faulty(
			all.flatMap(({first}) => first),
			wanted,
		);
		expect(wanted.filter((file) => !named.includes(file))).toEqual([]);
	});

	it('is done with those', () => {
		expect(faulty(all.flatMap(({first, rest}) => [...first, ...rest]))).toEqual([]);
	});

	it.each(Object.entries(recipes))('is told as it is in DEVELOPERS.md: %s', (name, {first, rest}) => {
		const files = new Set([...first, ...rest].map(([file]) => file));
		const told = readFileSync(path.join(root, 'DEVELOPERS.md'), 'utf8');
		expect(told).toContain(`| ${name} | ${files.size} | ${first.length + rest.length} |`);
	});
});
