// Bundles the program: `node source/build/bundle.mjs` writes dist/. The entry becomes dist/armdrift.cjs. What is behind
// an `import('./x.js')` in source/ goes into files of its own, which are read only when that line runs, and what
// several of them need is shared: so --help needs commander alone, and Ink is loaded for the screens alone.
import {createHash} from 'node:crypto';
import {chmodSync, mkdirSync, readFileSync, rmSync, writeFileSync} from 'node:fs';
import path from 'node:path';
import {fileURLToPath} from 'node:url';
import {build, transform} from 'esbuild';
import {writeBesideProgram} from './beside-program.mjs';
import {compileAhead} from './compile-ahead.mjs';
import {languages} from './languages.mjs';
import {licenceTexts} from './licence-texts.mjs';
import {entryForAnyNode} from './old-node.mjs';
import {POSTPONED_PACKAGES, postponePackages} from './postpone-packages.mjs';
import {startUpPlugins} from './start-up-plugins.mjs';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const START = fileURLToPath(new URL('start.cjs', import.meta.url));
const PROGRAM = 'armdrift.cjs';
// What source/store/kept-view.ts has in place of the sum over the whole program.
const OWN_SUM = 'SUM-OVER-THE-PROGRAM';
const CHOOSES_LANGUAGE = 'source/choose-language.ts';
const USUAL_ENTRY = 'source/cli.tsx';
const [ENTRY = USUAL_ENTRY, FOLDER = 'dist'] = process.argv.slice(2);

const folder = path.resolve(ROOT, FOLDER);
const {plugins, assertAllApplied} = startUpPlugins();
const options = {
	absWorkingDir: ROOT,
	bundle: true,
	platform: 'node',
	target: 'node20.19',
	jsx: 'automatic',
	minify: true,
	legalComments: 'none',
	metafile: true,
	write: false,
	outdir: folder,
	outExtension: {'.js': '.cjs'},
	logLevel: 'warning',
	define: {'process.env.NODE_ENV': '"production"'},
	plugins: [postponePackages, ...plugins],
};

// CommonJS starts some 10 ms sooner than ESM, but esbuild can share code between files only as ESM: so it is turned
// into CommonJS afterwards, file by file, and import() into require() with it. What a file exports is handed over as it
// is: esbuild's copy of it would look up each name anew at every call from file to file.
const COPIED_EXPORTS = /module\.exports=__toCommonJS\((\w+)\)/;
const asCommonJs = async (text) => {
	const asRequire = {'dynamic-import': false};
	const {code} = await transform(text, {
		format: 'cjs',
		platform: 'node',
		target: 'node20.19',
		supported: asRequire,
		minifyWhitespace: true,
		minifySyntax: true,
	});
	return code.replace(COPIED_EXPORTS, 'module.exports=__defProp($1,"__esModule",{value:!0})');
};

// Once for each language, with its own words from the start; what has no words in it comes out the same under one name.
const programs = await Promise.all(
	languages(ROOT).map((language) =>
		build({
			...options,
			format: 'esm',
			splitting: true,
			entryPoints: {[`program-${language}`]: ENTRY},
			chunkNames: '[name]-[hash]',
			conditions: [language],
		}),
	),
);
const apart = await build({
	...options,
	format: 'cjs',
	entryPoints: {...POSTPONED_PACKAGES, language: CHOOSES_LANGUAGE},
	plugins,
});
const inputs = [...programs, apart].flatMap(({metafile}) => Object.keys(metafile.inputs));
assertAllApplied(inputs);

const files = new Map();
for (const {path: file, text} of programs.flatMap(({outputFiles}) => outputFiles))
	if (!files.has(file)) files.set(file, await asCommonJs(text));
for (const {path: file, text} of apart.outputFiles) files.set(file, text);
const stamp = createHash('sha256')
	.update([...files.values()].join())
	.digest('hex')
	.slice(0, 12);
if (ENTRY === USUAL_ENTRY && ![...files.values()].some((text) => text.includes(OWN_SUM)))
	throw new Error(`No file has ${OWN_SUM}, by which the program tells its own lists from those of another one.`);
// As start.cjs calls them: put around a file there, it would be a second copy of each in memory.
for (const [file, text] of files)
	files.set(file, `(function(module,exports,require){${text.replace(OWN_SUM, stamp)}\n})`);
files.set(path.join(folder, PROGRAM), await entryForAnyNode(ROOT));
files.set(path.join(folder, 'start.cjs'), readFileSync(START, 'utf8').replace('BUILD', stamp));
files.set(path.join(folder, 'LICENCES.txt'), licenceTexts(inputs, ROOT));

rmSync(folder, {recursive: true, force: true});
mkdirSync(folder, {recursive: true});
for (const [file, text] of files) writeFileSync(file, text);
chmodSync(path.join(folder, PROGRAM), 0o755);
if (ENTRY === USUAL_ENTRY) {
	await compileAhead(path.join(folder, PROGRAM), stamp, languages(ROOT));
	writeBesideProgram(path.join(folder, PROGRAM));
}
