// Removes two checks of three: told of a fault of the disk at each call in turn, every time in a folder of its own; or,
// told of another folder, keeping there what a process killed at each file call leaves, or killed at that of a number.
import fs from 'node:fs';
import path from 'node:path';
import {StoreError} from '../../../source/store/store-error.js';
import {storeText} from '../../../source/words/store-text.js';
import {openBareStore, sample} from './bare-store.js';
import {arm, hasHit, install, stopOrKeep} from './faulty-fs.js';

const [root = '', kept = '', killAt = ''] = process.argv.slice(2);
const IDS = ['20261123-090000-invented', '20261124-090000-invented', '20261225-090000-invented'];

const prepare = async (folder: string): Promise<void> => {
	const store = openBareStore(folder);
	for (const [index, id] of IDS.entries()) {
		await store.finish(id, sample(id, index));
		await store.saveRemark(id, {answer: index});
	}
};

const removeWith = async (folder: string, goWrong: () => void): Promise<{told: string; hit: boolean}> => {
	const store = openBareStore(folder);
	const lock = store.lock();
	goWrong();
	let told = '';
	try {
		await store.remove(IDS.slice(1));
	} catch (error) {
		told = error instanceof StoreError && storeText(error.fault).includes(folder) ? 'sentence' : String(error);
	}
	const hit = hasHit();
	arm(undefined);
	if (lock.held) lock.release();
	return {told, hit};
};

install();
if (kept !== '') {
	await prepare(root);
	await removeWith(root, () => stopOrKeep(root, {root: kept, killAt}));
	process.stdout.write('done');
} else {
	const prepared = path.join(root, 'prepared');
	await prepare(prepared);
	const told: string[] = [];
	for (let at = 1, hit = true; hit; at++) {
		const folder = path.join(root, String(at));
		fs.cpSync(prepared, folder, {recursive: true});
		const ended = await removeWith(folder, () => arm({at, kind: 'error', code: 'EIO'}));
		hit = ended.hit;
		told.push(ended.told);
	}
	process.stdout.write(JSON.stringify(told));
}
