import path from 'node:path';

const PROGRAM = 'armdrift';

type System = {
	readonly env: Readonly<Record<string, string | undefined>>;
	readonly platform: NodeJS.Platform;
	readonly home: string;
};

const usualParent = ({env, platform, home}: System): string => {
	if (platform === 'darwin') return path.join(home, 'Library', 'Preferences');
	if (platform === 'win32') return env.APPDATA || path.join(home, 'AppData', 'Roaming');
	const configHome = env.XDG_CONFIG_HOME ?? '';
	// XDG Base Directory Specification: "All paths set in these environment variables must be absolute. If an
	// implementation encounters a relative path ... it should consider the path invalid and ignore it."
	return path.isAbsolute(configHome) ? configHome : path.join(home, '.config');
};

/** The place that conf itself would take (worked out here, because loading conf only to ask would delay the first frame). */
export const usualFolder = (system: System): {readonly parent: string; readonly folder: string} => {
	const parent = usualParent(system);
	const inParent = system.platform === 'win32' ? [PROGRAM, 'Config'] : [PROGRAM];
	return {parent, folder: path.join(parent, ...inParent)};
};
