// List, export and import with ten thousand checks, beside reading and writing the same files plainly.
// By itself: `npm run build && node test/bench/data.mjs [--checks N]`; also a part of `npm run bench`.
import {spawnSync} from 'node:child_process';
import {
	closeSync,
	fsyncSync,
	mkdirSync,
	openSync,
	readdirSync,
	readFileSync,
	renameSync,
	statSync,
	writeFileSync,
} from 'node:fs';
import path from 'node:path';
import {fileURLToPath} from 'node:url';
import {parseArgs} from 'node:util';
import {crc32} from 'node:zlib';
import {printTable} from './statistics.mjs';
import {environment, freshFolder} from './target.mjs';

const PROGRAM = fileURLToPath(new URL('../../dist/armdrift.cjs', import.meta.url));
const ANSWERS = fileURLToPath(new URL('../../fixtures/answers/invented-full-check.txt', import.meta.url));
const NINE_HOURS_MS = 9 * 3_600_000;

/** Says on a channel of its own how much memory the process took at most. */
const preload = () => {
	const file = path.join(freshFolder(), 'peak.cjs');
	const text = "process.on('exit', () => require('node:fs').writeSync(3, String(process.resourceUsage().maxRSS)));";
	writeFileSync(file, text);
	return file;
};

const timed = (work) => {
	const startMs = performance.now();
	const result = work();
	return {seconds: (performance.now() - startMs) / 1000, result};
};

/** One check that was played, filed under so many other ids and times, and with several arms under their names too. */
export const folderWith = (count, arms = 1) => {
	const dataDir = freshFolder();
	const input = readFileSync(ANSWERS, 'utf8');
	spawnSync(process.execPath, [PROGRAM, '--plain'], {input, env: environment({ARMDRIFT_DATA: dataDir})});
	const checks = path.join(dataDir, 'checks');
	const [played = ''] = readdirSync(checks);
	const text = readFileSync(path.join(checks, played), 'utf8');
	const id = played.replace('.json', '');
	const {startedAt, answers} = JSON.parse(text).record.check;
	const name = JSON.stringify(answers['arm-name'].value);
	for (let index = 1; index < count; index++) {
		const time = new Date(Date.UTC(2015, 0, 1) + index * NINE_HOURS_MS).toISOString();
		const other = `${time.slice(0, 19).replace(/[-:]/g, '').replace('T', '-')}-${index.toString(36).padStart(8, '0')}`;
		const {checksum: _old, ...document} = JSON.parse(
			text
				.replaceAll(id, other)
				.replaceAll(startedAt, time)
				.replaceAll(name, name.replace(/"$/, index % arms === 0 ? '"' : ` ${index % arms}"`)),
		);
		const body = JSON.stringify(document);
		const checksum = crc32(body).toString(16).padStart(8, '0');
		writeFileSync(path.join(checks, `${other}.json`), `{"checksum":"${checksum}",${body.slice(1)}`);
	}
	return dataDir;
};

/** The floor of an export: every file read, and all of it written once. */
const readAll = (dataDir, out) => {
	const checks = path.join(dataDir, 'checks');
	const file = openSync(out, 'w');
	for (const name of readdirSync(checks)) writeFileSync(file, readFileSync(path.join(checks, name)));
	fsyncSync(file);
	closeSync(file);
};

/** The floor of a list: the same rows, printed from a file. */
const printRows = (dataDir) => {
	const env = environment({ARMDRIFT_DATA: dataDir});
	const rows = path.join(freshFolder(), 'rows');
	const file = openSync(rows, 'w');
	spawnSync(process.execPath, [PROGRAM, 'list'], {env, stdio: ['ignore', file, 'ignore']});
	closeSync(file);
	const code = `process.stdout.write(require('node:fs').readFileSync(${JSON.stringify(rows)}))`;
	return timed(() => spawnSync(process.execPath, ['-e', code], {env, stdio: 'ignore'}));
};

/** The floor of an import: every file written beside its place, synced, renamed, and its folder synced. */
const writeAll = (dataDir, to) => {
	const checks = path.join(dataDir, 'checks');
	mkdirSync(to);
	for (const name of readdirSync(checks)) {
		const file = openSync(path.join(to, 'part'), 'w');
		writeFileSync(file, readFileSync(path.join(checks, name)));
		fsyncSync(file);
		closeSync(file);
		renameSync(path.join(to, 'part'), path.join(to, name));
		const folder = openSync(to, 'r');
		fsyncSync(folder);
		closeSync(folder);
	}
};

export const dataOutAndIn = (count) => {
	const dataDir = folderWith(count);
	const target = path.join(freshFolder(), 'target');
	const json = path.join(freshFolder(), 'all.json');
	const csv = path.join(freshFolder(), 'all.csv');
	const peak = preload();
	const run = (folder, ...args) => {
		const {seconds, result} = timed(() =>
			spawnSync(process.execPath, ['-r', peak, PROGRAM, ...args], {
				env: environment({ARMDRIFT_DATA: folder}),
				stdio: ['ignore', 'ignore', 'pipe', 'pipe'],
				encoding: 'utf8',
			}),
		);
		if (result.status !== 0) throw new Error(`${args.join(' ')} ended with ${result.status}: ${result.stderr}`);
		return {seconds, peakMiB: Number(result.output[3]) / 1024};
	};
	const reading = timed(() => readAll(dataDir, path.join(freshFolder(), 'plain')));
	const writing = timed(() => writeAll(dataDir, path.join(freshFolder(), 'plain')));
	const runs = [
		['node alone', run(dataDir, '--version')],
		['list, no index yet', run(dataDir, 'list')],
		['list, not kept yet', run(dataDir, 'list')],
		['list', run(dataDir, 'list'), printRows(dataDir)],
		['export as JSON', run(dataDir, 'export', '--as', 'json', '--out', json), reading],
		['export as CSV', run(dataDir, 'export', '--as', 'csv', '--out', csv), reading],
		['import into an empty folder', run(target, 'import', json, '--yes'), writing],
		['the same import again', run(target, 'import', json, '--yes')],
	];
	const mib = (file) => (statSync(file).size / 1024 / 1024).toFixed(0);
	printTable(
		`${count} checks: data out and in (JSON ${mib(json)} MiB, CSV ${mib(csv)} MiB); floor: the same rows printed, the same files read, or written and synced, plainly`,
		['', 'seconds', 'peak MiB', 'x floor'],
		runs.map(([name, {seconds, peakMiB}, floor]) => [
			name,
			seconds.toFixed(2),
			peakMiB.toFixed(0),
			floor ? (seconds / floor.seconds).toFixed(1) : '',
		]),
	);
};

if (process.argv[1] === fileURLToPath(import.meta.url)) {
	const {values} = parseArgs({options: {checks: {type: 'string', default: '10000'}}});
	dataOutAndIn(Number(values.checks));
}
