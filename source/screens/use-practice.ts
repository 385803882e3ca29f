import {useEffect, useReducer, useRef} from 'react';
import type {Dialogue} from '../check/dialogue.js';
import type {Prompt} from '../check/prompt.js';
import {nudgeKeys} from '../pages/nudge-keys.js';
import {inWords, line, type Shown} from '../pages/shown-lines.js';
import {KEYS} from '../terminal/keys.js';
import {words} from '../words/index.js';
import type {PracticeBench} from '../workbench.js';

/** How often an invented arm moves on, in ms: more often than the eye follows in a terminal costs power for nothing. */
const beatMs = 100;

/** The large nudges, also while something is typed. */
const arrows: ReadonlyMap<string, string> = new Map([
	[KEYS.left, '<'],
	[KEYS.right, '>'],
]);

export type PracticeOnScreen = {
	/** What the invented bench shows beside the question. */
	readonly shown: readonly Shown[];
	/** The hidden truth stands at the verdict. */
	readonly isTruthShown: boolean;
	/** @returns whether it took the key */
	readonly takes: (key: string) => boolean;
};

type Question = {
	readonly dialogue: Dialogue;
	readonly prompt: Prompt;
	readonly typed: string;
	readonly takesNumber: boolean;
};

type Seen = {
	/** A voice reads the screen out. */
	readonly isSpoken: boolean;
	/** The question is on the screen: while it is not, time stands still at the bench. */
	readonly isShown: boolean;
};

/** The invented bench on the screen: it moves by itself while a reading is wanted, and takes the keys of the hand. */
export function usePractice(
	bench: PracticeBench | undefined,
	{dialogue, prompt, typed, takesNumber}: Question,
	{isSpoken, isShown}: Seen,
): PracticeOnScreen {
	const [, redraw] = useReducer((count: number) => count + 1, 0);
	const isProbing = bench?.isProbing(dialogue) ?? false;
	// A beat that comes between two questions must not go back to the one before.
	const latest = useRef(dialogue);
	latest.current = dialogue;
	useEffect(() => {
		if (!bench || !isProbing || !isShown) return;
		const timer = setInterval(() => {
			const before = factOf(bench, latest.current, isSpoken);
			bench.pass(beatMs);
			if (factOf(bench, latest.current, isSpoken) !== before) redraw();
		}, beatMs);
		return () => clearInterval(timer);
	}, [bench, isProbing, isShown, isSpoken]);
	const takes = (key: string): boolean => {
		if (!bench) return false;
		const isFree = prompt.kind !== 'field' || typed === '';
		// No number has this key in it.
		if (key === '!' && (isFree || takesNumber)) {
			// Where nothing is offered the key does nothing: it is no answer either.
			if (bench.doByHand(dialogue)) redraw();
			return true;
		}
		const nudge = nudgeKeys[arrows.get(key) ?? (isFree ? key : '')];
		if (!isProbing || prompt.kind !== 'field' || !nudge) return false;
		bench.nudge(nudge);
		return true;
	};
	return {
		shown: bench ? shownBeside(bench, dialogue, isProbing && prompt.kind === 'field') : [],
		isTruthShown: bench?.isTruthShown(dialogue) ?? false,
		takes,
	};
}

function shownBeside(bench: PracticeBench, dialogue: Dialogue, takesNudges: boolean): readonly Shown[] {
	const [arm, ...others] = bench.shown(dialogue);
	return arm && takesNudges ? [arm, line(words.faces.nudge.keys), ...others] : [...(arm ? [arm] : []), ...others];
}

/** What makes a new drawing worth while; a voice is not to read out every trembling of the gauge. */
function factOf(bench: PracticeBench, dialogue: Dialogue, isSpoken: boolean): string {
	if (isSpoken) return bench.motion();
	return bench.shown(dialogue).map(inWords).join();
}
