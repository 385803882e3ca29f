// Imports a file and keeps what a process killed at each file call leaves; or is killed at the file call of the given number.
import {install, stopOrKeep} from './faulty-fs.js';
import {importInto} from './import-into.js';

const [file = '', folder = '', root = '', killAt = ''] = process.argv.slice(2);

install();
stopOrKeep(folder, {root, killAt});
await importInto(file, folder, () => {});
process.stdout.write('done');
