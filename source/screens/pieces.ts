import stringWidth from 'string-width';
import type {Tone} from '../pages/shown-lines.js';
import type {Span} from './body.js';

export type Piece = {readonly text: string; readonly tone: Tone; readonly from: number};

/** A line cut where its spans begin and end, in cells; what is in none of them is plain. */
export function piecesOf(text: string, spans: readonly Span[]): Piece[] {
	const pieces: Piece[] = [];
	let column = 0;
	for (const character of text) {
		const width = stringWidth(character);
		const tone = spans.find(({from, to}) => column >= from && column < to)?.tone ?? 'plain';
		const last = pieces.at(-1);
		// A mark without a width belongs to the letter before it.
		if (last && (last.tone === tone || width === 0)) pieces[pieces.length - 1] = {...last, text: last.text + character};
		else pieces.push({text: character, tone, from: column});
		column += width;
	}
	return pieces;
}
