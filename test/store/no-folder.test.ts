import fs from 'node:fs';
import path from 'node:path';
import {expect, it} from 'vitest';
import {readyFolder} from '../../source/store/folder.js';
import {faulty, newFolder, removeFoldersAfterwards} from './support.js';

removeFoldersAfterwards();

const thing = {id: 'data', values: {}} as const;

// The system makes no folder there and says ENOENT, on which a recursive mkdir of Node tries for ever.
it.runIf(process.platform === 'linux')('A place where no folder can be made is refused at once', () => {
	const folder = '/proc/no-such-folder/within';
	expect(() => readyFolder(thing, folder)).toThrow(faulty('not-saved', {thing, file: folder, system: 'ENOENT'}));
});

it('A folder is made with all that lead to it, for this user alone', () => {
	const folder = path.join(newFolder(), 'one', 'two');
	readyFolder(thing, folder);
	for (const one of [folder, path.dirname(folder)]) expect(fs.statSync(one).mode & 0o777).toBe(0o700);
});
