import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import type {BandRow, ShownAs} from '../../../source/pages/shown-lines.js';
import {bandsPicture} from '../../../source/screens/instruments/bands-picture.js';
import {frictionPicture} from '../../../source/screens/instruments/friction-picture.js';
import {cellsOf, expectToFit, inAscii, onScreen, textOf, usualRooms} from '../../helpers/instruments.js';
import {words} from '../../helpers/said.js';

type Bands = ShownAs<'bands'>;

/** Invented figures. */
const verdict: Bands = {
	kind: 'bands',
	goodPct: 2,
	usablePct: 4,
	caption: 'In words.',
	rows: [
		{label: 'inner 68 mm', lowPct: 2.5, highPct: 8.3, pullPct: 5.4, figure: {text: 'pull 5.4 ± 0.6', tone: 'bad'}},
		{label: 'outer 136 mm', lowPct: 1.3, highPct: 5.5, pullPct: 3.4, figure: {text: 'pull 3.4 ± 0.6', tone: 'warn'}},
	],
	friction: {
		goodPct: 3,
		usablePct: 6,
		rows: [
			{label: 'inner', bandPct: 5.9, figure: {text: '5.9 ± 0.4', tone: 'warn'}},
			{label: 'outer', bandPct: 4.2, figure: {text: '4.2 ± 0.4', tone: 'good'}},
		],
	},
};

const size = (max: number) => fc.double({min: 0, max, noNaN: true});
const judged = fc.option(
	fc.record({
		text: fc.constantFrom('pull 5.4 ± 0.6', '-12.4 ± 1.6'),
		tone: fc.constantFrom('good' as const, 'warn' as const, 'bad' as const),
	}),
	{nil: undefined},
);
const label = fc.constantFrom('1', '2 turned', 'inner 68 mm', 'outer 136 mm');
const bandRow: fc.Arbitrary<BandRow> = fc
	.record({
		middle: fc.double({min: -30, max: 30, noNaN: true}),
		half: size(10),
		earlier: fc.boolean(),
		figure: judged,
		label,
	})
	.map(({middle, half, ...rest}) => ({...rest, lowPct: middle - half, highPct: middle + half, pullPct: middle}));
const friction = fc
	.record({goodPct: fc.double({min: 0.5, max: 5, noNaN: true}), more: size(5)})
	.chain(({goodPct, more}) =>
		fc.record({
			goodPct: fc.constant(goodPct),
			usablePct: fc.constant(goodPct + more),
			rows: fc.array(fc.record({label, bandPct: size(25), figure: judged}), {minLength: 1, maxLength: 3}),
		}),
	);
const anyBands: fc.Arbitrary<Bands> = fc
	.record({goodPct: fc.double({min: 0.5, max: 6, noNaN: true}), more: size(6)})
	.chain(({goodPct, more}) =>
		fc.record({
			kind: fc.constant('bands' as const),
			goodPct: fc.constant(goodPct),
			usablePct: fc.constant(goodPct + more),
			rows: fc.array(bandRow, {minLength: 1, maxLength: 5}),
			begun: fc.option(fc.record({label, lowPct: fc.double({min: -30, max: 30, noNaN: true})}), {nil: undefined}),
			friction: fc.option(friction, {nil: undefined}),
			caption: fc.constant('In words.'),
		}),
	);

/** The column of a value, by where the ends of the axis have their numbers. */
function columnBy(rows: readonly string[], reach: number): (pct: number) => number {
	const numbers = rows.find((row) => row.includes(`-${reach}`) && row.includes(`+${reach}`)) ?? '';
	const low = numbers.indexOf(`-${reach}`);
	const high = numbers.indexOf(`+${reach}`) + String(reach).length;
	return (pct) => Math.round(low + ((pct + reach) / (2 * reach)) * (high - low));
}

describe('Hold bands', () => {
	it('stay within any room', () => {
		expectToFit(anyBands, bandsPicture);
	});

	it('lie where their figures are on the axis, in every usual room', () => {
		for (const room of usualRooms.filter(({columns}) => columns >= 60)) {
			const rows = bandsPicture(verdict, room, onScreen);
			const at = columnBy(textOf(rows), 10);
			const [inner, outer] = cellsOf(rows, '●').filter(({column}) => column > 5);
			expect([inner?.column, outer?.column]).toEqual([at(5.4), at(3.4)]);
			const ends = (mark: string) => cellsOf(rows, mark).filter((one) => one.row === inner?.row)[0]?.column;
			expect([ends('├'), ends('┤')]).toEqual([at(2.5), at(8.3)]);
		}
	});

	it('have both limits of the pull on both sides as lines with name and number, wherever there is some room', () => {
		const {good, usable} = words.instruments.bands;
		fc.assert(
			fc.property(
				fc.integer({min: 60, max: 120}),
				fc.integer({min: 5, max: 30}),
				fc.constantFrom(onScreen, inAscii),
				(columns, rows, look) => {
					const text = textOf(bandsPicture(verdict, {columns, rows}, look)).join('\n');
					for (const pct of [-4, 4]) expect(text).toContain(usable({pct}));
					for (const pct of [-2, 2]) expect(text).toContain(good({pct}));
				},
			),
		);
	});

	it('have the line of what is usable begin above that of what is good', () => {
		// Where every name has room between zero and the outer line.
		const rows = bandsPicture(verdict, {columns: 120, rows: 24}, onScreen);
		const at = columnBy(textOf(rows), 10);
		const first = (pct: number) => textOf(rows).findIndex((row) => row[at(pct)] === '╎');
		expect(first(-4)).toBeLessThan(first(-2));
		expect(first(4)).toBeLessThan(first(-2));
	});

	it('say at the end of a row how it is judged, with its figure', () => {
		for (const room of usualRooms) {
			const text = textOf(bandsPicture(verdict, room, onScreen)).join('\n');
			expect(text).toMatch(/✗ pull 5\.4 ± 0\.6/);
			expect(text).toMatch(/▲ pull 3\.4 ± 0\.6/);
			expect(text).toMatch(/▲ 5\.9 ± 0\.4/);
			expect(text).toMatch(/✓ 4\.2 ± 0\.4/);
		}
	});

	it('of an earlier check have other marks, on a screen and in ASCII', () => {
		const rows = verdict.rows.map((row, index) => (index === 1 ? {...row, earlier: true} : row));
		for (const [look, now, before] of [
			[onScreen, /├─+●─+┤/, /├╌+○╌+┤/],
			[inAscii, /\[-+#-+\]/, /\(\.+o\.+\)/],
		] as const) {
			const text = textOf(bandsPicture({...verdict, rows}, {columns: 76, rows: 11}, look)).join('\n');
			expect(text).toMatch(now);
			expect(text).toMatch(before);
		}
	});

	it('show a round that has begun, open toward the rim', () => {
		const begun = {label: '3', lowPct: 2.8};
		const rows = bandsPicture({...verdict, friction: undefined, begun}, {columns: 76, rows: 11}, onScreen);
		const open = textOf(rows).find((row) => row.startsWith('3')) ?? '';
		expect(open).toMatch(/├─+…/);
		expect(open.indexOf('├')).toBe(columnBy(textOf(rows), 10)(2.8));
	});

	it('give up an earlier band before one of today, and the first rounds before the last', () => {
		const rounds = [1, 2, 3, 4, 5].map((round) => ({...verdict.rows[0], label: `round ${round}`})) as BandRow[];
		const earlier = {...verdict.rows[0], label: 'before', earlier: true} as BandRow;
		const text = textOf(bandsPicture({...verdict, rows: [...rounds, earlier]}, {columns: 76, rows: 6}, onScreen));
		expect(text.filter((row) => /round|before/.test(row)).map((row) => row.slice(0, 7))).toEqual(
			[2, 3, 4, 5].map((round) => `round ${round}`),
		);
	});
});

describe('Friction', () => {
	it('stays within any room', () => {
		expectToFit(friction, frictionPicture);
	});

	it('is a bar from zero to the width of the band, against named limits of its own', () => {
		const [first] = [verdict.friction].filter((one) => one !== undefined);
		if (!first) throw new Error('No friction.');
		const rows = textOf(frictionPicture(first, {columns: 76, rows: 3}, onScreen));
		const [head = '', inner = '', outer = ''] = rows;
		expect(head).toContain(words.instruments.friction.good({pct: 3}));
		const usableAt = head.indexOf(words.instruments.friction.usable({pct: 6}));
		const from = inner.indexOf('├');
		const scale = (usableAt - from) / 6;
		expect(Math.abs(inner.indexOf('┤') - from - 5.9 * scale)).toBeLessThanOrEqual(1);
		expect(Math.abs(outer.indexOf('┤') - from - 4.2 * scale)).toBeLessThanOrEqual(1);
		expect(Math.abs(inner.indexOf('┼') - from - 3 * scale)).toBeLessThanOrEqual(1);
	});
});
