import {Box, Text, useApp} from 'ink';
import {type ReactNode, useEffect, useState} from 'react';
import type {Dialogue} from '../check/dialogue.js';
import {
	armOptions,
	armsLines,
	armsTitle,
	extentOptions,
	extentTitle,
	practiceNotice,
	practisedOptions,
	practisedTitle,
} from '../findings/practice-menus.js';
import type {FinishedCheck} from '../findings/record.js';
import {recordLines} from '../findings/record-lines.js';
import {line} from '../findings/shown-lines.js';
import {useTerminalSize} from '../terminal/use-terminal-size.js';
import type {Opened, PracticeDesk} from '../workbench.js';
import {CheckScreen} from './check-screen.js';
import {type KeyControl, KeysProvider, useKeys} from './keys-context.js';
import {type Look, LookProvider} from './look.js';
import {MenuScreen} from './menu-screen.js';

type Place =
	| {readonly kind: 'arms'; readonly notice: string}
	/** An arm is chosen, or one of them that is not told. */
	| {readonly kind: 'extent'; readonly arm: string | undefined}
	| {readonly kind: 'check'; readonly dialogue: Dialogue}
	| {readonly kind: 'finished'; readonly record: FinishedCheck}
	| {readonly kind: 'leaving'};

type PracticeAppProps = {
	readonly desk: PracticeDesk;
	readonly keys?: KeyControl;
	readonly look: Look;
	/** A practice check to begin with, instead of the list of arms. */
	readonly dialogue?: Dialogue | undefined;
};

/** Practice on a terminal: the invented arms, a check, and its hidden truth. */
export const PracticeApp = ({desk, keys, look, dialogue}: PracticeAppProps): ReactNode => (
	<LookProvider value={look}>
		<KeysProvider value={keys}>
			<PracticePlaces desk={desk} first={dialogue ? {kind: 'check', dialogue} : {kind: 'arms', notice: ''}} />
		</KeysProvider>
	</LookProvider>
);

type PlacesProps = {readonly desk: PracticeDesk; readonly first: Place};

const PracticePlaces = ({desk, first}: PlacesProps): ReactNode => {
	const [place, setPlace] = useState(first);
	const {isTooSmall, columns, rows} = useTerminalSize();
	const {exit} = useApp();
	const keys = useKeys();
	// Leaving from an effect lets the last frame be drawn first.
	useEffect(() => {
		if (place.kind === 'leaving') exit();
	}, [place, exit]);
	const open = async (opening: Promise<Opened>): Promise<void> => {
		keys?.hold();
		const opened = await opening.finally(() => keys?.release());
		setPlace(opened.ok ? {kind: 'check', dialogue: opened.dialogue} : {kind: 'arms', notice: opened.sentence});
	};
	return (
		<>
			<Box display={isTooSmall ? 'none' : 'flex'} flexDirection="column">
				<PracticePlace desk={desk} place={place} open={open} go={setPlace} />
			</Box>
			{isTooSmall ? (
				<Text>{`This window (${columns} × ${rows}) is too small: make it larger, or start with --plain.`}</Text>
			) : null}
		</>
	);
};

type PlaceProps = {
	readonly desk: PracticeDesk;
	readonly place: Place;
	readonly open: (opening: Promise<Opened>) => Promise<void>;
	readonly go: (place: Place) => void;
};

const PracticePlace = ({desk, place, open, go}: PlaceProps): ReactNode => {
	const toArms = (): void => go({kind: 'arms', notice: ''});
	switch (place.kind) {
		case 'arms':
			return <Arms desk={desk} notice={place.notice} open={open} go={go} />;
		case 'extent':
			return (
				<MenuScreen
					key="extent"
					title={extentTitle}
					shown={[]}
					options={extentOptions}
					onChoose={(id) => (id === 'back' ? toArms() : void open(desk.begin(place.arm, id === 'probe')))}
					onBack={toArms}
					backHint="Esc back"
				/>
			);
		case 'check':
			return (
				<CheckScreen
					workbench={desk}
					initial={place.dialogue}
					onHome={toArms}
					onFinished={(record) => go({kind: 'finished', record})}
				/>
			);
		case 'finished':
			return (
				<MenuScreen
					key="finished"
					title={practisedTitle}
					shown={[...desk.practice.truth(place.record), ...recordLines(place.record)]}
					options={practisedOptions}
					onChoose={(id) => (id === 'again' ? toArms() : go({kind: 'leaving'}))}
					onBack={toArms}
					backHint="Esc another arm"
				/>
			);
		case 'leaving':
			return null;
	}
};

type ArmsProps = Omit<PlaceProps, 'place'> & {readonly notice: string};

const Arms = ({desk, notice, open, go}: ArmsProps): ReactNode => {
	const [unfinished] = useState(() => desk.unfinished());
	const notices = [...desk.notices(), ...(notice === '' ? [] : [notice])];
	return (
		<MenuScreen
			key="arms"
			title={armsTitle}
			shown={[line(practiceNotice, 'warn'), ...armsLines, ...notices.map((text) => line(text, 'warn'))]}
			options={armOptions(desk.arms, unfinished)}
			onChoose={(id) => {
				if (id === 'leave') go({kind: 'leaving'});
				else if (id === 'resume') void open(desk.resume());
				else go({kind: 'extent', arm: id === 'hidden' ? undefined : id});
			}}
			onBack={() => go({kind: 'leaving'})}
			backHint="Esc leave"
		/>
	);
};
