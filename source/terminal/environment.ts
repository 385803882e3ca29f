type Variables = Record<string, string | undefined>;

export interface EnvironmentInput {
	readonly variables: Variables;
	readonly inputIsTerminal: boolean;
	readonly outputIsTerminal: boolean;
	readonly platform: NodeJS.Platform;
	/** The --plain option. */
	readonly plain?: boolean;
	/** False for the --no-color option. */
	readonly color?: boolean;
}

export interface Environment {
	/** Which face to show; none where there is no terminal for one. */
	readonly face: 'ink' | 'plain' | 'none';
	/** Whether drawings may use more than ASCII. */
	readonly unicode: boolean;
	readonly color: boolean;
	readonly screenReader: boolean;
}

const isOn = (value: string | undefined): boolean =>
	value !== undefined && value !== '' && value !== '0' && value !== 'false';

/** POSIX, Base Definitions 8.2: LC_ALL beats LC_CTYPE beats LANG, and an empty one counts as unset. */
const usesUtf8 = ({LC_ALL, LC_CTYPE, LANG}: Variables, platform: NodeJS.Platform): boolean => {
	const locale = LC_ALL || LC_CTYPE || LANG;
	// A Windows console has no such variables and a Mac terminal may leave them out; both are UTF-8.
	if (!locale) return platform === 'win32' || platform === 'darwin';
	return /utf-?8/i.test(locale);
};

// An option beats FORCE_COLOR beats NO_COLOR (no-color.org: only a value that is not empty counts).
const usesColor = ({variables, color, outputIsTerminal}: EnvironmentInput): boolean => {
	if (color === false) return false;
	if (variables.FORCE_COLOR !== undefined) return !/^(?:0|false)$/.test(variables.FORCE_COLOR);
	if (variables.NO_COLOR) return false;
	return outputIsTerminal;
};

const faceFor = (input: EnvironmentInput): Environment['face'] => {
	const {variables, platform} = input;
	const hasTerminal = input.inputIsTerminal && input.outputIsTerminal;
	const cannotDraw = hasTerminal && !variables.TERM && platform !== 'win32';
	if (input.plain || isOn(variables.ACCESSIBLE) || variables.TERM === 'dumb' || cannotDraw) return 'plain';
	return hasTerminal ? 'ink' : 'none';
};

/** What the terminal and its variables ask for. */
export const readEnvironment = (input: EnvironmentInput): Environment => ({
	face: faceFor(input),
	unicode: usesUtf8(input.variables, input.platform),
	color: usesColor(input),
	screenReader: isOn(input.variables.INK_SCREEN_READER),
});

/**
 * Makes the variables fit for Ink; call it after {@link readEnvironment} and before Ink is imported. Ink prints only
 * its last frame where a CI variable is set, though somebody sits at this terminal. The text field's cursor is drawn
 * by inverting, which the colouring library gives up together with colours, so it is told to keep its basic level;
 * dropping colours is the theme's work.
 */
export const prepareForInk = (variables: Variables, commandLine: string[]): void => {
	for (const name of ['CI', 'CONTINUOUS_INTEGRATION', 'NO_COLOR', 'DEV']) delete variables[name];
	if (!isOn(variables.FORCE_COLOR)) variables.FORCE_COLOR = '1';
	// The colouring library looks for its own options here, even though FORCE_COLOR is set.
	for (const option of ['--no-color', '--color']) {
		const index = commandLine.indexOf(option);
		if (index !== -1) commandLine.splice(index, 1);
	}
};
