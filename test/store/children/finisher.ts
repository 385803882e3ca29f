// Saves a check, then finishes it, and keeps what a process killed at each file call leaves; or is killed at the file call
// of the given number.
import fs from 'node:fs';
import {openBareStore, sample} from './bare-store.js';
import {install, stopOrKeep} from './faulty-fs.js';

const [folder = '', root = '', killAt = ''] = process.argv.slice(2);
const ID = '20261125-090000-invented';

install();
fs.mkdirSync(folder);
const store = openBareStore(folder);
store.lock();
await store.saveDraft(sample(ID, 1));
stopOrKeep(folder, {root, killAt});
await store.finish(ID, sample(ID, 1));
process.stdout.write('done');
