import {type Finding, findingsOf} from './diagnose.js';
import type {Document} from './document-schema.js';
import {type Figures, figuresOf} from './figures.js';

/** What the compute command prints: the figures of a document, and what they mean. */
export type ComputeOutput = Figures & {
	readonly findings: readonly Pick<Finding, 'code' | 'places' | 'who' | 'text'>[];
};

/** Everything that a document says: figures and findings, keys in the order of the JSON document (`armdrift compute --schema`). */
export const compute = (document: Document): ComputeOutput => {
	const figures = figuresOf(document);
	const findings = findingsOf(document, figures).map(({code, places, who, text}) => ({code, places, who, text}));
	return {...figures, findings};
};
