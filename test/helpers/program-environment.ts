import {mkdtempSync, rmSync} from 'node:fs';
import {tmpdir} from 'node:os';
import path from 'node:path';
import {fileURLToPath} from 'node:url';

const foldersToRemove = new Set<string>();
process.on('exit', () => {
	for (const folder of foldersToRemove) rmSync(folder, {recursive: true, force: true});
});

/** A new empty folder that is removed when the test process ends. */
export const freshFolder = (): string => {
	const folder = mkdtempSync(path.join(tmpdir(), 'armdrift-test-'));
	foldersToRemove.add(folder);
	return folder;
};

const DROPPED = [
	'CI',
	'CONTINUOUS_INTEGRATION',
	'FORCE_COLOR',
	'NO_COLOR',
	'NODE_ENV',
	'NODE_OPTIONS',
	'ACCESSIBLE',
	// Whoever runs the tests may do so through npm or npx.
	'npm_command',
	'npm_lifecycle_event',
	// Nothing is opened on the tester's desktop.
	'DISPLAY',
	'WAYLAND_DISPLAY',
];

/** The tester's environment without what would change the program's look, with folders of its own. */
export const cleanEnvironment = (
	dataDir: string,
	extra: Readonly<Record<string, string | undefined>> = {},
): Record<string, string> => {
	const home = freshFolder();
	const variables: Record<string, string | undefined> = {
		...process.env,
		...Object.fromEntries(
			[...DROPPED, 'INK_SCREEN_READER', 'LC_CTYPE', 'LC_MESSAGES', 'LANG'].map((name) => [name, undefined]),
		),
		LC_ALL: 'C.UTF-8',
		HOME: home,
		XDG_CONFIG_HOME: path.join(home, 'config'),
		XDG_DATA_HOME: path.join(home, 'data'),
		XDG_STATE_HOME: path.join(home, 'state'),
		XDG_CACHE_HOME: path.join(home, 'cache'),
		ARMDRIFT_DATA: dataDir,
		...extra,
	};
	const isSet = (entry: [string, string | undefined]): entry is [string, string] => entry[1] !== undefined;
	return Object.fromEntries(Object.entries(variables).filter(isSet));
};

const CLOCK = fileURLToPath(new URL('shifted-clock.mjs', import.meta.url));

/** An environment in which the program's clock is behind by so many minutes. */
export const earlier = (minutes: number) => ({
	NODE_OPTIONS: `--import=${CLOCK}`,
	CLOCK_BEHIND_MINUTES: String(minutes),
});
