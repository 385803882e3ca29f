import {type ReactNode, useMemo, useState} from 'react';
import type {Prompt} from '../check/prompt.js';
import {beforeAnotherArm} from '../pages/another-arm.js';
import {besideBench, viewOf} from '../pages/view.js';
import {KEYS} from '../terminal/keys.js';
import {useTerminalSize} from '../terminal/use-terminal-size.js';
import {words} from '../words/index.js';
import {wideColumns} from './arrange.js';
import {textRows} from './body.js';
import {deckRows} from './deck-row.js';
import {Frame} from './frame.js';
import {useCommands, useKeys} from './keys-context.js';
import {layoutOf} from './layout.js';
import {useLook} from './look.js';
import {PromptControl} from './prompt-control.js';
import {type CheckProps, type NotSaved, useCheck} from './use-check.js';
import {countdownShown, useCountdown} from './use-countdown.js';
import {useFieldKeys} from './use-field-keys.js';
import {usePractice} from './use-practice.js';

/** What belongs to one question and goes with it. */
const blankSheet = {typed: '', page: 0, isWhy: false};

/** A check on full screens: one question at a time, drawn from its view. */
export const CheckScreen = (props: CheckProps): ReactNode => {
	const look = useLook();
	const keys = useKeys();
	const {columns, frameRows, isTooSmall} = useTerminalSize();
	const width = Math.min(columns, 100);
	const [sheet, setSheet] = useState(blankSheet);
	const {typed, page, isWhy} = sheet;
	const {bell, settleSeconds} = props.workbench.settings();
	const countdown = useCountdown(settleSeconds, bell);
	const check = useCheck(
		props,
		() => {
			setSheet(blankSheet);
			fieldKeys.goesOn();
		},
		() => fieldKeys.begunAnew(),
	);
	const {dialogue, unsaved} = check;
	const question = useMemo(() => viewOf(dialogue), [dialogue]);
	const {prompt} = question;
	const fieldKeys = useFieldKeys(prompt);
	// A hold limit shows what it brings once it is taken; other fields show it while it is typed.
	const tried = prompt.kind === 'field' && prompt.settle ? '' : typed;
	const asked = useMemo(() => (tried === '' ? question : viewOf(dialogue, tried)), [question, dialogue, tried]);
	const practice = usePractice(
		props.workbench.practice,
		{dialogue, prompt, typed, takesNumber: question.unit !== ''},
		{isSpoken: look.screenReader, isShown: !isWhy && !isTooSmall && !unsaved},
	);
	const seen = besideBench(asked, dialogue, practice.shown);
	const view = practice.isTruthShown ? beforeAnotherArm(seen) : seen;
	// An invented arm is looked at while it settles; a real one is looked at on the bench.
	const isHeard = look.screenReader || practice.shown.length > 0;
	const waiting = useMemo(
		() => countdownShown(countdown.left, settleSeconds, {screenReader: isHeard}),
		[countdown.left, settleSeconds, isHeard],
	);
	const layout = useMemo(
		() => layoutOf({view, typed, width, height: frameRows, page, isWhy, ...waiting, look}),
		[view, typed, width, frameRows, page, isWhy, waiting, look],
	);

	const turn = (by: number): boolean => {
		setSheet((now) => ({...now, page: Math.min(layout.pages - 1, Math.max(0, now.page + by))}));
		return true;
	};
	const enter = (entry: Parameters<typeof check.enter>[0]): boolean => {
		countdown.stop();
		check.enter(entry);
		return true;
	};
	const takesArrows = isWhy || prompt.kind !== 'field' || typed === '';

	const command = (key: string): boolean | readonly string[] => {
		if (isTooSmall) return true;
		if (unsaved) {
			if (key === KEYS.enter) check.retry();
			if (key === KEYS.escape) check.drop();
			return true;
		}
		if (!isWhy && practice.takes(key)) {
			// An arm that is touched begins to settle anew.
			countdown.stop();
			if (key === '!') setSheet((now) => ({...now, page: 0}));
			return true;
		}
		if (key === KEYS.pageDown || (takesArrows && key === KEYS.right)) return turn(1);
		if (key === KEYS.pageUp || (takesArrows && key === KEYS.left)) return turn(-1);
		// Nothing is typed that a key could belong to.
		const isBare = prompt.kind !== 'field' || typed === '' || fieldKeys.makesRoom();
		const asksWhy = key === KEYS.f1 || (isBare && (key === '?' || key === '*'));
		if (isWhy || asksWhy) {
			setSheet((now) => ({...now, isWhy: !now.isWhy, page: 0}));
			return true;
		}
		if (key === KEYS.escape || (isBare && key === '/')) return enter({kind: 'back'});
		if (key === KEYS.tab) return enter({kind: 'steps'});
		if (isBare && settles(prompt, typed, key) && !keys?.isHasty) {
			countdown.start();
			return true;
		}
		if (countdown.left !== undefined && key !== KEYS.enter) countdown.stop();
		return fieldKeys.replaced(key);
	};
	useCommands(
		command,
		() => setSheet((now) => ({...now, typed: ''})),
		() => check.say(words.faces.pasteCut),
	);

	if (unsaved) return <Unsaved {...unsaved} width={width} />;
	return (
		<Frame head={layout.head} body={layout.body} foot={layout.foot}>
			{isWhy ? null : (
				<PromptControl
					key={view.prompt.key}
					view={view}
					typed={typed}
					rows={layout.controlRows}
					width={width}
					onType={(text) => setSheet((now) => ({...now, typed: text}))}
					onEntry={enter}
				/>
			)}
		</Frame>
	);
};

/** Whether a key starts the countdown in a field that has room for it: Space, and Enter where it has nothing to take. */
const settles = (prompt: Prompt, typed: string, key: string): boolean =>
	prompt.kind === 'field' &&
	prompt.settle === true &&
	(key === ' ' || (key === KEYS.enter && typed === '' && prompt.initial === ''));

type UnsavedProps = NotSaved & {readonly width: number};

/** An answer that could not be put on the disk: it is kept here and can be tried again, while the deck stands as it does. */
const Unsaved = ({dialogue, sentence, answerSaved, width}: UnsavedProps): ReactNode => {
	const look = useLook();
	const {title, whatIsSaved, keys} = words.faces.unsaved[answerSaved ? 'filing' : 'answer'];
	return (
		<Frame
			head={[...textRows(title, width, look, 'bad'), ...deckRows(viewOf(dialogue), width < wideColumns, width, look)]}
			body={[...textRows(sentence, width, look), {text: '', tone: 'plain'}, ...textRows(whatIsSaved, width, look)]}
			foot={textRows(keys, width, look, 'dim')}
		/>
	);
};
