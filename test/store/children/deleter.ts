// Deletes an arm and is killed at the file call of the given number.
import {runDeleteCommand} from '../../../source/commands/deletion/delete-command.js';
import {arm, install} from './faulty-fs.js';

const [folder = '', at = ''] = process.argv.slice(2);

install();
arm({at: Number(at), kind: 'kill'});
const status = await runDeleteCommand({arm: 'north deck', name: 'north deck', data: folder, version: '0.0.0'});
process.stdout.write(`\nended ${status}`);
process.exit(status);
