import {type ReactNode, useCallback, useMemo, useRef, useState} from 'react';
import type {Dialogue} from '../check/dialogue.js';
import {promptOf} from '../check/prompt.js';
import {type Entry, respond} from '../check/respond.js';
import type {FinishedCheck} from '../findings/record.js';
import {viewOf} from '../findings/view.js';
import {isText, KEYS} from '../terminal/keys.js';
import {useTerminalSize} from '../terminal/use-terminal-size.js';
import type {Workbench} from '../workbench.js';
import {Frame} from './frame.js';
import {useCommands} from './keys-context.js';
import {layoutOf} from './layout.js';
import {useLook} from './look.js';
import {PromptControl} from './prompt-control.js';
import {Unsaved} from './unsaved.js';
import {countdownText, useCountdown} from './use-countdown.js';

type CheckScreenProps = {
	readonly workbench: Workbench;
	readonly initial: Dialogue;
	/** Back from the first step, or a step that was just saved: home is shown. */
	readonly onHome: () => void;
	readonly onFinished: (record: FinishedCheck) => void;
};

/** The text field takes a backspace for one code unit; an emoji or an accented letter may have several. */
function backspacesFor(typed: string): readonly string[] {
	const last = [...new Intl.Segmenter().segment(typed.slice(-40))].at(-1)?.segment ?? '';
	return Array.from({length: Math.max(1, last.length)}, () => KEYS.backspace);
}

/** An Enter this soon after another one, or after a digit that chose, is a bounce or impatience; it accepts nothing that was not typed. */
const impatientMs = 500;

export const CheckScreen = ({workbench, initial, onHome, onFinished}: CheckScreenProps): ReactNode => {
	const look = useLook();
	const {columns, frameRows} = useTerminalSize();
	const width = Math.min(columns, 100);
	const [dialogue, setDialogue] = useState(initial);
	const [typed, setTyped] = useState('');
	const [page, setPage] = useState(0);
	const [isWhy, setIsWhy] = useState(false);
	/** An answer that is not on the disk yet, and why. */
	const [unsaved, setUnsaved] = useState<{readonly dialogue: Dialogue; readonly sentence: string}>();
	const lastEnter = useRef(0);
	/** The text in the field was refused: the next letter or digit begins anew. */
	const refused = useRef(false);
	const {bell, settleSeconds} = workbench.settings();
	const countdown = useCountdown(settleSeconds, bell);
	// A hold limit shows what it brings once it is taken; other fields show it while it is typed.
	const prompt = useMemo(() => promptOf(dialogue), [dialogue]);
	const tried = prompt.kind === 'field' && prompt.settle ? '' : typed;
	const view = useMemo(() => viewOf(dialogue, tried), [dialogue, tried]);

	const show = useCallback((next: Dialogue) => {
		setDialogue(next);
		setTyped(next.draft ?? '');
		setPage(0);
		setIsWhy(false);
		setUnsaved(undefined);
		refused.current = false;
	}, []);

	const store = async (next: Dialogue): Promise<void> => {
		keys?.hold();
		try {
			const saved = await workbench.save(next);
			if (!saved.ok) setUnsaved({dialogue: next, sentence: saved.sentence});
			else if (saved.finished) onFinished(saved.finished);
			else show({...next, profiles: workbench.profiles()});
		} finally {
			keys?.release();
		}
	};

	const enter = (entry: Entry): void => {
		countdown.stop();
		const next = respond(dialogue, entry, workbench.now());
		if (!next) onHome();
		else if (next.check !== dialogue.check) void store(next);
		else if (next.refusal) {
			refused.current = true;
			setDialogue(next);
		} else show(next);
	};

	const pages = useRef(1);
	const turn = (by: number): boolean => {
		setPage((now) => Math.min(pages.current - 1, Math.max(0, now + by)));
		return true;
	};
	const isEmptyField = prompt.kind === 'field' && typed === '';

	const command = (key: string): boolean | readonly string[] => {
		if (unsaved) {
			if (key === KEYS.enter || key === 'r') void store(unsaved.dialogue);
			if (key === KEYS.escape) setUnsaved(undefined);
			return true;
		}
		if (key === KEYS.f1 || (key === '?' && (isEmptyField || prompt.kind !== 'field'))) {
			setIsWhy((now) => !now);
			setPage(0);
			return true;
		}
		if (key === KEYS.pageDown) return turn(1);
		if (key === KEYS.pageUp) return turn(-1);
		if (isWhy) {
			if (key === KEYS.right || key === KEYS.left) return turn(key === KEYS.right ? 1 : -1);
			setIsWhy(false);
			setPage(0);
			return key === KEYS.escape || key === KEYS.enter;
		}
		if (key === KEYS.escape) {
			enter({kind: 'back'});
			return true;
		}
		if (key === KEYS.tab) {
			enter({kind: 'steps'});
			return true;
		}
		if (prompt.kind !== 'field' && (key === KEYS.right || key === KEYS.left)) return turn(key === KEYS.right ? 1 : -1);
		if (isEmptyField && prompt.settle && key === ' ') {
			countdown.start();
			return true;
		}
		if (countdown.left !== undefined && key !== KEYS.enter) countdown.stop();
		if (prompt.kind === 'choice' && /^[1-9]$/.test(key)) lastEnter.current = performance.now();
		if (prompt.kind === 'field' && refused.current && isText(key)) {
			refused.current = false;
			return [...Array.from({length: typed.length}, () => KEYS.backspace), key];
		}
		if (key === KEYS.backspace && prompt.kind === 'field') return backspacesFor(typed);
		if (key === KEYS.enter) return isImpatient();
		return false;
	};

	const isImpatient = (): boolean => {
		const now = performance.now();
		const soon = now - lastEnter.current < impatientMs;
		lastEnter.current = now;
		return soon && (prompt.kind === 'choice' || isEmptyField);
	};

	const keys = useCommands(
		command,
		() => setTyped(''),
		() => setDialogue((now) => ({...now, refusal: 'That was too much to paste; the end of it was left out.'})),
	);

	const notice = countdown.left === undefined ? '' : countdownText(countdown.left, settleSeconds, look.unicode);
	const layout = useMemo(
		() => layoutOf({view, width, height: frameRows, page, isWhy, notice, look}),
		[view, width, frameRows, page, isWhy, notice, look],
	);
	pages.current = layout.pages;
	if (unsaved) return <Unsaved sentence={unsaved.sentence} width={width} />;
	return (
		<Frame head={layout.head} body={layout.body} foot={layout.foot}>
			{isWhy ? null : (
				<PromptControl
					key={prompt.key}
					view={view}
					typed={typed}
					rows={layout.controlRows}
					width={width}
					onType={setTyped}
					onEntry={enter}
				/>
			)}
		</Frame>
	);
};
