import {homedir} from 'node:os';
import path from 'node:path';
import {refusePractice} from './practice-folder.js';
import {StoreError} from './store-error.js';

const PROGRAM = 'armdrift';

export type DataDirectoryOptions = {
	/** What was given with `--data`. */
	readonly flag?: string | undefined;
	readonly env: Readonly<Record<string, string | undefined>>;
	readonly platform?: NodeJS.Platform;
	readonly home?: string;
};

const usualParent = (env: DataDirectoryOptions['env'], platform: NodeJS.Platform, home: string): string => {
	if (platform === 'darwin') return path.join(home, 'Library', 'Preferences');
	if (platform === 'win32') return env.APPDATA || path.join(home, 'AppData', 'Roaming');
	const configHome = env.XDG_CONFIG_HOME ?? '';
	// XDG Base Directory Specification: "All paths set in these environment variables must be absolute. If an
	// implementation encounters a relative path ... it should consider the path invalid and ignore it."
	return path.isAbsolute(configHome) ? configHome : path.join(home, '.config');
};

/**
 * Full path of the folder that holds the data: `--data` beats `ARMDRIFT_DATA` beats the place that conf itself would take
 * (worked out here, because loading conf only to ask for it would delay the first frame).
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
	const parent = usualParent(env, platform, home);
	if (!path.isAbsolute(parent)) throw new StoreError('no-place', {id: 'home-unknown', values: {file: parent}});
	return refusePractice(path.join(parent, PROGRAM, ...(platform === 'win32' ? ['Config'] : [])));
};
