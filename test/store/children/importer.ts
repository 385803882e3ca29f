// Imports a file again and again, with some more file calls let through each time, then once without a fault, and prints
// what was broken; or is killed at the file call of a given number.
import fs from 'node:fs';
import path from 'node:path';
import {hindranceOf} from '../../../source/desk/hindrance.js';
import {storeOf} from '../../../source/desk/stored-forms.js';
import {Addition} from '../../../source/exchange/addition.js';
import {ImportFile} from '../../../source/exchange/import-file.js';
import {checkedIds, importPlan} from '../../../source/exchange/import-plan.js';
import {jsonExport} from '../../../source/exchange/write-export.js';
import {arm, hasHit, install} from './faulty-fs.js';

const [file = '', root = '', kind = 'error', code = 'EIO', sticky = ''] = process.argv.slice(2);
const broken: string[] = [];
/** All of them would take a minute; a call of a kind that matters comes many times, so none is missed. */
const CALLS_A_STEP = 5;

const folderWithStore = (dataDir: string) =>
	storeOf(
		dataDir,
		() => new Date(),
		(sentence) => broken.push(sentence),
	);

const importInto = async (dataDir: string) => {
	const opened = new ImportFile(file);
	try {
		const store = folderWithStore(dataDir);
		await new Addition(opened, store).run(importPlan(opened, checkedIds(opened), store));
	} finally {
		opened.close();
	}
};

const exportOf = (dataDir: string): string => {
	const source = {store: folderWithStore(dataDir), program: '', at: '', tell: (one: string) => broken.push(one)};
	return [...jsonExport(source)].join('');
};

install();
if (kind === 'kill') {
	arm({at: Number(code), kind});
	await importInto(root);
	process.stdout.write('done');
} else {
	const whole = path.join(root, 'whole');
	await importInto(whole);
	const wanted = exportOf(whole);
	let at = 1;
	for (let hit = true; hit; at += CALLS_A_STEP) {
		const dataDir = path.join(root, String(at));
		arm({at, kind: kind === 'short' ? 'short' : 'error', code, sticky: sticky !== ''});
		try {
			await importInto(dataDir);
		} catch (error) {
			if (!/^[A-Z"].*\.$/.test(hindranceOf(error).sentence)) broken.push(`call ${at}: ${error}`);
		}
		hit = hasHit();
		arm(undefined);
		// A lock that could not be given back falls with its process, and this one lives on.
		fs.rmSync(path.join(dataDir, 'lock'), {force: true});
		await importInto(dataDir);
		if (exportOf(dataDir) !== wanted) broken.push(`call ${at}: the next import does not go on`);
		fs.rmSync(dataDir, {recursive: true});
	}
	process.stdout.write(JSON.stringify({stories: (at - 1) / CALLS_A_STEP, broken}));
}
