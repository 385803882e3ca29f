import {Text, useApp} from 'ink';
import {type ReactNode, useEffect, useState} from 'react';
import type {Dialogue} from '../check/dialogue.js';
import {closingLines, closingOptions} from '../findings/home.js';
import type {FinishedCheck} from '../findings/record.js';
import {useTerminalSize} from '../terminal/use-terminal-size.js';
import type {Opened, Unfinished, Workbench} from '../workbench.js';
import {CheckScreen} from './check-screen.js';
import {FinishedScreen} from './finished-screen.js';
import {type HomeChoice, HomeScreen} from './home-screen.js';
import {type KeyControl, KeysProvider} from './keys-context.js';
import {type Look, LookProvider} from './look.js';
import {MenuScreen} from './menu-screen.js';
import {PastScreen} from './past-screen.js';
import {ProfilesScreen} from './profiles-screen.js';
import {SettingsScreen} from './settings-screen.js';

type Place =
	| {readonly kind: 'home'; readonly notice: string}
	| {readonly kind: 'check'; readonly dialogue: Dialogue}
	| {readonly kind: 'finished'; readonly record: FinishedCheck}
	| {readonly kind: 'past' | 'profiles' | 'settings'}
	/** A new check would put this one aside. */
	| {readonly kind: 'closing'; readonly unfinished: Unfinished}
	| {readonly kind: 'leaving'};

type AppProps = {
	readonly workbench: Workbench;
	readonly keys?: KeyControl;
	readonly look: Look;
	/** A check to begin with, instead of the home screen. */
	readonly dialogue?: Dialogue | undefined;
	/** Something to say on the home screen. */
	readonly notice?: string | undefined;
};

/** The whole program on a terminal: home, a check, past checks, profiles, settings. */
export const App = ({workbench, keys, look, dialogue, notice = ''}: AppProps): ReactNode => (
	<LookProvider value={look}>
		<KeysProvider value={keys}>
			<Places workbench={workbench} first={dialogue ? {kind: 'check', dialogue} : {kind: 'home', notice}} />
		</KeysProvider>
	</LookProvider>
);

const Places = ({workbench, first}: {readonly workbench: Workbench; readonly first: Place}): ReactNode => {
	const [place, setPlace] = useState(first);
	const {isTooSmall, columns, rows} = useTerminalSize();
	const {exit} = useApp();
	// Leaving from an effect lets the last frame be drawn first.
	useEffect(() => {
		if (place.kind === 'leaving') exit();
	}, [place, exit]);
	const home = (notice = ''): void => setPlace({kind: 'home', notice});
	const open = async (opening: Promise<Opened>): Promise<void> => {
		const opened = await opening;
		if (opened.ok) setPlace({kind: 'check', dialogue: opened.dialogue});
		else home(opened.sentence);
	};
	const startNew = (): void => {
		const unfinished = workbench.unfinished();
		if (unfinished) setPlace({kind: 'closing', unfinished});
		else void open(workbench.start());
	};
	const choose = (choice: HomeChoice): void => {
		if (choice === 'resume') void open(workbench.resume());
		else if (choice === 'start') startNew();
		else setPlace({kind: choice === 'leave' ? 'leaving' : choice});
	};
	if (isTooSmall)
		return <Text>{`This window (${columns} × ${rows}) is too small: make it larger, or start with --plain.`}</Text>;
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
			return <FinishedScreen record={place.record} onHome={() => home()} onLeave={() => setPlace({kind: 'leaving'})} />;
		case 'closing':
			return (
				<MenuScreen
					title="A check is open"
					shown={closingLines(place.unfinished)}
					options={closingOptions}
					onChoose={(id) => {
						if (id === 'back') home();
						else void open(id === 'resume' ? workbench.resume() : workbench.start());
					}}
					onBack={() => home()}
					backHint="Esc back"
				/>
			);
		case 'past':
			return (
				<PastScreen workbench={workbench} onBack={() => home()} onReopen={(id) => void open(workbench.reopen(id))} />
			);
		case 'profiles':
			return <ProfilesScreen workbench={workbench} onBack={() => home()} />;
		case 'settings':
			return <SettingsScreen workbench={workbench} onBack={() => home()} />;
		case 'leaving':
			return null;
	}
};
