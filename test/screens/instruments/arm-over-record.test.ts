import fc from 'fast-check';
import stringWidth from 'string-width';
import {describe, expect, it} from 'vitest';
import type {GaugedArm} from '../../../source/pages/shown-lines.js';
import {pivotPlaces} from '../../../source/procedure/geometry.js';
import {armOverRecord as armRows} from '../../../source/screens/instruments/arm-over-record.js';
import {expectToFit, inAscii, onScreen, textOf} from '../../helpers/instruments.js';
import {beginning, broken, words} from '../../helpers/said.js';

/** Invented, of ordinary size. */
const usual: GaugedArm = {
	effectiveLengthMm: 233,
	pivotDistanceMm: 215.4,
	pivotDirectionDeg: 45,
	stylusRadiusMm: 68,
	gaugeRadiusMm: 68,
	readingPct: 0,
	topPct: 20,
	stepPct: 0.5,
	isTurned: false,
	state: 'still for 3 s',
};
const armWith = (changes: Partial<GaugedArm>): GaugedArm => ({...usual, ...changes});

const anyArm: fc.Arbitrary<GaugedArm> = fc
	.record({
		pivotDistanceMm: fc.double({min: 80, max: 450, noNaN: true}),
		overhangMm: fc.double({min: -20, max: 30, noNaN: true}),
		pivotDirectionDeg: fc.double({min: 0, max: 360, noNaN: true}),
		stylusRadiusMm: fc.double({min: 30, max: 200, noNaN: true}),
		gaugeRadiusMm: fc.double({min: 50, max: 150, noNaN: true}),
		readingPct: fc.double({min: -40, max: 40, noNaN: true}),
		topPct: fc.constantFrom(3, 5, 8, 10, 12.5, 16, 20, 30, 50),
		stepPct: fc.constantFrom(0.05, 0.1, 0.25, 0.5, 1),
		isTurned: fc.boolean(),
		state: fc.constantFrom(
			'still for 3 s',
			'swings inward',
			'a sentence that is far too long for the line it stands in',
		),
	})
	.map(({overhangMm, ...rest}) => ({...rest, effectiveLengthMm: rest.pivotDistanceMm + overhangMm}));
/** With seven rows for the plan where there is room for one. */
const armOverRecord = (arm: GaugedArm, columns: number, unicode: boolean): string[] =>
	textOf(armRows(arm, {columns, rows: columns < 66 ? 12 : 11}, unicode ? onScreen : inAscii));
const anyWidth = fc.integer({min: 40, max: 100});

const marks = [
	[true, {spindle: '◉', pivot: '○', stylus: '●', gauge: '▲'}],
	[false, {spindle: 'o', pivot: 'P', stylus: '#', gauge: '^'}],
] as const;

type Place = {readonly x: number; readonly y: number};

const {gaugedArm} = words.faces;
const called = [gaugedArm.pivot, gaugedArm.spindle, gaugedArm.stylus, gaugedArm.gauge(usual)]
	.concat(gaugedArm.stylusOnGauge(usual))
	.map((name) => broken(beginning(name)).source);
/** What stands in words beside the plan. */
const inWords = new RegExp(` {3}(?:\\S| ) *(?:${called.join('|')}).*$|${broken(gaugedArm.front).source}.*$`);

/** Where a mark stands in the plan, in widths of a character; y to the back. The list beside it names the marks again. */
function placeOf(picture: readonly string[], mark: string): Place {
	const plan = picture.slice(0, 7).map((row) => row.replace(inWords, ''));
	const row = plan.findIndex((text) => text.includes(mark));
	// A character is about twice as high as wide.
	return row < 0 ? {x: Number.NaN, y: Number.NaN} : {x: plan[row]?.indexOf(mark) ?? 0, y: -2 * row};
}

const apart = (one: Place, other: Place): number => Math.hypot(one.x - other.x, one.y - other.y);

describe('The arm over the record', () => {
	it('stays within any room', () => {
		expectToFit(anyArm, armRows);
	});

	it('is never wider than its window, and has as many lines whatever the arm does', () => {
		fc.assert(
			fc.property(anyArm, anyWidth, fc.boolean(), (arm, width, unicode) => {
				const picture = armOverRecord(arm, width, unicode);
				for (const text of picture) expect(stringWidth(text)).toBeLessThanOrEqual(width);
				expect(picture).toHaveLength(width < 60 ? 5 : width < 66 ? 12 : 11);
			}),
			{numRuns: 500},
		);
	});

	it('holds only ASCII where the terminal has no more', () => {
		fc.assert(
			fc.property(anyArm, anyWidth, (arm, width) => {
				expect(armOverRecord(arm, width, false).join('')).toMatch(/^[ -~]*$/);
			}),
		);
	});
});

describe('The plan', () => {
	it.each(pivotPlaces.map(({id, degrees}) => [id, degrees] as const))(
		'shows a pivot that stands at the %s there, seen from the spindle',
		(_, pivotDirectionDeg) => {
			for (const [unicode, mark] of marks) {
				const picture = armOverRecord(armWith({pivotDirectionDeg}), 78, unicode);
				const [spindle, pivot] = [placeOf(picture, mark.spindle), placeOf(picture, mark.pivot)];
				const seenDeg = (Math.atan2(pivot.y - spindle.y, pivot.x - spindle.x) * 180) / Math.PI;
				// Half a character of some fourteen to the pivot, and its height counted as two widths, may turn it by 6°.
				expect(Math.abs(((seenDeg - pivotDirectionDeg + 540) % 360) - 180)).toBeLessThan(6);
			}
		},
	);

	it.each(pivotPlaces.map(({id, degrees}) => [id, degrees] as const))(
		'moves the stylus outward as its radius grows, with the pivot at the %s',
		(_, pivotDirectionDeg) => {
			for (const [unicode, mark] of marks) {
				const distances = [60, 100, 145].map((stylusRadiusMm) => {
					const picture = armOverRecord(armWith({pivotDirectionDeg, stylusRadiusMm}), 78, unicode);
					return apart(placeOf(picture, mark.stylus), placeOf(picture, mark.spindle));
				});
				expect(distances[1]).toBeGreaterThan(distances[0] ?? Number.NaN);
				expect(distances[2]).toBeGreaterThan(distances[1] ?? Number.NaN);
			}
		},
	);

	it('stays where it is while the arm moves', () => {
		for (const {degrees: pivotDirectionDeg} of pivotPlaces)
			for (const [unicode, mark] of marks) {
				const pictures = [60, 100, 145].map((stylusRadiusMm) =>
					armOverRecord(armWith({pivotDirectionDeg, stylusRadiusMm}), 78, unicode),
				);
				for (const fixed of [mark.spindle, mark.pivot])
					expect(new Set(pictures.map((picture) => JSON.stringify(placeOf(picture, fixed)))).size).toBe(1);
			}
	});

	it('marks the gauge by itself once the stylus has left it, and says where it stands', () => {
		for (const [unicode, mark] of marks) {
			const off = armOverRecord(armWith({stylusRadiusMm: 110}), 78, unicode);
			expect(off.join('\n')).toContain(`${mark.gauge} ${gaugedArm.gauge(usual)}`);
			expect(placeOf(off, mark.gauge)).toEqual(placeOf(armOverRecord(usual, 78, unicode), mark.stylus));
		}
	});

	it('shows one mark for both while the arm moves on its gauge, and then names no other', () => {
		const anyRadius = fc.double({min: 55, max: 145, noNaN: true});
		// The travel of an ordinary gauge (invented): four mm either way.
		const anyTravel = fc.double({min: -4, max: 4, noNaN: true});
		fc.assert(
			fc.property(anyRadius, anyTravel, fc.constantFrom(...pivotPlaces), (gaugeRadiusMm, travelMm, {degrees}) => {
				const stylusRadiusMm = gaugeRadiusMm + travelMm;
				const arm = armWith({pivotDirectionDeg: degrees, gaugeRadiusMm, stylusRadiusMm});
				expect(armOverRecord(arm, 78, true).join('\n')).not.toContain('▲');
			}),
		);
	});

	it('names a mark beside it only where it is drawn, and draws none without a name', () => {
		fc.assert(
			fc.property(anyArm, ({stylusRadiusMm, gaugeRadiusMm}) => {
				const picture = armOverRecord(armWith({stylusRadiusMm, gaugeRadiusMm}), 78, true).slice(0, 7).join('\n');
				expect([0, 2]).toContain(picture.split('▲').length - 1);
			}),
		);
	});
});

describe('The sentence under it', () => {
	it.each([
		[4.5, 0.5, '+4.5 %'],
		[-4.5, 0.5, '-4.5 %'],
		[3, 0.25, '+3.00 %'],
		[-0.1, 0.1, '-0.1 %'],
		[7, 1, '+7 %'],
		[0, 0.5, '0.0 %'],
		[-0.01, 0.5, '0.0 %'],
	])('says the reading %d with step %d as %s, with its state', (readingPct, stepPct, said) => {
		const arm = armWith({readingPct, stepPct});
		const shows = gaugedArm.shows({readingPct: 7, stepPct: 1}).replace('+7 %', said);
		expect(armOverRecord(arm, 66, true).at(-1)).toBe(`${shows} · still for 3 s`);
		expect(armOverRecord(arm, 66, false).at(-1)).toBe(`${shows} - still for 3 s`);
	});

	it('gives the state a line of its own in a narrow window, where it would be cut, before all that may fall to the next page', () => {
		const arm = armWith({readingPct: 4.5, stepPct: 0.5, state: 'it let go and went back; still for 4 s'});
		expect(armOverRecord(arm, 40, true).slice(0, 2)).toEqual([
			gaugedArm.shows({readingPct: 4.5, stepPct: 0.5}),
			arm.state,
		]);
	});
});
