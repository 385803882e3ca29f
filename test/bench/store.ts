// Saving, listing and opening with no, ten and ten thousand checks on file, beside a plain write of the same size that
// is synced with its folder. Bundled and run by bench.mjs; prints one JSON document.
import {closeSync, fsyncSync, mkdirSync, openSync, readdirSync, readFileSync, renameSync, writeFileSync} from 'node:fs';
import path from 'node:path';
import type {Dialogue} from '../../source/check/dialogue.js';
import {reduce} from '../../source/check/reduce.js';
import {OpenWorkbench} from '../../source/desk/open-workbench.js';
import {converse} from '../../source/plain/converse.js';
import {sealDocument} from '../../source/store/document.js';

const [folder = '', answersFile = '', savesText = '200'] = process.argv.slice(2);
const answers = readFileSync(answersFile, 'utf8').split('\n');
const saves = Number(savesText);

/** Answers of the plain face, played into a workbench; the first line chose 'new full check' at home. */
async function play(workbench: OpenWorkbench, count: number): Promise<Dialogue> {
	const opened = await workbench.start();
	if (!opened.ok) throw new Error(opened.sentence);
	let next = 1;
	let last = opened.dialogue;
	const read = async () => (next < count ? answers[next++] : undefined);
	const save: OpenWorkbench['save'] = (dialogue) => {
		last = dialogue;
		return workbench.save(dialogue);
	};
	const remembering = new Proxy(workbench, {get: (target, key) => (key === 'save' ? save : bound(target, key))});
	await converse(remembering, opened.dialogue, {read, say: () => {}, piped: true});
	return last;
}

const bound = (target: OpenWorkbench, key: string | symbol): unknown => {
	const value: unknown = Reflect.get(target, key);
	return typeof value === 'function' ? value.bind(target) : value;
};

/** A data folder with so many filed checks: one that was played, under other ids. */
async function folderWith(count: number): Promise<string> {
	const dataDir = path.join(folder, String(count));
	const workbench = new OpenWorkbench({dataDir, version: 'bench'});
	await play(workbench, answers.length);
	workbench.release();
	const checks = path.join(dataDir, 'checks');
	const [played = ''] = readdirSync(checks);
	const text = readFileSync(path.join(checks, played), 'utf8');
	const id = played.replace('.json', '');
	for (let index = 1; index < count; index++) {
		const day = new Date(Date.UTC(2015, 0, 1) + index * 9 * 3_600_000).toISOString();
		const other = `${day.slice(0, 19).replace(/[-:]/g, '').replace('T', '-')}-${index.toString(36).padStart(8, '0')}`;
		const {checksum: _old, ...document} = JSON.parse(text.replaceAll(id, other));
		writeFileSync(path.join(checks, `${other}.json`), sealDocument(document).text);
	}
	return dataDir;
}

const timed = async (work: () => unknown): Promise<number> => {
	const startMs = performance.now();
	await work();
	return performance.now() - startMs;
};

/** The floor: a neighbour file written, synced and renamed, and its folder synced. */
function plainWrite(text: string): void {
	const file = path.join(folder, 'plain.json');
	const neighbour = openSync(`${file}.new`, 'w');
	writeFileSync(neighbour, text);
	fsyncSync(neighbour);
	closeSync(neighbour);
	renameSync(`${file}.new`, file);
	const whole = openSync(folder, 'r');
	fsyncSync(whole);
	closeSync(whole);
}

mkdirSync(folder, {recursive: true});
const benches = await Promise.all(
	[1, 10, 10_000].map(async (count) => {
		const dataDir = await folderWith(count);
		const workbench = new OpenWorkbench({dataDir, version: 'bench'});
		await workbench.settleIn();
		workbench.archive.past({offset: 0, limit: 9});
		await workbench.settleIn();
		return {
			count,
			dataDir,
			workbench,
			dialogue: await play(workbench, 60),
			save: [] as number[],
			list: [] as number[],
			open: [] as number[],
		};
	}),
);
const plain: number[] = [];
const text = JSON.stringify(benches[0]?.dialogue.check);
for (let index = 0; index < saves; index++) {
	plain.push(await timed(() => plainWrite(text)));
	for (const bench of benches) {
		const {workbench, dialogue} = bench;
		const at = workbench.now();
		const check = reduce(dialogue.check, {
			type: 'answer',
			step: 'room-note',
			value: `note ${index}`,
			typed: `note ${index}`,
			at,
		});
		bench.save.push(await timed(() => workbench.save({...dialogue, check})));
	}
}
for (let index = 0; index < saves / 5; index++) {
	for (const bench of benches) {
		const reader = new OpenWorkbench({dataDir: bench.dataDir, version: 'bench'});
		bench.list.push(await timed(() => reader.archive.past({offset: 0, limit: 9})));
	}
}
const newest = benches.map(({workbench}) => workbench.archive.past({offset: 0, limit: 1}).rows[0]?.id ?? '');
for (let index = 0; index < saves; index++) {
	for (const [number, {dataDir, open}] of benches.entries()) {
		const reader = new OpenWorkbench({dataDir, version: 'bench'});
		open.push(await timed(() => reader.archive.record(newest[number] ?? '')));
	}
}
for (const {workbench} of benches) workbench.release();
console.log(
	JSON.stringify({
		bytes: text.length,
		plain,
		benches: benches.map(({count, save, list, open}) => ({count, save, list, open})),
	}),
);
