import {Box, Text, useApp} from 'ink';
import {type ReactNode, useEffect, useState} from 'react';
import type {Dialogue} from '../check/dialogue.js';
import {closingLines, closingOptions} from '../pages/home.js';
import type {FinishedCheck} from '../results/record.js';
import {MIN_COLUMNS, MIN_ROWS, useTerminalSize} from '../terminal/use-terminal-size.js';
import type {Opened, PracticeDesk, PracticeDoor, Unfinished, Workbench} from '../workbench.js';
import {CheckScreen} from './check-screen.js';
import {FinishedScreen} from './finished-screen.js';
import {type HomeChoice, HomeScreen} from './home-screen.js';
import {type KeyControl, KeysProvider, useKeys} from './keys-context.js';
import {type Look, LookProvider, useLook, written} from './look.js';
import {MenuScreen} from './menu-screen.js';
import {PastScreen} from './past-screen.js';
import {PracticePlaces} from './practice-places.js';
import {ProfilesScreen} from './profiles-screen.js';
import {SettingsScreen} from './settings-screen.js';

type Place =
	| {readonly kind: 'home'; readonly notice: string}
	| {readonly kind: 'check'; readonly dialogue: Dialogue}
	| {readonly kind: 'finished'; readonly record: FinishedCheck}
	| {readonly kind: 'past' | 'profiles' | 'settings'}
	| {readonly kind: 'practice'; readonly desk: PracticeDesk; readonly dialogue?: Dialogue | undefined}
	/** Another check would put this one aside: a new one, or an old one whose deck is put back. */
	| {readonly kind: 'closing'; readonly unfinished: Unfinished; readonly other: Other}
	| {readonly kind: 'leaving'};

export type AppProps = {
	readonly workbench: Workbench;
	readonly keys?: KeyControl;
	readonly look: Look;
	/** A check to begin with, instead of the home screen. */
	readonly dialogue?: Dialogue | undefined;
	/** Something to say on the home screen. */
	readonly notice?: string | undefined;
	/** Practice to begin with, instead of the home screen. */
	readonly desk?: PracticeDesk | undefined;
	/** The way to practice from the home screen. */
	readonly door?: PracticeDoor | undefined;
};

/** The whole program on a terminal: home, a check, past checks, profiles, settings. */
export const App = ({keys, look, ...props}: AppProps): ReactNode => (
	<LookProvider value={look}>
		<KeysProvider value={keys}>
			<Places {...props} first={firstPlace(props)} />
		</KeysProvider>
	</LookProvider>
);

function firstPlace({desk, dialogue, notice = ''}: Pick<AppProps, 'desk' | 'dialogue' | 'notice'>): Place {
	if (desk) return {kind: 'practice', desk, dialogue};
	return dialogue ? {kind: 'check', dialogue} : {kind: 'home', notice};
}

const tooSmall = (columns: number, rows: number): string =>
	`This window (${columns} × ${rows}) is too small: make it at least ${MIN_COLUMNS} × ${MIN_ROWS}, or start with --plain.`;

type PlacesProps = Pick<AppProps, 'workbench' | 'desk' | 'door'> & {readonly first: Place};

/** Another check than the open one: a new one, a repeated one, or the put-back list of an old one. */
type Other = {readonly start: 'start' | 'recheck'; readonly reopen?: string};

const Places = ({workbench, desk, door, first}: PlacesProps): ReactNode => {
	const [place, setPlace] = useState(first);
	const {isTooSmall, columns, rows} = useTerminalSize();
	const {exit} = useApp();
	const keys = useKeys();
	const look = useLook();
	// Leaving from an effect lets the last frame be drawn first.
	useEffect(() => {
		if (place.kind === 'leaving') exit();
	}, [place, exit]);
	const home = (notice = ''): void => setPlace({kind: 'home', notice});
	const open = async (opening: Promise<Opened>): Promise<void> => {
		// What is typed ahead is meant for the check, not for this list.
		keys?.hold();
		const opened = await opening.finally(() => keys?.release());
		if (opened.ok) setPlace({kind: 'check', dialogue: opened.dialogue});
		else home(opened.sentence);
	};
	const openOther = ({start, reopen}: Other) =>
		open(reopen === undefined ? workbench[start]() : workbench.reopen(reopen));
	const ask = (other: Other): void => {
		const unfinished = workbench.unfinished();
		if (unfinished) setPlace({kind: 'closing', unfinished, other});
		else void openOther(other);
	};
	const choose = (choice: HomeChoice): void => {
		if (choice === 'resume') void open(workbench.resume());
		else if (choice === 'start' || choice === 'recheck') ask({start: choice});
		else if (choice === 'practice') void practise();
		else setPlace({kind: choice === 'leave' ? 'leaving' : choice});
	};
	const practise = async (): Promise<void> => {
		keys?.hold();
		const opened = await door?.open().finally(() => keys?.release());
		if (opened?.ok) setPlace({kind: 'practice', desk: opened.desk});
		else home(opened?.sentence);
	};
	const toRealChecks = (): void => {
		door?.close();
		home();
	};
	const screen = (): ReactNode => {
		switch (place.kind) {
			case 'home':
				return <HomeScreen key={place.notice} workbench={workbench} notice={place.notice} onChoose={choose} />;
			case 'check':
				return (
					<CheckScreen
						workbench={workbench}
						initial={place.dialogue}
						onHome={() => home()}
						onFinished={(record) => setPlace({kind: 'finished', record})}
					/>
				);
			case 'finished':
				return (
					<FinishedScreen record={place.record} onHome={() => home()} onLeave={() => setPlace({kind: 'leaving'})} />
				);
			case 'closing':
				return (
					<MenuScreen
						title="A check is open"
						shown={closingLines(place.unfinished)}
						options={closingOptions}
						onChoose={(id) => {
							if (id === 'back') home();
							else void (id === 'resume' ? open(workbench.resume()) : openOther(place.other));
						}}
						onBack={() => home()}
						backHint="Esc back"
					/>
				);
			case 'past':
				return (
					<PastScreen
						workbench={workbench}
						onBack={() => home()}
						onReopen={(id) => ask({start: 'start', reopen: id})}
					/>
				);
			case 'profiles':
				return <ProfilesScreen workbench={workbench} onBack={() => home()} />;
			case 'settings':
				return <SettingsScreen workbench={workbench} onBack={() => home()} />;
			case 'practice':
				return (
					<PracticePlaces
						desk={place.desk}
						dialogue={place.dialogue}
						onLeave={() => setPlace({kind: 'leaving'})}
						onHome={desk ? undefined : toRealChecks}
					/>
				);
			case 'leaving':
				return null;
		}
	};
	// Hidden, not taken away: what is typed and where the check stands live in the screen.
	return (
		<>
			<Box display={isTooSmall ? 'none' : 'flex'} flexDirection="column">
				{screen()}
			</Box>
			{isTooSmall ? <Text>{written(tooSmall(columns, rows), look)}</Text> : null}
		</>
	);
};
