// Takes the lock when told to on standard input, says what came of it, and gives it back when told to.
import {createInterface} from 'node:readline';
import {openBareStore} from './bare-store.js';

const store = openBareStore(process.argv[2] ?? '');
let release = () => {};
const say = (value: unknown) => process.stdout.write(`${JSON.stringify(value)}\n`);

say('ready');
for await (const line of createInterface({input: process.stdin})) {
	if (line === 'take') {
		const lock = store.lock();
		if (lock.held) release = lock.release;
		say(lock);
	} else {
		release();
		say('released');
	}
}
