import {type Facts, factsOf} from '../../source/procedure/facts.js';
import type {AnswerValue} from '../../source/procedure/step-ids.js';

/** Facts made of plain values, in base units, with the usual limits. */
export const factsWith = (values: Readonly<Record<string, AnswerValue>> = {}): Facts =>
	factsOf({
		answers: Object.fromEntries(Object.entries(values).map(([id, value]) => [id, {value}])),
		limits: {pullGoodPct: 2, pullUsablePct: 4, bandGoodPct: 3, bandUsablePct: 6},
	});

/** Facts that write down which steps are looked at. */
export function watched(values: Readonly<Record<string, AnswerValue>> = {}): {facts: Facts; asked: Set<string>} {
	const asked = new Set<string>();
	const facts = new Proxy(factsWith(values), {
		get(target, key) {
			const member = Reflect.get(target, key);
			if (typeof member !== 'function' || key === 'rounds') return member;
			return (step: string, ...rest: unknown[]) => {
				asked.add(step);
				return member(step, ...rest);
			};
		},
	});
	return {facts, asked};
}
