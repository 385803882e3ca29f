import stringWidth from 'string-width';
import type {View} from '../pages/view.js';
import {printable} from '../terminal/printable.js';
import {words} from '../words/index.js';
import {type Row, textRows} from './body.js';
import type {Look} from './look.js';

/** A part of the deck does not break at the end of a line. */
const unbroken = (text: string): string => text.replaceAll(' ', '\u00a0');

/** How the deck stands, what this step changes marked; at the right whether it may be played. Never faint. */
export function deckRows(view: View, isNarrow: boolean, width: number, look: Look): Row[] {
	const {deck, changes, isArmInHand, progress} = view;
	const {named} = words.pages.deck;
	if (look.screenReader)
		return textRows([...named(deck, false, isArmInHand).map(({text}) => text), progress].join(', '), width, look);
	const mark = look.unicode ? '▸' : '>';
	const told = (isShort: boolean): readonly string[] =>
		named(deck, isShort, isArmInHand).map(({part, text}) => `${changes.includes(part) ? mark : ''}${text}`);
	const bare = [false, true].flatMap((isShort) =>
		named(deck, isShort, isArmInHand).flatMap(({part, text}) =>
			part === 'stylus' && deck.stylus === 'bare' ? text : [],
		),
	);
	const row = (text: string): Row => withWarning({text: printable(text, width), tone: 'strong'}, bare);
	const atRight = (text: string, end: string): Row =>
		row(`${text}${' '.repeat(Math.max(1, width - stringWidth(text) - stringWidth(end)))}${end}`);
	const sep = look.unicode ? ' · ' : ', ';
	if (isNarrow) {
		// Always two lines, so that nothing under them jumps.
		const [first = '', ...others] = textRows(` ${told(true).map(unbroken).join(sep)}`, width - 1, look).map(
			({text}) => text,
		);
		const rest = others.join(' ');
		const fits = stringWidth(rest) + stringWidth(progress) + 3 <= width;
		// A mark between two parts says nothing at the end of a line.
		return [
			row(` ${first.replace(/[ ·,]+$/u, '')}`),
			atRight(rest === '' ? '' : ` ${rest}`, fits ? progress : shortOf(progress)),
		];
	}
	const room = width - stringWidth(progress) - 2;
	const brief = ` ${told(true).join('  ')}`;
	const whole = [` ${told(false).join('   ')}`, ` ${told(false).join('  ')}`, brief].find(
		(text) => stringWidth(text) <= room,
	);
	return [whole === undefined ? atRight(brief, shortOf(progress)) : atRight(whole, progress)];
}

/** What may be hurt stands out, wherever the eye has got used to the rest. */
function withWarning(row: Row, texts: readonly string[]): Row {
	const plain = row.text.replaceAll('\u00a0', ' ');
	// Whole or in short, whichever the row has room for.
	const text = texts.find((one) => plain.includes(one));
	if (text === undefined) return row;
	const from = stringWidth(plain.slice(0, plain.indexOf(text)));
	return {...row, spans: [{from, to: from + stringWidth(text), tone: 'warn'}]};
}

const shortOf = (progress: string): string =>
	progress === words.pages.view.notReadyToPlay ? words.pages.view.notReady : progress;
