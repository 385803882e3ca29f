import fs from 'node:fs';
import path from 'node:path';
import {afterEach, beforeAll, beforeEach, describe, expect, it} from 'vitest';
import type {Lock} from '../../source/store/lock-keeper.js';
import {bundleChild, type Child, startNode} from './child-process.js';
import {deadProcess, entry, held} from './lock-support.js';
import {faulty, newFolder, openTestStore, removeFoldersAfterwards} from './support.js';

removeFoldersAfterwards();

const SLOW_MS = 30_000;

let locker: string;
let folder: string;
let children: Child[];
const lockFile = (): string => path.join(folder, 'lock');

beforeAll(() => {
	locker = bundleChild('locker');
});
beforeEach(() => {
	folder = newFolder();
	children = [];
});
afterEach(async () => {
	for (const child of children) child.process.kill('SIGKILL');
	await Promise.all(children.map(({ended}) => ended));
});

const startLockers = async (count: number): Promise<void> => {
	const started = Array.from({length: count}, () => startNode(locker, [folder]));
	children.push(...started);
	for (const child of started) expect(await child.line()).toBe('"ready"');
};

const tell = async (child: Child, order: string): Promise<Lock> => {
	child.process.stdin.write(`${order}\n`);
	return JSON.parse(await child.line());
};

const takeAll = async (): Promise<Child[]> => {
	const locks = await Promise.all(children.map((child) => tell(child, 'take')));
	for (const lock of locks) if (!lock.held) expect(lock.error).toMatchObject({code: 'locked', fault: {id: 'locked'}});
	return children.filter((_, index) => locks[index]?.held);
};

describe('several copies at once', () => {
	it(
		'exactly one of twenty gets the lock, free, left by a dead process, or garbage',
		async () => {
			await startLockers(20);
			const pid = await deadProcess();
			const before = [
				() => {},
				() => fs.writeFileSync(lockFile(), entry({pid, start: ''})),
				() => fs.writeFileSync(lockFile(), 'garbage'),
			];
			for (let round = 0; round < 12; round++) {
				before[round % before.length]?.();
				const winners = await takeAll();
				expect(winners).toHaveLength(1);
				for (const winner of winners) await tell(winner, 'release');
			}
		},
		SLOW_MS,
	);

	it(
		'the lock of a copy that was killed goes to exactly one other',
		async () => {
			await startLockers(6);
			while (children.length > 1) {
				const [winner, ...more] = await takeAll();
				expect(more).toEqual([]);
				winner?.process.kill('SIGKILL');
				await winner?.ended;
				children = children.filter((child) => child !== winner);
			}
		},
		SLOW_MS,
	);

	it('a copy that was stopped keeps its lock', async () => {
		await startLockers(1);
		const [holder] = await takeAll();
		holder?.process.kill('SIGSTOP');
		const old = new Date(Date.now() - 3_600_000);
		fs.utimesSync(lockFile(), old, old);
		expect(openTestStore(folder).lock()).toMatchObject({
			held: false,
			error: faulty('locked', {pid: holder?.process.pid}),
		});
		holder?.process.kill('SIGCONT');
		if (holder !== undefined) expect(await tell(holder, 'release')).toBe('released');
		expect(held(openTestStore(folder).lock())).toBe(true);
	});
});
