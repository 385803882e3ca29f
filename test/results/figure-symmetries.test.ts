import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import type {Document} from '../../source/results/document.js';
import {figuresOf} from '../../source/results/figures.js';
import {documentWith} from './example.js';

describe('symmetries', () => {
	const band = fc.record({
		pull: fc.double({min: -6, max: 6, noNaN: true}),
		band: fc.double({min: 0.1, max: 8, noNaN: true}),
		rounds: fc.integer({min: 1, max: 5}),
	});

	it('mirror: limits swapped and negated mirror the pull and leave all judgements', () => {
		fc.assert(
			fc.property(band, band, (inner, outer) => {
				const one = figuresOf(documentWith(inner, outer));
				const other = figuresOf(documentWith({...inner, pull: -inner.pull}, {...outer, pull: -outer.pull}));
				expect(other.verdict).toBe(one.verdict);
				for (const [index, radius] of one.probe.entries()) {
					expect(other.probe[index]?.pullPct).toBeCloseTo(-(radius.pullPct ?? 0), 9);
					expect(other.probe[index]?.pullUncertaintyPct).toBeCloseTo(radius.pullUncertaintyPct ?? 0, 9);
					expect(other.probe[index]?.bandPct).toBeCloseTo(radius.bandPct ?? 0, 9);
					expect(other.probe[index]?.pullVerdict).toBe(radius.pullVerdict);
				}
			}),
		);
	});

	it('units: the same forces read in percent, mN and gf give the same figures', () => {
		// 20 mN carried and played: 1 % is 0.2 mN, and 0.2/9.80665 gf by the definition of the gram-force.
		const readIn = (unit: Document['gauge']['unit'], perPercent: number, document: Document): Document => ({
			...document,
			gauge: {unit, step: 0.1 * perPercent, topOfScale: 20 * perPercent, nudge: 0.2 * perPercent},
			probe: document.probe.map((radius) => ({
				...radius,
				rounds: radius.rounds.map(({innerLimit, outerLimit}) => ({
					innerLimit: innerLimit * perPercent,
					outerLimit: outerLimit * perPercent,
				})),
			})),
		});
		fc.assert(
			fc.property(band, band, (inner, outer) => {
				const document = documentWith(inner, outer);
				const percent = figuresOf(readIn('percent', 1, document)).probe;
				for (const other of [
					figuresOf(readIn('mN', 0.2, document)).probe,
					figuresOf(readIn('gf', 0.2 / 9.80665, document)).probe,
				]) {
					for (const [index, radius] of percent.entries()) {
						expect(other[index]?.pullPct).toBeCloseTo(radius.pullPct ?? 0, 9);
						expect(other[index]?.bandUncertaintyPct).toBeCloseTo(radius.bandUncertaintyPct ?? 0, 9);
					}
				}
			}),
		);
	});
});
