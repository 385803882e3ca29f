// Saves a check, then finishes it and is killed at the file call of the given number.
import {openBareStore, sample} from './bare-store.js';
import {arm, install} from './faulty-fs.js';

const [folder = '', at = ''] = process.argv.slice(2);
const ID = '20261125-090000-invented';

install();
const store = openBareStore(folder);
store.lock();
await store.saveDraft(sample(ID, 1));
arm({at: Number(at), kind: 'kill'});
await store.finish(ID, sample(ID, 1));
process.stdout.write('done');
