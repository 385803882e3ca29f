import {prepareForInk} from '../terminal/environment.js';
import {EXIT, ExitPaths} from '../terminal/exit-paths.js';
import {FullScreen} from '../terminal/full-screen.js';
import {KeyFeed} from '../terminal/key-feed.js';
import type {InkStart} from './seat.js';

/** The check on full screens. */
export async function runInk({seat, desk, environment, opened, notice}: InkStart): Promise<number> {
	prepareForInk(process.env, process.argv);
	const {workbench} = seat;
	const feed = new KeyFeed(process.stdin);
	const screen = environment.screenReader ? undefined : new FullScreen(process.stdout);
	const repaints = {onRepaint: null as (() => void) | null};
	const partingText = (): string => `${seat.parting().join('\n')}\n`;
	const paths = new ExitPaths({feed, ...(screen ? {screen} : {}), partingText, repaint: () => repaints.onRepaint?.()});
	paths.onLeave(seat.release);
	paths.install();
	// Raw mode first: what is typed while Ink loads must wait for the first frame, not be echoed.
	feed.start();
	screen?.enter();
	const {showApp} = await import('../screens/show-app.js');
	const dialogue = opened?.ok ? opened.dialogue : undefined;
	const shown = showApp({workbench, desk, door: seat.door, dialogue, notice, environment, feed, screen, repaints});
	setTimeout(() => void workbench.settleIn(), 300).unref();
	try {
		await shown;
	} catch (error) {
		paths.fail(error);
	}
	const status = seat.isLeftOpen ? EXIT.leftOpen : EXIT.done;
	paths.leave(status, partingText());
	return status;
}
