// Bundles the program: `node source/build/bundle.mjs` writes dist/. The entry becomes dist/armdrift.cjs, and every
// `import('./x.js')` in source/ becomes a bundle of its own, dist/x.cjs, which is read only when that line runs.
// So what --help needs stays small, and Ink is loaded for the screens alone.
import {chmodSync, rmSync, writeFileSync} from 'node:fs';
import path from 'node:path';
import {fileURLToPath} from 'node:url';
import {build} from 'esbuild';
import {lazyBundles} from './lazy-bundles.mjs';
import {licenceTexts} from './licence-texts.mjs';
import {startUpPlugins} from './start-up-plugins.mjs';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const PROGRAM = 'armdrift';
const [ENTRY = 'source/cli.tsx', FOLDER = 'dist'] = process.argv.slice(2);

const outFolder = path.resolve(ROOT, FOLDER);
const sourceOfBundle = new Map([[PROGRAM, path.resolve(ROOT, ENTRY)]]);
const {plugins, assertAllApplied} = startUpPlugins();

const options = {
	absWorkingDir: ROOT,
	bundle: true,
	platform: 'node',
	target: 'node20.19',
	// CommonJS starts some 10 ms sooner than ESM here; and so that a lazy bundle is loaded the same way, import() is
	// turned into require().
	format: 'cjs',
	supported: {'dynamic-import': false},
	jsx: 'automatic',
	minify: true,
	legalComments: 'none',
	metafile: true,
	logLevel: 'warning',
	define: {'process.env.NODE_ENV': '"production"'},
	plugins: [lazyBundles(sourceOfBundle), ...plugins],
};

rmSync(outFolder, {recursive: true, force: true});
const inputs = new Set();
// The map grows while it is walked, as bundles name further bundles.
for (const [name, file] of sourceOfBundle) {
	const banner = name === PROGRAM ? {js: '#!/usr/bin/env node'} : {};
	const {metafile} = await build({
		...options,
		banner,
		entryPoints: [file],
		outfile: path.join(outFolder, `${name}.cjs`),
	});
	for (const input of Object.keys(metafile.inputs)) inputs.add(input);
}
assertAllApplied(inputs);
chmodSync(path.join(outFolder, `${PROGRAM}.cjs`), 0o755);
writeFileSync(path.join(outFolder, 'LICENCES.txt'), licenceTexts(inputs, ROOT));
