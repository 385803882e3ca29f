import {type ReactNode, useState} from 'react';
import type {Dialogue} from '../check/dialogue.js';
import {
	armOptions,
	armsLines,
	armsTitle,
	extentLines,
	extentOf,
	extentOptions,
	extentTitle,
	practiceNotice,
	practisedOptions,
	practisedTitle,
} from '../pages/practice-words.js';
import {recordLines} from '../pages/record-lines.js';
import {line} from '../pages/shown-lines.js';
import type {FinishedCheck} from '../results/record.js';
import type {Opened, PracticeDesk} from '../workbench.js';
import {CheckScreen} from './check-screen.js';
import {useKeys} from './keys-context.js';
import {MenuScreen} from './menu-screen.js';

type Place =
	| {readonly kind: 'arms'; readonly notice: string}
	/** An arm is chosen, or one of them that is not told. */
	| {readonly kind: 'extent'; readonly arm: string | undefined}
	| {readonly kind: 'check'; readonly dialogue: Dialogue}
	| {readonly kind: 'finished'; readonly record: FinishedCheck};

type PracticePlacesProps = {
	readonly desk: PracticeDesk;
	/** A practice check to begin with, instead of the list of arms. */
	readonly dialogue?: Dialogue | undefined;
	readonly onLeave: () => void;
	/** Back to the first screen of real checks, where that was the way here. */
	readonly onHome?: (() => void) | undefined;
};

/** Practice on a terminal: the invented arms, a check, and its hidden truth. */
export const PracticePlaces = ({desk, dialogue, onLeave, onHome}: PracticePlacesProps): ReactNode => {
	const [place, setPlace] = useState<Place>(dialogue ? {kind: 'check', dialogue} : {kind: 'arms', notice: ''});
	const keys = useKeys();
	const open = async (opening: Promise<Opened>): Promise<void> => {
		keys?.hold();
		const opened = await opening.finally(() => keys?.release());
		setPlace(opened.ok ? {kind: 'check', dialogue: opened.dialogue} : {kind: 'arms', notice: opened.sentence});
	};
	return <PracticePlace desk={desk} place={place} open={open} go={setPlace} onLeave={onLeave} onHome={onHome} />;
};

type PlaceProps = {
	readonly desk: PracticeDesk;
	readonly place: Place;
	readonly open: (opening: Promise<Opened>) => Promise<void>;
	readonly go: (place: Place) => void;
} & Pick<PracticePlacesProps, 'onLeave' | 'onHome'>;

const PracticePlace = ({desk, place, open, go, onLeave, onHome}: PlaceProps): ReactNode => {
	const toArms = (): void => go({kind: 'arms', notice: ''});
	switch (place.kind) {
		case 'arms':
			return <Arms desk={desk} notice={place.notice} open={open} go={go} onLeave={onLeave} onHome={onHome} />;
		case 'extent':
			return (
				<MenuScreen
					key="extent"
					title={extentTitle}
					shown={extentLines(desk.unfinished())}
					options={extentOptions}
					onChoose={(id) => (id === 'back' ? toArms() : void open(desk.begin(place.arm, extentOf(id))))}
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
					onChoose={(id) => (id === 'again' ? toArms() : onLeave())}
					onBack={toArms}
					backHint="Esc another arm"
				/>
			);
	}
};

type ArmsProps = Omit<PlaceProps, 'place'> & {readonly notice: string};

const Arms = ({desk, notice, open, go, onLeave, onHome}: ArmsProps): ReactNode => {
	const [unfinished] = useState(() => desk.unfinished());
	const notices = [...desk.notices(), ...(notice === '' ? [] : [notice])];
	return (
		<MenuScreen
			key="arms"
			title={armsTitle}
			shown={[line(practiceNotice, 'warn'), ...armsLines, ...notices.map((text) => line(text, 'warn'))]}
			options={armOptions(desk.arms, unfinished, onHome !== undefined)}
			onChoose={(id) => {
				if (id === 'leave') onLeave();
				else if (id === 'home') onHome?.();
				else if (id === 'resume') void open(desk.resume());
				else go({kind: 'extent', arm: id === 'hidden' ? undefined : id});
			}}
			onBack={onHome ?? onLeave}
			backHint={onHome ? 'Esc real checks' : 'Esc leave'}
		/>
	);
};
