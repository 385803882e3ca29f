import {words} from '../../source/words/index.js';

export {words};

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

/** Text on one line, as it was before a face broke it. */
export const flat = (text: string): string => text.replaceAll(/[\s│|]+/g, ' ').trim();

/** A sentence with any numbers in it, where a test looks for the sentence and not for its figures. */
export const withAnyNumbers = (sentence: string): RegExp =>
	new RegExp(sentence.replace(/[$()*+.?[\\\]^{|}]/g, '\\$&').replaceAll(/\d+(?:\\\.\d+)?/g, '\\d+(?:\\.\\d+)?'));

/** How a sentence begins, up to its first number: for a test that it is not said, whatever its figures. */
export const beginning = (sentence: string): string => /^\D+/.exec(sentence)?.[0] ?? sentence;

/** A whole line that is this sentence, whatever its figures. */
export const wholly = (sentence: string): RegExp => new RegExp(`^${withAnyNumbers(sentence).source}$`);

const {bench, motion} = words.practice;
const gaugeMark = 77;
const stateMark = 'what the arm does';
const states = [motion.rests({ms: 7000}), motion.rests({ms: null}), motion.holds({ms: 7000}), motion.holds({ms: null})]
	.concat(motion.wentBack({ms: 7000}), motion.wentBack({ms: null}), motion.letsGo)
	.concat((['in', 'out'] as const).flatMap((way) => [motion.pushed({way}), motion.swings({way})]));
/** The arm let go and went back by itself, as its state is told. */
export const isGoneBack = (state: string): boolean =>
	[motion.wentBack({ms: 7000}), motion.wentBack({ms: null})].some((one) => withAnyNumbers(one).test(state));

/** What an invented gauge shows, as it is told: the number is the first group. */
export const gaugeSays = new RegExp(
	withAnyNumbers(bench.gauge({readingPct: gaugeMark, stepPct: 1, isTurned: false, state: stateMark}))
		.source.replace('\\+\\d+(?:\\.\\d+)?', '([+-]?\\d+(?:\\.\\d+)?)')
		.replace(stateMark, `(?:${states.map((one) => withAnyNumbers(one).source).join('|')})`),
);
