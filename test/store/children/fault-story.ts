// Tells the story of a check again and again, with one more file call let through each time, and prints what was broken.
import fs from 'node:fs';
import path from 'node:path';
import {StoreError} from '../../../source/store/store-error.js';
import {storeText} from '../../../source/words/store-text.js';
import {openBareStore, sample} from './bare-store.js';
import {arm, type Fault, hasHit, install} from './faulty-fs.js';

const [root = '', kind = 'error', code = 'EIO', sticky = ''] = process.argv.slice(2);
const ID = '20261125-090000-invented';
const NEXT_ID = '20261126-090000-invented';
const TRIES = 2;
const broken: string[] = [];

const fault = (at: number): Fault => ({at, kind: kind === 'short' ? 'short' : 'error', code, sticky: sticky !== ''});

/** Whether an error is told in a whole sentence, with the place. */
const isTold = ({fault}: StoreError, folder: string): boolean => {
	const sentence = storeText(fault);
	return sentence.includes(folder) && sentence.endsWith('.');
};

/** Tries a step, and once more as a user would; whatever goes wrong must be a sentence naming the place. */
const attempt = async (folder: string, what: string, work: () => Promise<void>): Promise<boolean> => {
	for (let count = 0; count < TRIES; count++) {
		try {
			await work();
			return true;
		} catch (error) {
			const fine = error instanceof StoreError && isTold(error, folder);
			if (!fine) broken.push(`${what}: ${String(error)}`);
		}
	}
	return false;
};

const tell = async (folder: string) => {
	const store = openBareStore(folder);
	let release = () => {};
	const said: string[] = [];
	const note = async (what: string, work: () => Promise<void>) => {
		if (await attempt(folder, what, work)) said.push(what);
	};
	await note('lock', async () => {
		const lock = store.lock();
		if (lock.held) release = lock.release;
	});
	for (const answer of [1, 2]) await note(`save ${answer}`, () => store.saveDraft(sample(ID, answer)));
	await note('settings', () => store.saveSettings({answer: 1}));
	await note('finish', () => store.finish(ID, sample(ID, 2)));
	await note('remark', () => store.saveRemark(ID, {answer: 1}));
	await note('next', () => store.saveDraft(sample(NEXT_ID, 9)));
	return {said, release};
};

const judge = (folder: string, said: readonly string[]): string[] => {
	const store = openBareStore(folder);
	const {check, notices} = store.draft();
	const faults = notices.filter(({values}) => 'damage' in values).map((notice) => `after it: ${storeText(notice)}`);
	const record = store.record(ID);
	const finished = !(record instanceof StoreError);
	const saved = said.filter((step) => step.startsWith('save')).length;
	if (said.includes('finish') !== finished && said.includes('finish')) faults.push('a finished check is gone');
	if (said.includes('next') && check?.id !== NEXT_ID) faults.push('the next check is gone');
	if (!finished && !said.includes('next') && (check?.answer ?? 0) < saved) faults.push(`an answer of ${saved} is gone`);
	if (said.includes('settings') && store.settings().value === undefined) faults.push('the settings are gone');
	if (said.includes('remark') && store.remark(ID) === undefined) faults.push('the remark is gone');
	if (store.list({offset: 0, limit: 9}).total !== (finished ? 1 : 0)) faults.push('the list is wrong');
	return faults;
};

install();
await openBareStore(root).prepare();
let at = 1;
for (let hit = true; hit; at++) {
	const folder = path.join(root, String(at));
	fs.mkdirSync(folder, {mode: 0o700});
	arm(fault(at));
	const {said, release} = await tell(folder);
	hit = hasHit();
	arm(undefined);
	release();
	broken.push(...judge(folder, said).map((text) => `call ${at}: ${text}`));
}
process.stdout.write(JSON.stringify({stories: at - 1, broken}));
