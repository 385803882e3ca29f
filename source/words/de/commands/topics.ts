import {glossary} from '../glossary.js';
import {atTheBench} from './help/bench.js';
import {onFigures} from './help/figures.js';
import {onFiles} from './help/files.js';
import {practising} from './help/practising.js';
import {years} from './help/years.js';
import {scripts} from './scripts.js';

/** A paragraph; or rows of a term and what it means; or lines to be typed as they stand. */
export type HelpBlock =
	| string
	| {readonly rows: readonly (readonly [term: string, meaning: string])[]}
	| {readonly lines: readonly string[]};

export type Topic = {readonly name: string; readonly title: string; readonly blocks: readonly HelpBlock[]};

/** What is explained by `help TOPIC` and in the manual page. */
export const topics: readonly Topic[] = [
	...atTheBench,
	...onFigures,
	years,
	...onFiles,
	scripts,
	practising,
	{
		name: 'words',
		title: 'was die Wörter des Programms bedeuten',
		blocks: [
			'Ein Wort für eine Sache, auf jedem Bildschirm.',
			{rows: glossary.map(({term, meaning}) => [term, meaning] as const)},
		],
	},
];
