import {render, useStdout} from 'ink';
import {type ReactNode, useEffect} from 'react';
import {CLEAR_SCREEN, type FullScreen} from './full-screen.js';
import type {KeyFeed} from './key-feed.js';

/** Something that calls back when the whole frame must be drawn afresh. */
export interface Repaints {
	onRepaint: (() => void) | null;
}

export interface RenderOptions {
	readonly feed: KeyFeed;
	/** Left out for a screen reader, which reads the normal screen with its history. */
	readonly screen?: FullScreen;
	readonly repaints?: Repaints;
	readonly stdout?: NodeJS.WriteStream;
	readonly screenReader?: boolean;
}

interface RepaintedProps {
	readonly repaints: Repaints | undefined;
	readonly children: ReactNode;
}

/**
 * Ink leaves copies of lines when the window shrinks, and draws nothing when a resize leaves its output the same.
 * Writing through Ink makes it repeat its last frame, so the screen is cleared that way, after Ink's own handlers.
 */
const Repainted = ({repaints, children}: RepaintedProps): ReactNode => {
	const {stdout, write} = useStdout();
	useEffect(() => {
		let pending: NodeJS.Immediate | undefined;
		const repaint = () => {
			pending ??= setImmediate(() => {
				pending = undefined;
				write(CLEAR_SCREEN);
			});
		};
		stdout.on('resize', repaint);
		if (repaints) repaints.onRepaint = repaint;
		return () => {
			stdout.off('resize', repaint);
			if (pending) clearImmediate(pending);
			if (repaints) repaints.onRepaint = null;
		};
	}, [stdout, write, repaints]);
	return children;
};

/**
 * Shows an Ink application until one of its components calls `exit`, whose value is handed on.
 * The terminal is still on the alternate screen afterwards: leave it with the parting text, then end the process
 * explicitly, since Ink's timers would keep it alive for some 30 ms.
 * @throws what a component threw while it was drawn
 */
export const renderApp = async (element: ReactNode, options: RenderOptions): Promise<unknown> => {
	const {feed, screen, repaints, stdout = process.stdout, screenReader = false} = options;
	feed.start();
	screen?.enter();
	const children = screen ? <Repainted repaints={repaints}>{element}</Repainted> : element;
	const app = render(children, {
		// Ink asks for a whole terminal stream but uses only what the feed has.
		stdin: feed as unknown as NodeJS.ReadStream,
		stdout,
		exitOnCtrlC: false,
		// Nothing prints to the console in a production build, and the patch costs start-up time.
		patchConsole: false,
		// Ink 6.8's incremental rendering moves up one line too few after a frame that ends in a line end, as every frame
		// of ours does: the screen creeps down at each key. It would save bytes, no time.
		incrementalRendering: false,
		// At Ink's own 30 a key that follows another within 33 ms waits for the next slot; idle cost is the same.
		maxFps: 120,
		isScreenReaderEnabled: screenReader,
	});
	try {
		return await app.waitUntilExit();
	} finally {
		feed.stop();
	}
};
