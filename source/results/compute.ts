import {type Finding, findingsOf} from './diagnose.js';
import type {Document} from './document-schema.js';
import {type Figures, figuresOf} from './figures.js';

/** The figures of a document, and what they mean. */
export type ComputeOutput = Figures & {readonly findings: readonly Finding[]};

/** Everything that a document says: figures and findings, keys in the order of the JSON document (`armdrift compute --schema`). */
export const compute = (document: Document): ComputeOutput => {
	const figures = figuresOf(document);
	return {...figures, findings: findingsOf(document, figures)};
};
