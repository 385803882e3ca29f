import {biasRows} from './bias/rows.js';
import {closingRows} from './closing-rows.js';
import {diagnosisFacts} from './diagnosis-facts.js';
import type {Document, PlaceName} from './document-schema.js';
import type {Figures} from './figures-types.js';
import type {FindingRow, Who} from './finding-row.js';
import {frictionRows} from './friction-rows.js';
import {levelRows} from './level-rows.js';
import {pullRows} from './pull-rows.js';
import {severeRows} from './severe-rows.js';

/** Every finding, in order of weight. A row added here is found, worded and printed without further edits. */
export const findingRows = [
	...severeRows,
	...levelRows,
	...pullRows,
	...frictionRows,
	...biasRows,
	...closingRows,
] as const;

export type FindingCode = (typeof findingRows)[number]['code'];

export type Finding = {
	readonly code: FindingCode;
	/** Places where it holds. */
	readonly places: readonly PlaceName[];
	readonly who: Who;
	/** What was found, with value, uncertainty and limit. */
	readonly found: string;
	/** The likely cause; empty where the figures name none. */
	readonly likely: string;
	readonly next: string;
	/** All of it in two plain sentences. */
	readonly text: string;
};

const capital = (sentence: string): string => `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}.`;

/** What the figures of a series mean, in order of weight; several findings may hold at once. */
export const findingsOf = (document: Document, figures: Figures): Finding[] => {
	const facts = diagnosisFacts(document, figures);
	return findingRows.flatMap((row: FindingRow & {readonly code: FindingCode}) => {
		const places = row.places(facts);
		if (places.length === 0) return [];
		const {code, who, likely} = row;
		const found = row.say(facts);
		const next = row.next(facts);
		const advice = likely === '' ? next : `likely ${likely}; ${next}`;
		return [{code, places, who, found: capital(found), likely, next, text: `${capital(found)} ${capital(advice)}`}];
	});
};
