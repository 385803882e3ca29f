import {expect, test} from 'vitest';
import {graphemes} from '../../source/build/graphemes.js';

// Truth: Intl.Segmenter, which is the Unicode library's own implementation of UAX #29.
const segmenter = new Intl.Segmenter();
const breaksOf = (segments: Iterable<{segment: string; index: number}>) =>
	Array.from(segments, ({segment, index}) => `${index}:${segment}`).join('|');

// Only these matter: a text with a mark, a joiner or an emoji anywhere goes to the Unicode library itself.
const surroundings = (character: string): string[] => [`a${character}b`, character + character, `${character}\n`];

test('Text breaks into the same characters as by the Unicode library, for every character of the basic plane', () => {
	const wrong: string[] = [];
	for (let code = 0; code <= 0xffff; code++) {
		for (const text of surroundings(String.fromCharCode(code))) {
			if (breaksOf(graphemes.segment(text)) !== breaksOf(segmenter.segment(text))) wrong.push(code.toString(16));
		}
	}
	expect(wrong).toEqual([]);
});

test('The character at an index is the same as by the Unicode library, and there is none beyond the end', () => {
	for (const text of ['µ ├─●─┤ 6.9 %', 'e\u0301x', '👩‍🔧 ok', '']) {
		for (let index = 0; index <= text.length; index++) {
			const {segment, index: start} = segmenter.segment(text).containing(index) ?? {
				segment: undefined,
				index: undefined,
			};
			const own = graphemes.segment(text).containing(index);
			expect([own?.segment, own?.index]).toEqual([segment, start]);
		}
	}
});
