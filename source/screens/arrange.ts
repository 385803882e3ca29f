import stringWidth from 'string-width';
import type {Shown} from '../pages/shown-lines.js';
import {printable} from '../terminal/printable.js';
import {type Row, rowsOfOne} from './body.js';
import type {Look} from './look.js';

/**
 * All that is shown beside the question, as lines of the screen. What begins a page of its own is arranged on that page;
 * a voice has no pages to turn for it.
 *
 * @param rows lines that are kept for it; pictures that can do with fewer leave room for the sentences beside them
 */
export function rowsOf(
	shown: readonly Shown[],
	width: number,
	look: Look,
	rows = width < wideColumns ? usualRows.narrow : usualRows.wide,
): Row[] {
	if (look.screenReader) return shown.flatMap((one) => together(rowsOfOne(one, {columns: width, rows}, look)));
	return leavesOf(shown).flatMap((leaf) => {
		const name = leaf[0]?.leaf;
		return arranged(leaf, width, look, rows).map((row, index) =>
			index === 0 && name !== undefined ? {...row, leaf: name} : row,
		);
	});
}

/** Lines that stay on one page if they can. */
const together = (rows: readonly Row[]): readonly Row[] =>
	rows.map((row, index) => (index > 0 ? {...row, goesOn: true} : row));

function leavesOf(shown: readonly Shown[]): readonly (readonly Shown[])[] {
	const leaves: Shown[][] = [];
	for (const one of shown) {
		const last = leaves.at(-1);
		if (last && one.leaf === undefined) last.push(one);
		else leaves.push([one]);
	}
	return leaves;
}

/** Narrower than this, pictures are smaller, the deck is told in short words and the task has a line more. */
export const wideColumns = 60;
// What a screen of 40 × 20 leaves for an instrument, and one of 80 × 24.
const usualRows = {narrow: 7, wide: 11};

function arranged(all: readonly Shown[], width: number, look: Look, rows: number): Row[] {
	const drawn = (one: Shown, most: number) => rowsOfOne(one, {columns: width, rows: most}, look);
	const spare = spareRows(all, rows, (one) => drawn(one, rows).length);
	const shown = spare < figureRows ? all.filter((one) => !isSpare(one)) : all;
	const whole: (readonly Row[] | undefined)[] = [];
	for (const [place, one] of shown.entries()) {
		if (isSpare(one)) {
			whole.push([...drawn(one, spare), {text: '', tone: 'plain'}]);
			continue;
		}
		const left = rows - rowCount(whole);
		// A picture stays on one page with its heading.
		const most = hasHeading(shown, place) ? rows - 1 : rows;
		whole.push(isPliant(one) ? undefined : drawn(one, isWithWords(one, left) ? left : most));
	}
	const least = leastOfPliant[width < wideColumns ? 'narrow' : 'wide'];
	const shareOf = () => Math.floor((rows - rowCount(whole)) / Math.max(1, whole.filter((one) => !one).length));
	// Digits have few sizes: what they leave of their share is for the pictures.
	for (const [place, one] of shown.entries())
		if (one.kind === 'figure') whole[place] ??= drawn(one, Math.max(figureRows, shareOf()));
	const share = shareOf();
	const laid = shown.map((one, place) =>
		(whole[place] ?? drawn(one, Math.max(least, share))).map(({goesOn = true, ...row}, index) => ({
			...row,
			text: clipped(row.text, width),
			...(goesOn && (index > 0 || hasHeading(shown, place)) ? {goesOn} : {}),
		})),
	);
	const isLoose = rowCount(laid) < rows;
	return laid.flatMap((one, place) =>
		isLoose && isUnderPicture(shown, place) ? [{text: '', tone: 'plain'}, ...one] : one,
	);
}

/** Whether a line is the first, and a strong one, under a picture: it stands apart where there is room. */
const isUnderPicture = (shown: readonly Shown[], place: number): boolean => {
	const [before, one] = [shown[place - 1], shown[place]];
	return before !== undefined && before.kind !== 'line' && one?.kind === 'line' && one.tone === 'strong';
};
// A curve in fewer lines tells less than one on a page of its own.
const leastCurve = 8;
const leastHistory = 7;

/** Whether a picture keeps to the lines that are left under what is said before it: an arm that is nudged must be in sight. */
const isWithWords = ({kind}: Shown, left: number): boolean =>
	kind === 'gauged-arm' || (kind === 'curve' && left >= leastCurve) || (kind === 'history' && left >= leastHistory);

const rowCount = (drawn: readonly (readonly Row[] | undefined)[]): number =>
	drawn.reduce((sum, one) => sum + (one?.length ?? 0), 0);

const leastOfPliant = {narrow: 4, wide: 5};
/** Large digits are three lines. */
const figureRows = 3;

const isSpare = (one: Shown): boolean => one.kind === 'figure' && one.isSpare === true;

/** Lines that are left for a spare figure and the empty one under it, where pictures have all that they can fill. */
function spareRows(shown: readonly Shown[], rows: number, rowsFor: (one: Shown) => number): number {
	if (!shown.some(isSpare)) return 0;
	const others = shown.filter((one) => !isSpare(one));
	const wanted = others.map((one) => (isPliant(one) ? wholePliant : rowsFor(one)));
	return rows - wanted.reduce((sum, one) => sum + one, 1);
}

/** Two bands under their axis, and the friction with its own. */
const wholePliant = 8;

/** A picture that says what counts in a few lines too. */
const isPliant = ({kind}: Shown): boolean => pliantKinds.has(kind);
const pliantKinds: ReadonlySet<Shown['kind']> = new Set(['bands', 'clearance', 'deck', 'figure', 'friction', 'level']);

/** Whether the line before a picture or a table is its heading, which must not stand alone at the foot of a page. */
function hasHeading(shown: readonly Shown[], place: number): boolean {
	const before = shown[place - 1];
	return shown[place]?.kind !== 'line' && before?.kind === 'line' && before.tone === 'strong';
}

/** Ink cuts a text of many lines as one when a single line is too wide, so none may be. */
function clipped(text: string, width: number): string {
	// Letters of the keyboard are a cell each.
	if (text.length <= width && plainText.test(text)) return text;
	const key = `${width} ${text}`;
	const known = measured.get(key);
	if (known !== undefined) return known;
	if (measured.size >= mostMeasured) measured.clear();
	const cut = stringWidth(text) > width ? printable(text, width) : text;
	measured.set(key, cut);
	return cut;
}

const plainText = /^[ -~]*$/;
// From key to key nearly all lines stay as they are.
const measured = new Map<string, string>();
const mostMeasured = 500;
