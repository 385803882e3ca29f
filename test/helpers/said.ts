import {agoText} from '#language/ago';
import {findings} from '#language/findings';
import {steps} from '#language/steps/index';
import type {StepId} from '../../source/procedure/step-ids.js';
import {documentWords} from '../../source/words/documents.js';
import {words as others} from '../../source/words/index.js';
import {practiceWords} from '../../source/words/practice.js';
import {reportWords} from '../../source/words/reports.js';

export {says} from '../../source/words/says.js';
export {optionLabel, tickText, titleOf} from '../../source/words/step-text.js';
/** All that is said, whichever part of it the program loads when. */
export const words = {
	...others,
	documents: documentWords,
	findings,
	practice: practiceWords,
	reports: reportWords,
	steps,
};

/** Stands in a sentence for a value that a test does not know beforehand. */
export const anything = '\u0000';

/** A sentence as a face may break it over lines and between the edges of a frame. */
export const broken = (sentence: string): RegExp =>
	new RegExp(
		sentence
			.trim()
			.split(/\s+/)
			.map((word) => word.replace(/[$()*+.?[\\\]^{|}]/g, '\\$&'))
			.join('[\\s│|]+'),
	);

/** The numbers that stand in a text where whole numbers stand as marks in its sentence; none where it has no such sentence. */
export function numbersIn(text: string, sentence: string, ...marks: readonly number[]): readonly number[] {
	const pattern = marks.reduce(
		(whole, mark) => whole.replace(new RegExp(`${mark}(?:\\\\\\.\\d+)?`), '([+-]?\\d+(?:\\.\\d+)?)'),
		broken(sentence).source,
	);
	return (new RegExp(pattern).exec(text) ?? []).slice(1).map(Number);
}

/** Printed numbers and names in a sentence, in this order. */
export const inOrder = (...printed: readonly string[]): RegExp =>
	new RegExp(printed.map((one) => one.replace(/[$()*+.?[\\\]^{|}]/g, '\\$&')).join('.*'), 's');

/** A sentence about what was left just now, with any other time in it. */
export const leftAnyTime = (sentence: string): string => sentence.replace(agoText(0), anything);

/** Text on one line, as it was before a face broke it. */
export const flat = (text: string): string => text.replaceAll(/[\s│|]+/g, ' ').trim();

/** Text without any space, as it is found wherever a line breaks, within a word too. */
export const bare = (text: string): string => text.replaceAll(/\s/g, '');

/** A sentence with any numbers in it, where a test looks for the sentence and not for its figures. */
export const withAnyNumbers = (sentence: string): RegExp =>
	new RegExp(
		sentence
			.replace(/[$()*+.?[\\\]^{|}]/g, '\\$&')
			.replaceAll(/\d+(?:\\\.\d+)?/g, '\\d+(?:\\.\\d+)?')
			.replaceAll(anything, '.*'),
	);

/** How a sentence begins, up to its first number: for a test that it is not said, whatever its figures. */
export const beginning = (sentence: string): string => /^\D+/.exec(sentence)?.[0] ?? sentence;

/** The parts of a sentence around what may be anything. */
export const around = (sentence: string): readonly string[] =>
	sentence
		.split(anything)
		.map((part) => part.trim())
		.filter((part) => part !== '');

/** A sentence on one line with anything in it that stands for it. */
export const withAnything = (sentence: string, pattern = '.*'): RegExp =>
	new RegExp(sentence.replace(/[$()*+.?[\\\]^{|}]/g, '\\$&').replaceAll(anything, pattern));

/** What is said at a step; with the values that it tells of, where it tells of any. */
export function saidAt(step: StepId, part: 'ask' | 'why' | 'mistake', values: object = {}): string {
	const text: string | ((values: never) => string) = words.steps[step][part];
	return typeof text === 'function' ? text(values as never) : text;
}

/** A whole line that is this sentence, whatever its figures. */
export const wholly = (sentence: string): RegExp => new RegExp(`^${withAnyNumbers(sentence).source}$`);

const {bench, motion} = words.practice;
const gaugeMark = 77;
const stateMark = 'what the arm does';
const states = [motion.rests({ms: 7000}), motion.rests({ms: null}), motion.holds({ms: 7000}), motion.holds({ms: null})]
	.concat(motion.wentBack({ms: 7000}), motion.wentBack({ms: null}), motion.letsGo)
	.concat(
		(['in', 'out'] as const).flatMap((way) => [motion.pushed({way}), motion.swings({way}), motion.nudgeFiner({way})]),
	);
/** The arm let go and went back by itself, as its state is told. */
export const isGoneBack = (state: string): boolean =>
	[motion.wentBack({ms: 7000}), motion.wentBack({ms: null})].some((one) => withAnyNumbers(one).test(state)) ||
	(['in', 'out'] as const).some((way) => state.includes(motion.nudgeFiner({way})));

/** What an invented gauge shows, as it is told: the number is the first group. */
export const gaugeSays = new RegExp(
	withAnyNumbers(bench.gauge({readingPct: gaugeMark, stepPct: 1, isTurned: false, state: stateMark}))
		.source.replace('\\+\\d+(?:\\.\\d+)?', '([+-]?\\d+(?:\\.\\d+)?)')
		.replace(stateMark, `(?:${states.map((one) => withAnyNumbers(one).source).join('|')})`),
);
