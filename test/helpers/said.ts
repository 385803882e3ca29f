export {words} from '../../source/words/index.js';

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

/** Text on one line, as it was before a face broke it. */
export const flat = (text: string): string => text.replaceAll(/[\s│|]+/g, ' ').trim();
