import type {Environment} from '../terminal/environment.js';
import type {FullScreen} from '../terminal/full-screen.js';
import type {KeyFeed} from '../terminal/key-feed.js';
import {type Repaints, renderApp} from '../terminal/render.js';
import {App, type AppProps} from './app.js';

type ShowApp = Omit<AppProps, 'keys' | 'look'> & {
	readonly environment: Environment;
	readonly feed: KeyFeed;
	readonly screen: FullScreen | undefined;
	readonly repaints: Repaints;
};

/** Shows the program until it is left. */
export const showApp = ({environment, feed, screen, repaints, ...shown}: ShowApp): Promise<unknown> =>
	renderApp(<App {...shown} keys={feed} look={environment} />, {
		feed,
		...(screen ? {screen, repaints} : {}),
		screenReader: environment.screenReader,
	});
