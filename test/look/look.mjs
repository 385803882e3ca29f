// `npm run look`: the screens of invented checks at three sizes, and reports on such checks, opened in headless Chromium,
// as pictures of a screen, light and dark, a phone and A4 paper. For a person to look at; what can be measured of the
// reports is (`print-faults.mjs`), and a fault ends it with status 1. `npm run look -- FOLDER` keeps them there;
// `npm run look -- FOLDER --only probe` draws the screens with that in their name, and no reports. `--language de` draws
// screens and reports in German.
import {spawnSync} from 'node:child_process';
import {mkdtempSync, readdirSync} from 'node:fs';
import {tmpdir} from 'node:os';
import path from 'node:path';
import {fileURLToPath, pathToFileURL} from 'node:url';
import {parseArgs} from 'node:util';
import {build} from 'esbuild';
import {faultsOf, onPhone} from './print-faults.mjs';
import {lookAtScreens} from './screens/screens.mjs';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const {values, positionals} = parseArgs({
	options: {only: {type: 'string'}, language: {type: 'string', default: 'en'}},
	allowPositionals: true,
});
const folder = path.resolve(positionals[0] ?? mkdtempSync(path.join(tmpdir(), 'armdrift-look-')));
const PROGRAM = path.join(ROOT, 'dist/armdrift.cjs');
// A window is photographed as it is, so it is as tall as the longest page.
const windows = {
	screen: ['--window-size=1280,6000'],
	dark: ['--window-size=1280,6000', '--blink-settings=preferredColorScheme=0'],
};
const phoneHeight = 12_000;

const run = (command, ...args) => spawnSync(command, args, {encoding: 'utf8'});
const isThere = (command, ...args) => run(command, ...args).error === undefined;

async function writeReports() {
	const outfile = path.join(mkdtempSync(path.join(tmpdir(), 'armdrift-look-')), 'write-reports.mjs');
	const banner = {js: "import {createRequire} from 'node:module'; const require = createRequire(import.meta.url);"};
	const entryPoints = [path.join(ROOT, 'test/look/write-reports.ts')];
	await build({entryPoints, outfile, banner, bundle: true, platform: 'node', format: 'esm', logLevel: 'error'});
	const {status, stderr} = run(process.execPath, outfile, PROGRAM, folder, values.language);
	if (status !== 0) throw new Error(`The reports could not be written: ${stderr}`);
}

/** Runs the browser, and gives what it prints. */
function chromium(...args) {
	// Its sandbox does not work for root.
	const sandbox = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
	const always = ['--headless=new', '--disable-gpu', '--hide-scrollbars'];
	const {status, stderr, stdout} = run('chromium', ...always, ...sandbox, ...args);
	if (status !== 0) throw new Error(`chromium: ${stderr}`);
	return stdout;
}

/** @returns what is wrong with the page */
function photograph(name) {
	const file = path.join(folder, name);
	const page = pathToFileURL(file).href;
	const bare = file.replace('.html', '');
	for (const [kind, args] of Object.entries(windows)) chromium(...args, `--screenshot=${bare}-${kind}.png`, page);
	const phone = onPhone(file, phoneHeight);
	chromium(`--window-size=500,${phoneHeight}`, `--screenshot=${bare}-phone.png`, phone);
	chromium('--no-pdf-header-footer', `--print-to-pdf=${bare}.pdf`, page);
	if (!isThere('pdftoppm', '-v')) {
		console.log('pdftoppm is not installed (apt-get install poppler-utils): the A4 pages were not looked at.');
		return [];
	}
	run('pdftoppm', '-r', '80', '-png', `${bare}.pdf`, `${bare}-a4`);
	return faultsOf(chromium, file, `${bare}.pdf`);
}

async function lookAtReports() {
	await writeReports();
	if (isThere('chromium', '--version'))
		for (const fault of readdirSync(folder)
			.filter((one) => one.endsWith('.html'))
			.flatMap(photograph)) {
			console.error(fault);
			process.exitCode = 1;
		}
	else console.log('chromium is not installed (apt-get install chromium): the pages were written, not photographed.');
}

const screens = path.join(folder, 'screens');
if (!(await lookAtScreens(screens, values.only, values.language))) process.exitCode = 1;
console.log(`Look at the screens in ${screens}: first at all.html and chosen.html of each size.`);
if (values.only === undefined) {
	await lookAtReports();
	console.log(`Look at the reports in ${folder}:\n${readdirSync(folder).sort().join('\n')}`);
}
