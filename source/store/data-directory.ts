import {homedir} from 'node:os';
import path from 'node:path';
import {refusePractice} from './practice-folder.js';
import {StoreError} from './store-error.js';
import {usualFolder} from './usual-folder.js';

export type DataDirectoryOptions = {
	/** What was given with `--data`. */
	readonly flag?: string | undefined;
	readonly env: Readonly<Record<string, string | undefined>>;
	readonly platform?: NodeJS.Platform;
	readonly home?: string;
};

/**
 * Full path of the folder that holds the data: `--data` beats `ARMDRIFT_DATA` beats the usual place.
 * @throws StoreError where no folder outside the current one can be named, or the one named holds practice data
 */
export const dataDirectory = ({
	flag,
	env,
	platform = process.platform,
	home = homedir(),
}: DataDirectoryOptions): string => {
	const chosen = flag ?? (env.ARMDRIFT_DATA || undefined);
	if (chosen !== undefined) {
		if (chosen.trim() === '' || chosen.includes('\0'))
			throw new StoreError('no-place', {id: 'folder-unnamed', values: {file: chosen}});
		return refusePractice(path.resolve(chosen));
	}
	const {parent, folder} = usualFolder({env, platform, home});
	if (!path.isAbsolute(parent)) throw new StoreError('no-place', {id: 'home-unknown', values: {file: parent}});
	return refusePractice(folder);
};
