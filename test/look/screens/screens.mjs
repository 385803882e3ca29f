// The screens of invented checks: drawn by the program's own components as text and pages, and photographed.
import {spawnSync} from 'node:child_process';
import {existsSync, mkdtempSync, readdirSync, rmSync} from 'node:fs';
import {tmpdir} from 'node:os';
import path from 'node:path';
import {fileURLToPath} from 'node:url';
import {build} from 'esbuild';
import {startUpPlugins} from '../../../source/build/start-up-plugins.mjs';
import {hasChromium, openChromium} from '../chromium.mjs';

const thisFolder = fileURLToPath(new URL('.', import.meta.url));

/** Draws them into a folder, all or those with a part of a name, in a language. @returns whether all of them fit their terminal */
export async function lookAtScreens(folder, only = '', language = 'en') {
	const areFitting = await draw(folder, only, language);
	if (hasChromium()) await photograph(folder);
	else console.log('chromium is not installed (apt-get install chromium): the screens were drawn, not photographed.');
	return areFitting;
}

async function draw(folder, only, language) {
	const bundle = mkdtempSync(path.join(tmpdir(), 'armdrift-look-'));
	const outfile = path.join(bundle, 'draw.mjs');
	await build({
		entryPoints: [path.join(thisFolder, 'draw.ts')],
		outfile,
		banner: {js: "import {createRequire} from 'node:module'; const require = createRequire(import.meta.url);"},
		bundle: true,
		platform: 'node',
		format: 'esm',
		jsx: 'automatic',
		logLevel: 'error',
		define: {'process.env.NODE_ENV': '"production"'},
		plugins: startUpPlugins().plugins,
		conditions: [language],
	});
	// What would take the colours away.
	const {CI: _ci, CONTINUOUS_INTEGRATION: _integration, NO_COLOR: _noColor, ...variables} = process.env;
	const {status} = spawnSync(process.execPath, ['--disable-warning=ExperimentalWarning', outfile, folder, only], {
		stdio: 'inherit',
		env: {...variables, FORCE_COLOR: '1'},
	});
	rmSync(bundle, {recursive: true, force: true});
	return status === 0;
}

// From across the bench a screen looks about as small as this.
const fromAfar = 1 / 3;
const onSheet = 0.6;

async function photograph(folder) {
	const chromium = await openChromium();
	try {
		for (const size of readdirSync(folder).filter((name) => /^\d+x\d+$/.test(name))) {
			const file = (name) => path.join(folder, size, name);
			const sheetsOf = async (page) => {
				if (!existsSync(file(`${page}.html`))) return;
				await chromium.show(file(`${page}.html`));
				for (const [index, sheet] of (await chromium.partsOf('.sheet')).entries())
					await chromium.photograph(sheet, file(`${page}-${String(index + 1).padStart(2, '0')}.png`), onSheet);
			};
			for (const page of ['all', 'light', 'ascii', 'spoken']) await sheetsOf(page);
			await chromium.show(file('chosen.html'));
			for (const part of await chromium.partsOf('figure pre')) {
				await chromium.photograph(part, file(`${part.id}.png`));
				await chromium.photograph(part, file(`${part.id}.afar.png`), fromAfar);
			}
		}
	} finally {
		await chromium.close();
	}
}
