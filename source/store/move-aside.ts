import fs from 'node:fs';
import path from 'node:path';
import {codeOf} from './describe-fault.js';
import {localDate} from './local-time.js';
import {StoreError} from './store-error.js';
import type {Damage, StoreFault, Thing} from './store-fault.js';

/** A name beside the file that nothing has yet: `settings-a.json.damaged-2026-11-25-1`. */
const freeName = (file: string, damage: Damage, now: Date): string => {
	const word = damage.id === 'other-hand' ? 'other' : 'damaged';
	for (let number = 1; ; number++) {
		const name = `${file}.${word}-${localDate(now)}-${number}`;
		if (fs.lstatSync(name, {throwIfNoEntry: false}) === undefined) return name;
	}
};

/**
 * Moves a file that can't be used out of the way, never over another one. To be called by the holder of the lock only.
 * @returns what there is to tell, with the names of both files
 */
export const moveAside = (thing: Thing, file: string, damage: Damage, now: Date): StoreFault => {
	try {
		const aside = freeName(file, damage, now);
		fs.renameSync(file, aside);
		return {id: 'set-aside', values: {thing, file, damage, aside: path.basename(aside)}};
	} catch (error) {
		const values = {thing, file, damage, system: codeOf(error) ?? String(error)};
		throw new StoreError('unwritable', {id: 'not-set-aside', values}, error);
	}
};
