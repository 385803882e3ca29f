// Deletes an arm, and before each file call that writes keeps what is on the disk: what a process killed there leaves.
import fs from 'node:fs';
import path from 'node:path';
import {runDelete} from '../../../source/commands/delete.js';
import {arm, install} from './faulty-fs.js';

const [folder = '', root = ''] = process.argv.slice(2);
let count = 0;

install();
arm({
	at: 1,
	kind: 'look',
	sticky: true,
	look: () => fs.cpSync(folder, path.join(root, String(++count)), {recursive: true}),
});
process.exitCode = await runDelete({arm: 'north deck', name: 'north deck', data: folder, version: '0.0.0'});
