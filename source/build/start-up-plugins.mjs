// Changes to libraries while they are bundled, each for the time to the first frame (bare Node takes some 50 ms, so
// 10 ms are felt); DEVELOPERS.md has what each costs and gains. Every change names the text that it replaces and fails the build where a newer version of the
// library no longer has it: then look whether the change is still needed, and adapt or drop it.
import {readFileSync} from 'node:fs';
import {fileURLToPath} from 'node:url';

/** Replaces the one place in a text that matches; a sentence for whoever upgraded the library if there is none. */
const replaceOnce = (text, {from, to}, file) => {
	const found = typeof from === 'string' ? text.includes(from) : from.test(text);
	if (!found) {
		throw new Error(
			`${file} no longer contains ${from}: the library has changed, so look at its entry in source/build/start-up-plugins.mjs.`,
		);
	}
	return text.replace(from, typeof to === 'function' ? to : () => to);
};

const GRAPHEMES = fileURLToPath(new URL('graphemes.ts', import.meta.url));

const ownGraphemes = (declaration) => ({
	from: declaration,
	to: declaration.replace(/new Intl.*/, 'graphemes;'),
	keep: () => `import {graphemes} from ${JSON.stringify(GRAPHEMES)};\n`,
});

const REPLACEMENTS = [
	{
		// The WebAssembly of the layout engine as bytes instead of a data URL, whose fetch() would load Node's whole HTTP
		// client (25 ms, 12 MiB).
		file: /yoga-layout[\\/]dist[\\/]binaries[\\/]yoga-wasm-base64-esm\.js$/,
		changes: [
			{
				from: /data:application\/octet-stream;base64,([\d+/=A-Za-z]+)/,
				to: '',
				keep: (base64) => `export const yogaBytes = () => Buffer.from('${base64}', 'base64');\n`,
			},
			{from: 'import.meta.url', to: '""'},
		],
	},
	{
		// ... and instantiated at once: top-level await can't be in CommonJS. Emscripten fills the object that it is
		// given, which is done when the call returns if instantiateWasm doesn't wait.
		file: /yoga-layout[\\/]dist[\\/]src[\\/]index\.js$/,
		changes: [
			{from: 'import loadYoga from', to: 'import loadYoga, {yogaBytes} from'},
			{
				from: 'const Yoga = wrapAssembly(await loadYoga());',
				to: `const library = {
					instantiateWasm(imports, done) {
						const instance = new WebAssembly.Instance(new WebAssembly.Module(yogaBytes()), imports);
						done(instance);
						return instance.exports;
					},
				};
				loadYoga(library);
				const Yoga = wrapAssembly(library);`,
			},
		],
	},
	{
		// The two other top-level awaits, both only for React's developer tools.
		file: /ink[\\/]build[\\/]reconciler\.js$/,
		changes: [
			{from: /if \(isDev\(\)\) \{[\s\S]*?\n\}\nconst diff/, to: 'const diff'},
			{
				from: /const packageJson = isDev\(\)[^;]*;/,
				to: 'const packageJson = {name: undefined, version: undefined};',
			},
		],
	},
	{
		// Here and in the next three: see graphemes.ts.
		file: /slice-ansi[\\/]tokenize-ansi\.js$/,
		changes: [ownGraphemes("const GRAPHEME_SEGMENTER = new Intl.Segmenter(undefined, {granularity: 'grapheme'});")],
	},
	{
		file: /@alcalzone[\\/]ansi-tokenize[\\/]build[\\/]tokenize\.js$/,
		changes: [ownGraphemes('const segmenter = new Intl.Segmenter(undefined, { granularity: "grapheme" });')],
	},
	{
		// The older copy; it stands first since the next pattern matches it too.
		file: /wrap-ansi[\\/]node_modules[\\/]string-width[\\/]index\.js$/,
		changes: [ownGraphemes('const segmenter = new Intl.Segmenter();')],
	},
	{
		file: /string-width[\\/]index\.js$/,
		changes: [
			ownGraphemes('const segmenter = new Intl.Segmenter();'),
			{
				// The first character outside ASCII runs this expression and pays 10 to 20 ms. Every emoji it knows holds a
				// pictograph, a character shown as an emoji by default, or the keycap mark: the cheap test goes first.
				from: 'const rgiEmojiRegex = /^\\p{RGI_Emoji}$/v;',
				to: `let rgi; const rgiEmojiRegex = {
					test: text => /[\\p{Extended_Pictographic}\\p{Emoji_Presentation}\\u20E3]/u.test(text)
						&& (rgi ??= new RegExp('^\\\\p{RGI_Emoji}$', 'v')).test(text),
				};`,
			},
		],
	},
	{
		// A frame is as tall as the terminal, and Ink makes each of its cells anew at every key. Nothing changes a cell, so all
		// blank ones are one; what a line is made of is kept from frame to frame, and so is the text of a row whose cells are
		// those of the last frame, for few lines change.
		file: /ink[\\/]build[\\/]output\.js$/,
		changes: [
			{
				from: 'export default class Output {',
				to: `const blankCell = {type: 'char', value: ' ', fullWidth: false, styles: []};
const keptCaches = new OutputCaches();
const mostKept = 2000;
const frameCaches = () => {
	if (keptCaches.styledChars.size > mostKept || keptCaches.widths.size > mostKept) {
		keptCaches.styledChars.clear();
		keptCaches.widths.clear();
		keptCaches.blockWidths.clear();
	}
	return keptCaches;
};
let lastRows = [];
const isSame = (row, line) => row?.line.length === line.length && row.line.every((cell, x) => cell === line[x]);
export default class Output {`,
			},
			{from: 'caches = new OutputCaches();\n    constructor', to: 'caches = frameCaches();\n    constructor'},
			{
				from: /row\.push\(\{\s*type: 'char',\s*value: ' ',\s*fullWidth: false,\s*styles: \[\],\s*\}\);/,
				to: 'row.push(blankCell);',
			},
			{
				from: /const generatedOutput = output\s*\.map\(line => \{/,
				to: `const rowOf = (line, y) => {
				if (isSame(lastRows[y], line)) return lastRows[y];`,
			},
			{
				from: /return styledCharsToString\((\w+)\)\.trimEnd\(\);\s*\}\)/,
				to: `return {line, text: styledCharsToString(lineWithoutEmptyItems).trimEnd()};
			};
			lastRows = output.map(rowOf);
			const generatedOutput = lastRows.map((row) => row.text)`,
			},
		],
	},
	{
		// Asked only where the terminal doesn't tell its size. The module brings the whole of Node's net with it.
		file: /terminal-size[\\/]index\.js$/,
		changes: [
			{
				from: "import {execFileSync} from 'node:child_process';",
				to: "const execFileSync = (...values) => require('node:child_process').execFileSync(...values);",
			},
		],
	},
	{
		// Only programs whose subcommands are programs of their own need it.
		usedBy: 'commander',
		file: /commander[\\/]lib[\\/]command\.js$/,
		changes: [
			{
				from: "const childProcess = require('node:child_process');",
				to: "const childProcess = {spawn: (...values) => require('node:child_process').spawn(...values)};",
			},
		],
	},
];

// Packages that are imported but never used by what we use. Each stand-in says so if that should change.
const STAND_INS = [
	{
		name: 'ajv/dist/2020.js',
		importer: /conf[\\/]dist[\\/]/,
		why: 'conf needs it for its schema option; we validate with zod',
	},
	{
		name: 'ajv-formats',
		importer: /conf[\\/]dist[\\/]/,
		why: 'conf needs it for its schema option; we validate with zod',
	},
	{
		name: 'semver',
		importer: /conf[\\/]dist[\\/]/,
		why: 'conf needs it for its migrations; we have our own upgrades',
	},
	{
		// Sixteen modules of Node, which would stay in memory.
		name: 'node:crypto',
		importer: /conf[\\/]dist[\\/]/,
		why: 'conf needs it for its encryptionKey option; we encrypt nothing',
	},
];

const standInCode = ({name, why}) => `
	const unused = () => { throw new Error(${JSON.stringify(`${name} is left out of the bundle: ${why}.`)}); };
	export default new Proxy(unused, {get: (_, name) => name === 'default' ? unused : unused()});
	export const Ajv2020 = class { constructor() { unused(); } };
`;

const matched = ({from}, contents) => (from instanceof RegExp ? from.exec(contents)?.[1] : undefined);

const replacementPlugin = ({file, changes}, applied) => ({
	name: `replace ${file.source}`,
	setup(context) {
		context.onLoad({filter: file}, ({path}) => {
			let contents = readFileSync(path, 'utf8');
			for (const change of changes) {
				const kept = change.keep?.(matched(change, contents)) ?? '';
				contents = kept + replaceOnce(contents, change, path);
			}
			applied.add(file.source);
			return {contents, loader: 'js'};
		});
	},
});

const standInPlugin = (standIn, applied) => ({
	name: `leave out ${standIn.name}`,
	setup(context) {
		context.onResolve({filter: new RegExp(`^${standIn.name.replaceAll('.', '\\.')}$`)}, ({importer}) => {
			if (!standIn.importer.test(importer)) return undefined;
			applied.add(standIn.name);
			return {path: standIn.name, namespace: 'stand-in'};
		});
		context.onLoad({filter: new RegExp(`^${standIn.name.replaceAll('.', '\\.')}$`), namespace: 'stand-in'}, () => ({
			contents: standInCode(standIn),
			loader: 'js',
		}));
	},
});

/** The plugins, and a check for the end of the build that none of them has silently lost its file. */
export const startUpPlugins = () => {
	const applied = new Set();
	const plugins = [
		...REPLACEMENTS.map((replacement) => replacementPlugin(replacement, applied)),
		...STAND_INS.map((standIn) => standInPlugin(standIn, applied)),
	];
	const assertAllApplied = (inputs) => {
		const uses = (name) => [...inputs].some((input) => input.includes(`node_modules/${name}/`));
		const wanted = [
			...REPLACEMENTS.filter(({usedBy = 'ink'}) => uses(usedBy)).map(({file}) => file.source),
			...STAND_INS.filter(({importer}) => uses(importer.source.split('[')[0])).map(({name}) => name),
		];
		const missing = wanted.filter((name) => !applied.has(name));
		if (missing.length > 0) {
			throw new Error(
				`Nothing was found to change for ${missing.join(', ')}: a library has moved its files, so look at source/build/start-up-plugins.mjs.`,
			);
		}
	};
	return {plugins, assertAllApplied};
};
