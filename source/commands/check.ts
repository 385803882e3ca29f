import {readText} from '../procedure/read-answer.js';
import {dataDirectory} from '../store/data-directory.js';
import {StoreError} from '../store/store-error.js';
import {readEnvironment} from '../terminal/environment.js';
import {EXIT} from '../terminal/exit-paths.js';
import {printable} from '../terminal/printable.js';
import {OpenWorkbench} from './open-workbench.js';
import {startedAs} from './parting-lines.js';

export type CheckFlags = {
	readonly arm?: string;
	/** The last check of the arm is repeated. */
	readonly recheck?: boolean;
	readonly data?: string;
	readonly plain?: boolean;
	readonly color: boolean;
	readonly version: string;
};

/** The check itself: picks the face that the terminal can show, and gives it the workbench. */
export async function runCheck(flags: CheckFlags): Promise<number> {
	const environment = readEnvironment({
		variables: process.env,
		inputIsTerminal: process.stdin.isTTY === true,
		outputIsTerminal: process.stdout.isTTY === true,
		platform: process.platform,
		plain: flags.plain ?? false,
		color: flags.color,
	});
	if (typeof environment.face === 'object') return refuse(environment.face.refusal, EXIT.usage);
	const name = flags.arm === undefined ? undefined : readText(flags.arm.trim());
	if (name?.kind === 'refused') return refuse(`--arm: ${name.sentence}`, EXIT.usage);
	try {
		const dataDir = dataDirectory({flag: flags.data, env: process.env});
		const workbench = new OpenWorkbench({dataDir, version: flags.version});
		workbench.look();
		const goOn = startedAs(process.env, flags.data);
		const asked = {arm: flags.arm?.trim(), recheck: flags.recheck ?? false};
		if (environment.face === 'plain') {
			const {runPlain} = await import('./plain-face.js');
			return await runPlain({workbench, asked, goOn});
		}
		const {runInk} = await import('./ink-face.js');
		return await runInk({workbench, environment, asked, goOn});
	} catch (error) {
		if (error instanceof StoreError)
			return refuse(error.sentence, error.code === 'locked' ? EXIT.locked : EXIT.cannotReadOrWrite);
		throw error;
	}
}

function refuse(sentence: string, status: number): number {
	process.stderr.write(`${printable(sentence)}\n`);
	return status;
}
