// Prints the program's speed beside a bare and a minimal reference of the same run: `npm run build && npm run bench`.
// Only the ratios say something; times alone move with the machine by 20 % and more. Figures under load are worthless.
// Options: --runs N (default 20), --keys N (default 150), --idle SECONDS (default 8).
import {spawnSync} from 'node:child_process';
import {readFileSync} from 'node:fs';
import path from 'node:path';
import {fileURLToPath} from 'node:url';
import {parseArgs} from 'node:util';
import {build} from 'esbuild';
import {dataOutAndIn, folderWith} from './data.mjs';
import {makeReferences} from './references.mjs';
import {median, printTable, quantile, ratio, ratioText} from './statistics.mjs';
import {environment, freshFolder, Target} from './target.mjs';

const {values} = parseArgs({
	options: {
		runs: {type: 'string', default: '20'},
		keys: {type: 'string', default: '150'},
		idle: {type: 'string', default: '8'},
	},
});
const runs = Number(values.runs);
const keys = Number(values.keys);
const idleMs = Number(values.idle) * 1000;
// V8 collects garbage once some 8 s after the start; only then is a program idle.
const SETTLE_MS = 12_000;
const PROGRAM = fileURLToPath(new URL('../../dist/armdrift.cjs', import.meta.url));
const ARROWS = ['\u001B[B', '\u001B[A'];
const CTRL_C = '\u0003';

const wait = (ms) => new Promise((resolve) => setTimeout(resolve, ms));
const references = await makeReferences();

const ANSWERS = fileURLToPath(new URL('../../fixtures/answers/invented-full-check.txt', import.meta.url));

/** A data folder with a check that was left in the middle of its probe, answered line by line. */
const folderWithOpenCheck = () => {
	const dataDir = freshFolder();
	const input = readFileSync(ANSWERS, 'utf8').split('\n').slice(0, 46).join('\n');
	spawnSync(process.execPath, [PROGRAM, '--plain'], {input, env: environment({ARMDRIFT_DATA: dataDir})});
	return dataDir;
};
const dataDir = folderWithOpenCheck();
const program = (name, args = [], marker = 'armdrift', folder = dataDir) =>
	new Target({name, args: [PROGRAM, ...args], marker, env: {ARMDRIFT_DATA: folder}});

/** Runs every target once a round, in changing order, and collects what is measured. */
const interleaved = async (targets, rounds, measure) => {
	const results = new Map(targets.map((target) => [target, []]));
	for (let round = -1; round < rounds; round++) {
		const order = round % 2 === 0 ? targets : [...targets].reverse();
		for (const target of order) {
			const value = await measure(target.start());
			await target.stop();
			if (round >= 0) results.get(target).push(value);
		}
	}
	return results;
};

const reportTimes = (title, results, bases) => {
	const rows = [...results].map(([target, times]) => [
		target.name,
		median(times).toFixed(1),
		quantile(times, 0.9).toFixed(1),
		...bases.map((base) => ratioText(ratio(times, results.get(base)))),
	]);
	printTable(title, ['', 'median ms', 'p90', ...bases.map((base) => `x ${base.name}`)], rows);
};

const startUp = async () => {
	const bare = references.bare();
	const minimal = references.minimal();
	const targets = [
		bare,
		minimal,
		program('armdrift, check open'),
		program('armdrift --help', ['--help']),
		program('armdrift --version', ['--version'], '.'),
	];
	reportTimes('Start to first frame', await interleaved(targets, runs, (target) => target.firstFrameMs()), [
		bare,
		minimal,
	]);
};

/** The first screen of a full folder beside that of an empty one, once its index and its latest checks are kept. */
const manyArms = async () => {
	const full = program('armdrift, 1000 arms, 10 000 checks', [], 'armdrift', folderWith(10_000, 1000));
	const empty = program('armdrift, nothing on file', [], 'armdrift', freshFolder());
	for (let start = 0; start < 2; start++) {
		await full.start().firstFrameMs();
		await wait(3000);
		await full.stop();
	}
	const times = await interleaved([empty, full], runs, (target) => target.firstFrameMs());
	reportTimes('Start to first frame, by what is on file', times, [empty]);
};

const leaving = async () => {
	const echo = references.echo();
	const lastKey = (key) => async (target) => {
		await target.firstFrameMs();
		await wait(300);
		const sentMs = performance.now();
		target.pty.write(key);
		return (await target.exited) - sentMs;
	};
	const ours = program('armdrift, Ctrl+C');
	const results = await interleaved([echo, ours], runs, (target) => lastKey(target === ours ? CTRL_C : 'q')(target));
	reportTimes('Last key to the end of the process', results, [echo]);
};

const keyToFrame = async () => {
	const minimal = references.minimal();
	const menu = program('armdrift, first menu');
	const probe = program('armdrift, a reading in the probe');
	const typing = ['1', '\u007F'];
	const keysOf = new Map([
		[minimal, typing],
		[menu, ARROWS],
		[probe, typing],
	]);
	const times = new Map([...keysOf.keys()].map((target) => [target, []]));
	for (const target of keysOf.keys()) {
		await target.start().firstFrameMs();
		await wait(400);
		if (target === probe) {
			target.pty.write('1');
			await wait(100);
			target.pty.write('\r');
		}
		await wait(400);
	}
	for (let i = -10; i < keys; i++) {
		for (const [target, pair] of keysOf) {
			const ms = await target.keyToFrameMs(pair[Math.abs(i) % 2]);
			if (i >= 0) times.get(target).push(ms);
		}
	}
	for (const target of keysOf.keys()) await target.stop();
	const rows = [...times].map(([target, own]) => [
		target.name,
		...[0.5, 0.9, 0.99].flatMap((share) => [
			quantile(own, share).toFixed(2),
			ratioText(ratio(own, times.get(minimal), share)),
		]),
	]);
	printTable('Key to frame, ms', ['', 'p50', 'x minimal', 'p90', 'x minimal', 'p99', 'x minimal'], rows);
};

const idle = async () => {
	const targets = [references.bare(), references.minimal(), program('armdrift, first menu')];
	for (const target of targets) await target.start().firstFrameMs();
	await wait(SETTLE_MS);
	const before = targets.map((target) => ({...target.usage(), bytes: target.bytes}));
	await wait(idleMs);
	const perSecond = (now, then) => ((now - then) / (idleMs / 1000)).toFixed(2);
	const rows = targets.map((target, i) => {
		const {peakMiB = Number.NaN, cpuMs, wakeups} = target.usage() ?? {};
		const then = before[i];
		return [
			target.name,
			peakMiB.toFixed(0),
			perSecond(cpuMs, then.cpuMs),
			perSecond(wakeups, then.wakeups),
			perSecond(target.bytes, then.bytes),
		];
	});
	for (const target of targets) await target.stop();
	printTable('Memory, and waiting for a key', ['', 'peak MiB', 'CPU ms/s', 'wake-ups/s', 'bytes/s'], rows);
};

/** Saving, listing and opening with a history of one, ten and ten thousand checks, in a process of its own. */
const storage = async () => {
	const folder = freshFolder();
	const outfile = path.join(folder, 'store.mjs');
	await build({
		entryPoints: [fileURLToPath(new URL('store.ts', import.meta.url))],
		outfile,
		bundle: true,
		platform: 'node',
		format: 'esm',
		banner: {js: 'import {createRequire} from "node:module"; const require = createRequire(import.meta.url);'},
		logLevel: 'error',
	});
	const {stdout} = spawnSync(process.execPath, [outfile, path.join(folder, 'data'), ANSWERS], {encoding: 'utf8'});
	const {bytes, plain, benches} = JSON.parse(stdout);
	const [none, ten] = benches;
	const rows = benches.map(({count, save, list, open}) => [
		`${count} on file`,
		median(save).toFixed(2),
		ratioText(ratio(save, plain)),
		ratioText(ratio(save, none.save)),
		median(list).toFixed(2),
		median(open).toFixed(2),
		ratioText(ratio(open, ten.open)),
	]);
	printTable(
		`Saving one answer (${bytes} bytes), listing a page, opening one, ms`,
		['', 'save', 'x plain synced write', 'x 1 on file', 'list', 'open', 'x 10 on file'],
		rows,
	);
};

console.log(`Node ${process.version}, ${process.platform}; ${runs} runs, ${keys} keys`);
await startUp();
await manyArms();
await keyToFrame();
await storage();
dataOutAndIn(10_000);
await leaving();
await idle();
