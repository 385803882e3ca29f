import type {Dialogue} from '../check/dialogue.js';
import type {Environment} from '../terminal/environment.js';
import type {FullScreen} from '../terminal/full-screen.js';
import type {KeyFeed} from '../terminal/key-feed.js';
import {type Repaints, renderApp} from '../terminal/render.js';
import type {PracticeDesk, Workbench} from '../workbench.js';
import {App} from './app.js';
import {PracticeApp} from './practice-app.js';

type ShowApp = {
	readonly workbench: Workbench;
	/** Practice on invented arms, instead of real checks. */
	readonly desk: PracticeDesk | undefined;
	readonly dialogue: Dialogue | undefined;
	readonly notice: string | undefined;
	readonly environment: Environment;
	readonly feed: KeyFeed;
	readonly screen: FullScreen | undefined;
	readonly repaints: Repaints;
};

/** Shows the program until it is left. */
export const showApp = ({
	workbench,
	desk,
	dialogue,
	notice,
	environment,
	feed,
	screen,
	repaints,
}: ShowApp): Promise<unknown> =>
	renderApp(
		desk ? (
			<PracticeApp desk={desk} dialogue={dialogue} keys={feed} look={environment} />
		) : (
			<App workbench={workbench} dialogue={dialogue} notice={notice} keys={feed} look={environment} />
		),
		{
			feed,
			...(screen ? {screen, repaints} : {}),
			screenReader: environment.screenReader,
		},
	);
