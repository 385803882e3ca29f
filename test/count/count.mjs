// Prints how many screens and keys lie before the first probe reading: `npm run count`.
import {mkdtempSync, rmSync} from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import {fileURLToPath, pathToFileURL} from 'node:url';
import {build} from 'esbuild';

const folder = mkdtempSync(path.join(os.tmpdir(), 'armdrift-count-'));
const outfile = path.join(folder, 'counted-ways.mjs');
await build({
	entryPoints: [fileURLToPath(new URL('counted-ways.ts', import.meta.url))],
	bundle: true,
	platform: 'node',
	format: 'esm',
	outfile,
	logLevel: 'warning',
	banner: {js: "import {createRequire} from 'node:module'; const require = createRequire(import.meta.url);"},
});
const {countedWays} = await import(pathToFileURL(outfile).href);
const names = {newArm: 'new arm, new gauge', known: 'known arm and gauge', recheck: 're-check'};
process.stdout.write('To the first probe reading      screens  keys  beside readings\n');
for (const [way, {screens, keys, keysBesideReadings}] of Object.entries(countedWays()))
	process.stdout.write(
		`  ${names[way].padEnd(28)}  ${String(screens).padStart(7)}  ${String(keys).padStart(4)}  ${String(keysBesideReadings).padStart(15)}\n`,
	);
rmSync(folder, {recursive: true});
