import {type Facts, factsOf} from '../../source/procedure/facts.js';
import type {AnswerValue} from '../../source/procedure/step.js';

/** Facts made of plain values, in base units, with the usual limits. */
export const factsWith = (values: Readonly<Record<string, AnswerValue>> = {}): Facts =>
	factsOf({
		answers: Object.fromEntries(Object.entries(values).map(([id, value]) => [id, {value}])),
		limits: {pullGoodPct: 2, pullUsablePct: 4, bandGoodPct: 3, bandUsablePct: 6},
	});
