// `npm run look`: the screens of invented checks at three sizes, and reports on such checks, opened in headless Chromium,
// as pictures of a screen, a phone and A4 paper. For a person to look at; nothing is compared. `npm run look -- FOLDER`
// keeps them there; `npm run look -- FOLDER --only probe` draws the screens with that in their name, and no reports.
import {spawnSync} from 'node:child_process';
import {mkdtempSync, readdirSync} from 'node:fs';
import {tmpdir} from 'node:os';
import path from 'node:path';
import {fileURLToPath, pathToFileURL} from 'node:url';
import {parseArgs} from 'node:util';
import {build} from 'esbuild';
import {lookAtScreens} from './screens/screens.mjs';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const {values, positionals} = parseArgs({options: {only: {type: 'string'}}, allowPositionals: true});
const folder = path.resolve(positionals[0] ?? mkdtempSync(path.join(tmpdir(), 'armdrift-look-')));
const PROGRAM = path.join(ROOT, 'dist/armdrift.cjs');
// A window is photographed as it is, so it is as tall as the longest page.
const windows = {screen: '1280,5200', phone: '390,11000'};

const run = (command, ...args) => spawnSync(command, args, {encoding: 'utf8'});
const isThere = (command, ...args) => run(command, ...args).error === undefined;

async function writeReports() {
	const outfile = path.join(mkdtempSync(path.join(tmpdir(), 'armdrift-look-')), 'write-reports.mjs');
	const banner = {js: "import {createRequire} from 'node:module'; const require = createRequire(import.meta.url);"};
	const entryPoints = [path.join(ROOT, 'test/look/write-reports.ts')];
	await build({entryPoints, outfile, banner, bundle: true, platform: 'node', format: 'esm', logLevel: 'error'});
	const {status, stderr} = run(process.execPath, outfile, PROGRAM, folder);
	if (status !== 0) throw new Error(`The reports could not be written: ${stderr}`);
}

function photograph(name) {
	const page = pathToFileURL(path.join(folder, name)).href;
	const bare = path.join(folder, name.replace('.html', ''));
	const chromium = (...args) => {
		// Its sandbox does not work for root.
		const sandbox = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
		const {status, stderr} = run(
			'chromium',
			'--headless=new',
			'--disable-gpu',
			'--hide-scrollbars',
			...sandbox,
			...args,
			page,
		);
		if (status !== 0) throw new Error(`chromium: ${stderr}`);
	};
	for (const [kind, size] of Object.entries(windows))
		chromium(`--window-size=${size}`, `--screenshot=${bare}-${kind}.png`);
	chromium('--no-pdf-header-footer', `--print-to-pdf=${bare}.pdf`);
	if (isThere('pdftoppm', '-v')) run('pdftoppm', '-r', '80', '-png', `${bare}.pdf`, `${bare}-a4`);
	else console.log('pdftoppm is not installed (apt-get install poppler-utils): no pictures of the A4 pages.');
}

async function lookAtReports() {
	await writeReports();
	if (isThere('chromium', '--version'))
		for (const name of readdirSync(folder).filter((one) => one.endsWith('.html'))) photograph(name);
	else console.log('chromium is not installed (apt-get install chromium): the pages were written, not photographed.');
}

const screens = path.join(folder, 'screens');
if (!(await lookAtScreens(screens, values.only))) process.exitCode = 1;
console.log(`Look at the screens in ${screens}: first at all.html and chosen.html of each size.`);
if (values.only === undefined) {
	await lookAtReports();
	console.log(`Look at the reports in ${folder}:\n${readdirSync(folder).sort().join('\n')}`);
}
