import type {Verdict} from '../../results/figures-types.js';
import {element} from './element.js';

/** A shape for each verdict, so that none of them is told by its colour alone. */
const shapes: Readonly<Record<Verdict, readonly string[]>> = {
	good: [element('circle', {cx: 8, cy: 8, r: 7}), element('path', {d: 'M4.5 8.2 7 10.8 11.5 5.6', class: 'ink'})],
	usable: [element('path', {d: 'M8 1.2 15 14H1Z'}), element('path', {d: 'M8 6v3.6M8 11.4v1', class: 'ink'})],
	beyond: [element('path', {d: 'M1.5 1.5h13v13h-13z'}), element('path', {d: 'M5 5l6 6M11 5l-6 6', class: 'ink'})],
	undecided: [
		element('path', {d: 'M8 .6 15.4 8 8 15.4 .6 8Z'}),
		element('path', {d: 'M6 6.4a2 2 0 1 1 2.9 1.8c-.6.3-.9.7-.9 1.3M8 11.4v.8', class: 'ink'}),
	],
	'off-scale': [
		element('path', {d: 'M1 8h10M8.5 4.5 12 8l-3.5 3.5', class: 'ink dark'}),
		element('path', {d: 'M14.5 2v12', class: 'ink dark'}),
	],
};

/** A small mark beside a verdict's words, which say the same. */
export const markSvg = (verdict: Verdict): string =>
	element('svg', {class: 'mark', viewBox: '0 0 16 16', 'aria-hidden': 'true'}, ...shapes[verdict]);
