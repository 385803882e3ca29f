// Saves and finishes checks for ever and says so after each; to be killed.
import {openBareStore, sample} from './bare-store.js';

const [folder = '', round = '0'] = process.argv.slice(2);
const ANSWERS = 6;
const FILLER = 'x'.repeat(30_000);

const say = (line: string) => process.stdout.write(`${line}\n`);

const store = openBareStore(folder);
const lock = store.lock();
if (!lock.held) throw lock.error;
await store.prepare();
for (let count = 0; ; count++) {
	const id = `20261125-090000-r${round.padStart(4, '0')}c${String(count).padStart(6, '0')}`;
	for (let answer = 1; answer <= ANSWERS; answer++) {
		await store.saveDraft(sample(id, answer, FILLER));
		say(`saved ${id} ${answer}`);
		await new Promise((resolve) => setImmediate(resolve));
	}
	await store.finish(id, sample(id, ANSWERS));
	say(`finished ${id}`);
}
