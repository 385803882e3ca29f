import {Box, Text, useApp} from 'ink';
import {type ReactNode, useEffect, useMemo, useState} from 'react';
import type {Dialogue} from '../check/dialogue.js';
import {besidePages} from '../pages/beside/beside-pages.js';
import {lobbyPages} from '../pages/beside/practice-lobby.js';
import type {Environment} from '../terminal/environment.js';
import type {FullScreen} from '../terminal/full-screen.js';
import type {KeyFeed} from '../terminal/key-feed.js';
import {type Repaints, renderApp} from '../terminal/render.js';
import {MIN_COLUMNS, MIN_ROWS, useTerminalSize} from '../terminal/use-terminal-size.js';
import {words} from '../words/index.js';
import type {PracticeDesk, PracticeDoor, Workbench} from '../workbench.js';
import {type KeyControl, KeysProvider} from './keys-context.js';
import {type Look, LookProvider, useLook, written} from './look.js';
import {PagesScreen} from './pages-screen.js';

type AppProps = {
	readonly workbench: Workbench;
	readonly keys?: KeyControl;
	readonly look: Look;
	/** A check to begin with, instead of the first page. */
	readonly dialogue?: Dialogue | undefined;
	/** Something to say on the first page of real checks. */
	readonly notice?: string | undefined;
	/** Practice to begin with, instead of real checks. */
	readonly desk?: PracticeDesk | undefined;
	/** The way to practice from real checks. */
	readonly door?: PracticeDoor | undefined;
};

/** The whole program on a terminal: real checks and practice, and the pages beside them. */
export const App = ({keys, look, ...props}: AppProps): ReactNode => (
	<LookProvider value={look}>
		<KeysProvider value={keys}>
			<Benches {...props} />
		</KeysProvider>
	</LookProvider>
);

/** Where one is: at real checks, or at the desk of practice. */
type Bench = Pick<AppProps, 'desk' | 'dialogue' | 'notice'>;

const Benches = ({workbench, door, ...first}: Omit<AppProps, 'keys' | 'look'>): ReactNode => {
	const [{desk, dialogue, notice}, setBench] = useState<Bench>(first);
	const [isLeaving, setLeaving] = useState(false);
	const {isTooSmall, columns, rows, frameRows} = useTerminalSize();
	const {exit} = useApp();
	const look = useLook();
	// Leaving from an effect lets the last frame be drawn first.
	useEffect(() => {
		if (isLeaving) exit();
	}, [isLeaving, exit]);
	// Each line of a list has a digit.
	const listRows = Math.max(1, Math.min(9, frameRows - 8));
	const real = useMemo(
		() => besidePages(workbench, {listRows, columns, hasKeys: true}),
		[workbench, listRows, columns],
	);
	const hasHome = first.desk === undefined;
	const lobby = useMemo(() => desk && {desk, pages: lobbyPages(desk, hasHome)}, [desk, hasHome]);
	const toBench = async (to: 'practice' | 'real-checks'): Promise<string | undefined> => {
		if (to === 'real-checks') {
			door?.close();
			setBench({});
			return;
		}
		const opened = await door?.open();
		if (!opened?.ok) return opened?.sentence;
		setBench({desk: opened.desk});
		return;
	};
	const common = {dialogue, onElsewhere: toBench, onLeave: () => setLeaving(true)};
	const screen = lobby ? (
		<PagesScreen key="practice" workbench={lobby.desk} pages={lobby.pages} {...common} />
	) : (
		<PagesScreen key="real-checks" workbench={workbench} pages={real} notice={notice} {...common} />
	);
	const tooSmall = words.faces.tooSmall({columns, rows, least: {columns: MIN_COLUMNS, rows: MIN_ROWS}});
	// Hidden, not taken away: what is typed and where the check stands live in the screen.
	return (
		<>
			<Box display={isTooSmall ? 'none' : 'flex'} flexDirection="column">
				{isLeaving ? null : screen}
			</Box>
			{isTooSmall ? <Text>{written(tooSmall, look)}</Text> : null}
		</>
	);
};

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
