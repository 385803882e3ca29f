// Makes things go wrong on the built program, many times over, and prints what came of it: `npm run faults`.
// Kills and full disks come at a call that changes the disk, by a script loaded before the program; damage is made to the
// files of a finished run; two copies start at once. Options: --every N (each Nth call only, default 3), --seed N.
// A whole run takes some minutes. It ends with 1 where anything confirmed was lost, torn, or told in raw words.
import {spawn, spawnSync} from 'node:child_process';
import {cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync} from 'node:fs';
import {tmpdir} from 'node:os';
import path from 'node:path';
import {fileURLToPath} from 'node:url';
import {parseArgs} from 'node:util';

const {values} = parseArgs({options: {every: {type: 'string', default: '3'}, seed: {type: 'string', default: '1'}}});
const every = Math.max(1, Number(values.every));
const PROGRAM = fileURLToPath(new URL('../../dist/armdrift.cjs', import.meta.url));
const PRELOAD = fileURLToPath(new URL('preload.cjs', import.meta.url));
const ANSWERS = readFileSync(
	fileURLToPath(new URL('../../fixtures/answers/invented-full-check.txt', import.meta.url)),
	'utf8',
).split('\n');

const temporary = mkdtempSync(path.join(tmpdir(), 'armdrift-faults-'));
process.on('exit', () => rmSync(temporary, {recursive: true, force: true}));
const freshFolder = () => mkdtempSync(path.join(temporary, 'data-'));

const environment = (dataDir, extra = {}) => ({
	PATH: process.env.PATH,
	HOME: temporary,
	LC_ALL: 'C.UTF-8',
	ARMDRIFT_DATA: dataDir,
	...extra,
});

function run(dataDir, args, {input = '', fault = {}} = {}) {
	const {stdout, stderr, status, signal} = spawnSync(process.execPath, ['--require', PRELOAD, PROGRAM, ...args], {
		input,
		env: environment(dataDir, fault),
		encoding: 'utf8',
		timeout: 60_000,
	});
	return {out: stdout ?? '', faults: stderr ?? '', status, signal};
}

const jsonOr = (file) => {
	try {
		return JSON.parse(readFileSync(file, 'utf8'));
	} catch {
		return undefined;
	}
};

/** What a folder holds of the one check in it: each answer and each reading, as typed. */
function heldIn(dataDir) {
	const drafts = ['draft-a.json', 'draft-b.json'].map((name) => jsonOr(path.join(dataDir, name)));
	const filed = existsSync(path.join(dataDir, 'checks')) ? readdirSync(path.join(dataDir, 'checks')) : [];
	const record = filed.map((name) => jsonOr(path.join(dataDir, 'checks', name))).find((one) => one !== undefined);
	const [newest] = drafts.filter((one) => one !== undefined).toSorted((one, other) => other.number - one.number);
	const check = record?.record.check ?? newest?.content;
	if (!check) return [];
	const answers = Object.entries(check.answers ?? {}).map(([id, {typed}]) => `${id}=${typed}`);
	const readings = (check.series ?? []).map((one) => JSON.stringify(one).match(/"typed":"[^"]*"/g) ?? []);
	return [...answers, ...readings.flat()].toSorted();
}

/** What is on the disk after so many lines of input, and how many lines of output those bring: the truth to hold against. */
function truthOf() {
	const whole = run(freshFolder(), ['--plain'], {input: ANSWERS.join('\n')}).out.split('\n');
	return ANSWERS.map((_line, count) => {
		const dataDir = freshFolder();
		const said = run(dataDir, ['--plain'], {input: ANSWERS.slice(0, count).join('\n')}).out.split('\n');
		const held = heldIn(dataDir);
		rmSync(dataDir, {recursive: true});
		return {said: alike(said, whole), held, key: held.join('\n')};
	});
}

const alike = (one, other) => {
	const end = one.findIndex((line, index) => line !== other[index]);
	return end < 0 ? one.length : end;
};

const tally = () => ({faults: 0, lost: 0, torn: 0, raw: 0, silent: 0});
const isRaw = ({faults, status}) =>
	status === 70 || /\n\s+at .*:\d+|\b(?:ENOSPC|EIO|EROFS|SyntaxError|TypeError)\b.*\n\s+at /.test(faults);

/** Holds what is on the disk after a run that was cut short against what that run had said. */
function judge(result, dataDir, done, truth, whole) {
	result.faults++;
	const confirmed = truth.findLast(({said}) => said <= alike(done.out.split('\n'), whole));
	const held = heldIn(dataDir);
	const has = new Set(held);
	if (confirmed?.held.some((one) => !has.has(one))) result.lost++;
	if (!truth.some(({key}) => key === held.join('\n'))) result.torn++;
	if (isRaw(done)) result.raw++;
	const after = run(dataDir, ['list']);
	if (isRaw(after)) result.raw++;
}

/** The check is filed and what was open is cleared: of all else, such as the index, the next start makes good what lacks. */
function isDone(dataDir) {
	const open = ['draft-a.json', 'draft-b.json'].map((name) => jsonOr(path.join(dataDir, name))).filter(Boolean);
	const [newest] = open.toSorted((one, other) => other.number - one.number);
	return existsSync(path.join(dataDir, 'checks')) && newest?.content === null;
}

function sweep(kind, calls, truth, whole) {
	const result = tally();
	for (let at = 1; at <= calls; at += every) {
		const dataDir = freshFolder();
		const done = run(dataDir, ['--plain'], {
			input: ANSWERS.join('\n'),
			fault: {FAULT_AT: String(at), FAULT_KIND: kind},
		});
		if (kind !== 'kill' && done.status === 0 && done.faults === '' && !isDone(dataDir)) result.silent++;
		judge(result, dataDir, done, truth, whole);
		rmSync(dataDir, {recursive: true});
	}
	return result;
}

/** Small numbers from a seed, the same in every run (Lehmer, as in Park and Miller 1988). */
let state = Number(values.seed) || 1;
const chance = (below) => {
	state = (state * 48_271) % 2_147_483_647;
	return state % below;
};

const filesIn = (folder) =>
	readdirSync(folder, {recursive: true})
		.map(String)
		.filter((name) => statSync(path.join(folder, name)).isFile());

const harms = {
	emptied: () => Buffer.alloc(0),
	'cut short': (bytes) => bytes.subarray(0, chance(Math.max(1, bytes.length))),
	'one byte changed': (bytes) => {
		const harmed = Buffer.from(bytes);
		if (harmed.length > 0) harmed[chance(harmed.length)] ^= 1 << chance(8);
		return harmed;
	},
	zeros: (bytes) => Buffer.alloc(bytes.length),
};

/** Every file of a folder with a filed check and an open one, harmed in each way; nothing else may suffer, nor be believed. */
function damage() {
	const sound = freshFolder();
	run(sound, ['--plain'], {input: ANSWERS.join('\n')});
	run(sound, ['--plain'], {input: ['1', '1', ...ANSWERS.slice(2, 12)].join('\n')});
	const result = tally();
	const before = run(sound, ['list']).out;
	for (const name of filesIn(sound))
		for (const harm of Object.values(harms)) {
			const dataDir = freshFolder();
			cpSync(sound, dataDir, {recursive: true});
			const file = path.join(dataDir, name);
			writeFileSync(file, harm(readFileSync(file)));
			result.faults++;
			const asked = [['list'], ['due'], ['export', '--as', 'csv', '--out', '-'], ['--plain']].map((args) =>
				run(dataDir, args),
			);
			if (asked.some(isRaw)) result.raw++;
			const [listed] = asked;
			const isOfCheck = name.startsWith('checks');
			if (!isOfCheck && listed.out !== before) result.lost++;
			if (isOfCheck && listed.out !== before && listed.faults === '') result.silent++;
			rmSync(dataDir, {recursive: true});
		}
	return result;
}

const ended = (child) => new Promise((resolve) => child.on('exit', (status) => resolve(status)));

/** Two copies that start at once on one folder: one of them works, the other says so, and one check is filed. */
async function twoCopies(truth) {
	const result = tally();
	for (let time = 0; time < 10; time++) {
		const dataDir = freshFolder();
		const copies = [0, 1].map(() => {
			const child = spawn(process.execPath, [PROGRAM, '--plain'], {
				env: environment(dataDir),
				stdio: ['pipe', 'pipe', 'pipe'],
			});
			child.stdin.on('error', () => {});
			child.stdin.end(ANSWERS.join('\n'));
			child.stdout.resume();
			let faults = '';
			child.stderr.on('data', (data) => {
				faults += data;
			});
			return ended(child).then((status) => ({status, faults, out: ''}));
		});
		const both = await Promise.all(copies);
		result.faults++;
		if (both.some(isRaw)) result.raw++;
		if (!both.some(({status}) => status === 0)) result.lost++;
		if (both.filter(({status}) => status !== 0).some(({faults}) => faults === '')) result.silent++;
		if (!truth.some(({key}) => key === heldIn(dataDir).join('\n'))) result.torn++;
		rmSync(dataDir, {recursive: true});
	}
	return result;
}

const counted = path.join(temporary, 'calls');
const whole = run(freshFolder(), ['--plain'], {input: ANSWERS.join('\n'), fault: {FAULT_COUNT: counted}});
if (whole.status !== 0) throw new Error(`The run without a fault ended with ${whole.status}: ${whole.faults}`);
const calls = Number(readFileSync(counted, 'utf8'));
const truth = truthOf();
const lines = whole.out.split('\n');
const results = {
	'killed at a call that changes the disk': sweep('kill', calls, truth, lines),
	'disk full from a call on': sweep('ENOSPC', calls, truth, lines),
	'disk gives errors from a call on': sweep('EIO', calls, truth, lines),
	'file damaged': damage(),
	'two copies at once': await twoCopies(truth),
};
console.log(`${calls} calls in a run of ${ANSWERS.length} lines, each ${every === 1 ? '' : `${every}. `}tried.`);
console.table(results);
if (Object.values(results).some(({lost, torn, raw, silent}) => lost + torn + raw + silent > 0)) process.exitCode = 1;
