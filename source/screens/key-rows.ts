import type {View} from '../pages/view.js';
import {words} from '../words/index.js';
import {footRows, type Row} from './body.js';
import type {Look} from './look.js';

/** What the keys do; those of the number pad too where they take no line more. */
export function keyRows(view: View, isWhy: boolean, width: number, look: Look): Row[] {
	const rows = footRows(hintsFor(view, isWhy, false), width, look);
	const withPad = footRows(hintsFor(view, isWhy, true), width, look);
	return withPad.length > rows.length ? rows : withPad;
}

function hintsFor({prompt, unit, long}: View, isWhy: boolean, isPadNamed: boolean): readonly string[] {
	const {hints, escapes} = words.faces;
	if (isWhy) return [hints.close, hints.leave];
	const common = [
		...(isPadNamed ? [hints.backByPad, hints.whyByPad] : [escapes.back, hints.why]),
		hints.steps,
		hints.leave,
	];
	switch (prompt.kind) {
		case 'field':
			if (unit === '' || !prompt.settle) return [hints.accept, ...common];
			return prompt.initial === ''
				? [hints.settleFirst, hints.acceptReading, ...common]
				: [hints.accept, hints.settle, ...common];
		case 'yes-no':
			return [hints.yes, hints.notYet, ...common];
		case 'still':
			return [hints.still, ...common];
		case 'side':
			return [hints.side, ...common];
		case 'choice':
			if (prompt.several) return [hints.several, ...common];
			return long ? [hints.choose, hints.pages, ...common] : [hints.choose, ...common];
		case 'none':
			return [hints.leave];
	}
}
