import type {Environment} from '../terminal/environment.js';
import {prepareForInk} from '../terminal/environment.js';
import {EXIT, ExitPaths} from '../terminal/exit-paths.js';
import {FullScreen} from '../terminal/full-screen.js';
import {KeyFeed} from '../terminal/key-feed.js';
import {printable} from '../terminal/printable.js';
import {type Asked, openArm} from './open-arm.js';
import type {OpenWorkbench} from './open-workbench.js';
import {partingLines} from './parting-lines.js';

type InkFace = {
	readonly workbench: OpenWorkbench;
	readonly environment: Environment;
	readonly asked: Asked;
	readonly goOn: string;
};

/** The check on full screens. */
export async function runInk({workbench, environment, asked, goOn}: InkFace): Promise<number> {
	const {opened, notice} = await openArm(workbench, asked);
	if (opened && !opened.ok) {
		process.stderr.write(`${printable(opened.sentence)}\n`);
		return opened.locked ? EXIT.locked : EXIT.cannotReadOrWrite;
	}
	prepareForInk(process.env, process.argv);
	const feed = new KeyFeed(process.stdin);
	const screen = environment.screenReader ? undefined : new FullScreen(process.stdout);
	const repaints = {onRepaint: null as (() => void) | null};
	const partingText = (): string => `${partingLines(workbench, goOn).join('\n')}\n`;
	const paths = new ExitPaths({feed, ...(screen ? {screen} : {}), partingText, repaint: () => repaints.onRepaint?.()});
	paths.onLeave(workbench.release);
	paths.install();
	// Raw mode first: what is typed while Ink loads must wait for the first frame, not be echoed.
	feed.start();
	screen?.enter();
	const {showApp} = await import('../screens/show-app.js');
	const shown = showApp({workbench, dialogue: opened?.dialogue, notice, environment, feed, screen, repaints});
	setTimeout(() => void workbench.settleIn(), 300).unref();
	try {
		await shown;
	} catch (error) {
		paths.fail(error);
	}
	const status = workbench.openCheck ? EXIT.leftOpen : EXIT.done;
	paths.leave(status, partingText());
	return status;
}
