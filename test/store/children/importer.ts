// Imports a file again and again, with some more file calls let through each time, then once without a fault, and prints
// what was broken.
import fs from 'node:fs';
import path from 'node:path';
import {hindranceOf} from '../../../source/desk/hindrance.js';
import {storeOf} from '../../../source/desk/stored-forms.js';
import {jsonExport} from '../../../source/exchange/write-export.js';
import {arm, hasHit, install} from './faulty-fs.js';
import {importInto} from './import-into.js';

const [file = '', root = '', kind = 'error', code = 'EIO', sticky = ''] = process.argv.slice(2);
const broken: string[] = [];
/** All of them would take a minute; a call of a kind that matters comes many times, so none is missed. */
const CALLS_A_STEP = 5;

const tell = (sentence: string) => broken.push(sentence);

const exportOf = (dataDir: string): string => {
	const store = storeOf(dataDir, () => new Date(), tell);
	return [...jsonExport({store, program: '', at: '', tell})].join('');
};

install();
const whole = path.join(root, 'whole');
await importInto(file, whole, tell);
const wanted = exportOf(whole);
let at = 1;
for (let hit = true; hit; at += CALLS_A_STEP) {
	const dataDir = path.join(root, String(at));
	arm({at, kind: kind === 'short' ? 'short' : 'error', code, sticky: sticky !== ''});
	try {
		await importInto(file, dataDir, tell);
	} catch (error) {
		if (!/^[A-Z"].*\.$/.test(hindranceOf(error).sentence)) broken.push(`call ${at}: ${error}`);
	}
	hit = hasHit();
	arm(undefined);
	// A lock that could not be given back falls with its process, and this one lives on.
	fs.rmSync(path.join(dataDir, 'lock'), {force: true});
	await importInto(file, dataDir, tell);
	if (exportOf(dataDir) !== wanted) broken.push(`call ${at}: the next import does not go on`);
	fs.rmSync(dataDir, {recursive: true});
}
process.stdout.write(JSON.stringify({stories: (at - 1) / CALLS_A_STEP, broken}));
