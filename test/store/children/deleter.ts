// Deletes an arm, and before each file call that writes keeps what is on the disk: what a process killed there leaves.
import {runDelete} from '../../../source/commands/delete.js';
import {install, keepBeforeEachCall} from './faulty-fs.js';

const [folder = '', root = ''] = process.argv.slice(2);
install();
keepBeforeEachCall(folder, root);
process.exitCode = await runDelete({arm: 'north deck', name: 'north deck', data: folder, version: '0.0.0'});
