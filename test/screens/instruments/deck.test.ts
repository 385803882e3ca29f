import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import type {DeckTouch, Foot, Touch, TouchedPart} from '../../../source/pages/instruments/deck.js';
import {pivotPlaces} from '../../../source/procedure/geometry.js';
import {deckPicture} from '../../../source/screens/instruments/deck-picture.js';
import {cellsOf, expectToFit, inAscii, onScreen, textOf, usualRooms} from '../../helpers/instruments.js';
import {broken, words} from '../../helpers/said.js';

const said = words.instruments.deck;
const [wide = {columns: 76, rows: 11}] = usualRooms;

/** Invented, of ordinary size. */
const deckWith = (touch: Touch, pivotDirectionDeg = 45): DeckTouch => ({
	kind: 'deck',
	effectiveLengthMm: 233,
	pivotDistanceMm: 215.4,
	pivotDirectionDeg,
	touch,
	caption: 'In words.',
});

const parts: readonly TouchedPart[] = ['bias', 'lifter', 'rest', 'counterweight', 'pivot', 'leads', 'head'];
const feet: readonly Foot[] = ['front-left', 'front-right', 'back-left', 'back-right'];
const radiusMm = fc.double({min: 55, max: 145, noNaN: true});
const anyTouch: fc.Arbitrary<Touch> = fc.oneof(
	fc.record({kind: fc.constant('part' as const), part: fc.constantFrom(...parts)}),
	fc.record({kind: fc.constant('gauge' as const), radiusMm}),
	fc.record({
		kind: fc.constant('nudge' as const),
		radiusMm,
		way: fc.constantFrom('outward' as const, 'inward' as const),
	}),
	fc.record({
		kind: fc.constant('feet' as const),
		feet: fc.uniqueArray(
			fc.record({foot: fc.constantFrom(...feet), way: fc.constantFrom('up' as const, 'down' as const)}),
			{minLength: 1, maxLength: 4, selector: ({foot}) => foot},
		),
	}),
);
const anyDeck = fc
	.record({
		effectiveLengthMm: fc.double({min: 180, max: 350, noNaN: true}),
		overhangMm: fc.double({min: -20, max: 25, noNaN: true}),
		pivotDirectionDeg: fc.constantFrom(...pivotPlaces.map(({degrees}) => degrees)),
		touch: anyTouch,
	})
	.map(({overhangMm, ...rest}) => ({
		...deckWith(rest.touch),
		...rest,
		pivotDistanceMm: rest.effectiveLengthMm - overhangMm,
	}));

/** Cells of the plan, without the list beside it. */
const inPlan = (rows: ReturnType<typeof deckPicture>, marks: string) => {
	const all = [...marks].flatMap((mark) => cellsOf(rows, mark));
	// The list begins after three blank cells behind the plan: its signs stand all in one column.
	const listAt = Math.max(...[...'●○◉'].flatMap((mark) => cellsOf(rows, mark).map(({column}) => column)));
	return all.filter(({column}) => column < listAt);
};
const apart = (one: {row: number; column: number} | undefined, other: {row: number; column: number} | undefined) =>
	one && other ? Math.hypot(one.column - other.column, 2 * (one.row - other.row)) : Number.NaN;

describe('The deck with the one place to touch', () => {
	it('stays within any room', () => {
		// Where there is no room to draw it, the task says it alone.
		expectToFit(anyDeck, deckPicture, (_deck, room) => room.columns >= 60 && room.rows >= 7);
	});

	it('says what to touch in every usual room, in bold', () => {
		for (const room of usualRooms)
			for (const look of [onScreen, inAscii])
				for (const part of parts) {
					const rows = deckPicture(deckWith({kind: 'part', part}), room, look);
					const row = rows.find(({text}) => broken(said.parts[part]).test(text));
					expect(row?.tone === 'strong' || row?.spans?.some(({tone}) => tone === 'strong')).toBe(true);
				}
	});

	it.each(pivotPlaces.map(({degrees}) => degrees))(
		'points from the head away from the spindle for outward and to it for inward, pivot at %d degrees',
		(degrees) => {
			for (const way of ['outward', 'inward'] as const) {
				const rows = deckPicture(deckWith({kind: 'nudge', radiusMm: 110, way}, degrees), wide, onScreen);
				const [[spindle], [head], arrows] = [inPlan(rows, '◉'), inPlan(rows, '●'), inPlan(rows, '→↗↑↖←↙↓↘')];
				expect(arrows.length).toBeGreaterThan(0);
				for (const arrow of arrows)
					expect(Math.sign(apart(arrow, spindle) - apart(head, spindle))).toBe(way === 'outward' ? 1 : -1);
			}
		},
	);

	it('marks the gauge farther out where its radius is larger, and says the radius', () => {
		const [near, far] = [68, 136].map((at) => {
			const rows = deckPicture(deckWith({kind: 'gauge', radiusMm: at}), wide, onScreen);
			expect(textOf(rows).join('\n')).toContain(said.gauge({radiusMm: at}));
			return apart(inPlan(rows, '▲')[0], inPlan(rows, '◉')[0]);
		});
		expect(far).toBeGreaterThan(near ?? Number.NaN);
	});

	it('has the feet in the corners, those to turn with the way they go', () => {
		const rows = deckPicture(
			deckWith({
				kind: 'feet',
				feet: [
					{foot: 'back-left', way: 'down'},
					{foot: 'front-right', way: 'up'},
				],
			}),
			wide,
			onScreen,
		);
		const [[down], [up], idle] = [inPlan(rows, '▼'), inPlan(rows, '▲'), inPlan(rows, '□')];
		expect(down?.row).toBeLessThan(up?.row ?? Number.NaN);
		expect(down?.column).toBeLessThan(up?.column ?? Number.NaN);
		expect(idle.map(({row, column}) => [row, column])).toEqual(
			expect.arrayContaining([
				[down?.row, up?.column],
				[up?.row, down?.column],
			]),
		);
		const text = textOf(rows).join('\n');
		expect(text).toContain(said.foot({foot: 'back-left', way: 'down'}));
		expect(text).toContain(said.foot({foot: 'front-right', way: 'up'}));
	});

	it('names no mark that is not drawn', () => {
		for (const part of parts) {
			const rows = deckPicture(deckWith({kind: 'part', part}), wide, onScreen);
			for (const mark of '●○◉◆') expect([0, 2]).toContain(cellsOf(rows, mark).length);
		}
	});
});
