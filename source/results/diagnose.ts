import {biasRows} from './bias/rows.js';
import {closingRows} from './closing-rows.js';
import {diagnosisFacts} from './diagnosis-facts.js';
import type {Document, PlaceName} from './document-schema.js';
import type {Figures} from './figures-types.js';
import type {Who} from './finding-row.js';
import {frictionRows} from './friction-rows.js';
import {levelRows} from './level-rows.js';
import {pullRows} from './pull-rows.js';
import {severeRows} from './severe-rows.js';

/** Every finding, in order of weight. A row added here is found and printed; the compiler asks for its words. */
export const findingRows = [
	...severeRows,
	...levelRows,
	...pullRows,
	...frictionRows,
	...biasRows,
	...closingRows,
] as const;

type Row = (typeof findingRows)[number];
export type FindingCode = Row['code'];

/** The values that tell of each finding, in base units. */
export type FindingValues = {
	readonly [Code in FindingCode]: NonNullable<ReturnType<Extract<Row, {code: Code}>['find']>>['values'];
};

/** A finding of a series; `words/` has what a person reads of it. */
export type Finding = {
	readonly [Code in FindingCode]: {
		readonly code: Code;
		/** Places where it holds. */
		readonly places: readonly PlaceName[];
		readonly who: Who;
		readonly values: FindingValues[Code];
	};
}[FindingCode];

/** What the figures of a series mean, in order of weight; several findings may hold at once. */
export const findingsOf = (document: Document, figures: Figures): Finding[] => {
	const facts = diagnosisFacts(document, figures);
	return findingRows.flatMap(({code, who, find}) => {
		const found = find(facts);
		// Values come from the row that the code names; the compiler cannot follow that through a list.
		return found && found.places.length > 0 ? [{code, places: found.places, who, values: found.values} as Finding] : [];
	});
};

/** Whether findings name something to be cured before the bias is set; not where bias was seen to carry the pull. */
export function namesCure(findings: readonly {readonly code: FindingCode}[]): boolean {
	const biases = findingRows.filter(({code}) => findings.some((one) => one.code === code)).map(({bias}) => bias);
	return biases.includes('after-cure') && !biases.includes('carries');
}
