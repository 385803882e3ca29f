import fs from 'node:fs';
import path from 'node:path';
import {codeOf, saveFault} from './describe-fault.js';
import {localDate} from './local-time.js';

/** A name beside the file that nothing has yet: `settings-a.json.damaged-2026-11-25-1`. */
const freeName = (file: string, now: Date): string => {
	for (let number = 1; ; number++) {
		const name = `${file}.damaged-${localDate(now)}-${number}`;
		try {
			fs.lstatSync(name);
		} catch (error) {
			if (codeOf(error) === 'ENOENT') return name;
			throw error;
		}
	}
};

/**
 * Moves a file that can't be used out of the way, never over another one. To be called by the holder of the lock only.
 * @param what the content, as it begins a sentence
 * @param why what is wrong with it: 'it is empty'
 * @returns the sentence that names both files
 */
export const setAside = (what: string, file: string, why: string, now: Date): string => {
	try {
		const aside = freeName(file, now);
		fs.renameSync(file, aside);
		return `${what} could not be used from "${file}": ${why}. That file is kept as "${path.basename(aside)}" beside it.`;
	} catch (error) {
		throw saveFault(`${what} is damaged (${why}) and`, file, error);
	}
};
