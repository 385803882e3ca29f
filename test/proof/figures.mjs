// Usage: npm run prove-figures [-- CHECKS]: how often the stated 95 % intervals hold the truth, over so many simulated
// checks (20,000 unless said otherwise) in every combination of step, scatter, rounds and setting up. Figures only: no
// arm moves. Takes some minutes.
import {mkdtempSync, rmSync} from 'node:fs';
import {tmpdir} from 'node:os';
import path from 'node:path';
import {pathToFileURL} from 'node:url';
import {build} from 'esbuild';

const folder = mkdtempSync(path.join(tmpdir(), 'armdrift-figures-'));
try {
	const outfile = path.join(folder, 'figures.mjs');
	await build({
		entryPoints: [new URL('figures.ts', import.meta.url).pathname],
		outfile,
		bundle: true,
		platform: 'node',
		format: 'esm',
		banner: {js: "import {createRequire} from 'node:module'; const require = createRequire(import.meta.url);"},
	});
	const {proveFigures} = await import(pathToFileURL(outfile).href);
	process.exitCode = proveFigures(Number(process.argv[2] ?? 20_000)) ? 0 : 1;
} finally {
	rmSync(folder, {recursive: true, force: true});
}
