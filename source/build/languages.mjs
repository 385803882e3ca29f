import {readdirSync} from 'node:fs';
import path from 'node:path';

/** The languages of the program: each has a folder of its words. */
export const languages = (root) =>
	readdirSync(path.join(root, 'source/words'), {withFileTypes: true})
		.filter((entry) => entry.isDirectory())
		.map(({name}) => name);
