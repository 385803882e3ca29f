import {useEffect, useReducer} from 'react';
import type {Dialogue} from '../check/dialogue.js';
import type {Prompt} from '../check/prompt.js';
import type {Shown} from '../findings/shown-lines.js';
import {KEYS} from '../terminal/keys.js';
import type {Nudge, PracticeBench} from '../workbench.js';

/** How often an invented arm moves on, in ms: more often than the eye follows in a terminal costs power for nothing. */
const beatMs = 100;

/** A key on the keyboard for each nudge; the letters only where nothing is typed yet. */
const arrows: ReadonlyMap<string, Nudge> = new Map([
	[KEYS.left, {way: 'in', size: 'large'}],
	[KEYS.right, {way: 'out', size: 'large'}],
]);
const letters: ReadonlyMap<string, Nudge> = new Map([
	['<', {way: 'in', size: 'large'}],
	['>', {way: 'out', size: 'large'}],
	[',', {way: 'in', size: 'fine'}],
	['.', {way: 'out', size: 'fine'}],
]);

export type AtPractice = {
	/** What the invented bench shows beside the question. */
	readonly shown: readonly Shown[];
	/** @returns whether it took the key */
	readonly takes: (key: string) => boolean;
};

type Question = {readonly dialogue: Dialogue; readonly prompt: Prompt; readonly typed: string};

/** The invented bench on the screen: it moves by itself while a reading is wanted, and takes the keys of the hand. */
export function usePractice(
	bench: PracticeBench | undefined,
	{dialogue, prompt, typed}: Question,
	isSpoken: boolean,
): AtPractice {
	const [, redraw] = useReducer((count: number) => count + 1, 0);
	const isProbing = bench?.isProbing(dialogue) ?? false;
	useEffect(() => {
		if (!bench || !isProbing) return;
		const timer = setInterval(() => {
			const before = factOf(bench, dialogue, isSpoken);
			bench.pass(beatMs);
			if (factOf(bench, dialogue, isSpoken) !== before) redraw();
		}, beatMs);
		return () => clearInterval(timer);
	}, [bench, dialogue, isProbing, isSpoken]);
	const takes = (key: string): boolean => {
		if (!bench) return false;
		const isFree = prompt.kind !== 'field' || typed === '';
		if (key === '!' && isFree && bench.doByHand(dialogue)) {
			redraw();
			return true;
		}
		const nudge = arrows.get(key) ?? (isFree ? letters.get(key) : undefined);
		if (!isProbing || prompt.kind !== 'field' || !nudge) return false;
		bench.nudge(nudge);
		return true;
	};
	return {shown: bench?.shown(dialogue) ?? [], takes};
}

/** What makes a new drawing worth while; a voice is not to read out every trembling of the gauge. */
function factOf(bench: PracticeBench, dialogue: Dialogue, isSpoken: boolean): string {
	if (isSpoken) return String(bench.isMoving());
	return bench
		.shown(dialogue)
		.map((one) => (one.kind === 'line' ? one.text : one.caption))
		.join();
}
