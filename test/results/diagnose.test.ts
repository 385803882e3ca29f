import {describe, expect, it} from 'vitest';
import {type Finding, type FindingCode, findingRows, findingsOf} from '../../source/results/diagnose.js';
import type {Document} from '../../source/results/document.js';
import {figuresOf} from '../../source/results/figures.js';
import {worded} from '../../source/words/finding-text.js';
import {documentWith, example} from './example.js';

const found = (document: Document) => findingsOf(document, figuresOf(document)).map(worded);
const dataOf = <Code extends FindingCode>(code: Code, document: Document) =>
	findingsOf(document, figuresOf(document)).find((one): one is Extract<Finding, {code: Code}> => one.code === code);
const codes = (document: Document) => found(document).map(({code}) => code);

const level = (leftRightDeg: number[]) => ({stepDeg: 0.05, leftRightDeg, frontBackDeg: [0, 0]});
const quiet = documentWith({pull: 1, band: 1}, {pull: 1, band: 1});

/** The shares that a tilt across, of so many degrees, makes of the pull at both radii. */
const sharesOf = (tiltDeg: number) => {
	const document = documentWith({pull: 0, band: 1}, {pull: 0, band: 1}, {level: level([tiltDeg, -tiltDeg])});
	const [inner = 0, outer = 0] = figuresOf(document).probe.map(({tiltSharePct}) => tiltSharePct ?? 0);
	return {inner, outer};
};
/** A tilt across that makes so much of the pull at the inner radius: the share goes with the tangent of the tilt. */
const tiltFor = (innerSharePct: number): number =>
	(Math.atan((innerSharePct / sharesOf(45 / 1000).inner) * Math.tan((Math.PI / 4) * 0.001)) * 180) / Math.PI;
/** A deck with that tilt, the pulls as they are read. */
const tilted = (innerSharePct: number, inner: number, outer: number, more: Partial<Document> = {}) => {
	const tiltDeg = tiltFor(innerSharePct);
	return documentWith({pull: inner, band: 1}, {pull: outer, band: 1}, {level: level([tiltDeg, -tiltDeg]), ...more});
};

/** The level read once only: its share of the pull is uncertain by 1.96·100·tan(√(0.05²/12 + 0.2²)°) = 0.69 %. */
const readOnce = (innerSharePct: number, pull: number) =>
	documentWith(
		{pull, band: 1},
		{pull: 0.3, band: 1},
		{level: level([tiltFor(innerSharePct)]), limits: {pullGoodPct: 0.5}},
	);

/** A quiet arm whose closing round lies so much off. */
const closedWith = (movedPct: number): Document => ({
	...quiet,
	probe: quiet.probe.map((radius) =>
		radius.place === 'inner'
			? {
					...radius,
					rounds: [...radius.rounds, {innerLimit: 0.5 + movedPct, outerLimit: 1.5 + movedPct, closing: true}],
				}
			: radius,
	),
});

const withOther = (pull: number, band: number): Document => ({
	...quiet,
	probe: [
		...quiet.probe,
		{place: 'other', radiusMm: 98, rounds: [{innerLimit: pull - band / 2, outerLimit: pull + band / 2}]},
	],
});

type BiasReading = {radiusMm: number; pull: number; band: number};

/** A document with readings with the bias on; skating wants 11.8 % at 68 mm and 12.5 % at 136 mm of this arm. */
const withBias = (document: Document, ...readings: BiasReading[]): Document => ({
	...document,
	bias: {
		device: 'weighted-lever',
		readings: readings.map(({radiusMm, pull, band}) => ({
			radiusMm,
			rounds: [{innerLimit: pull - band / 2, outerLimit: pull + band / 2}],
		})),
	},
});
const at = (radiusMm: number, pull: number, band = 1): BiasReading => ({radiusMm, pull, band});
const pulled = documentWith({pull: 5, band: 1}, {pull: 5, band: 1});

/** Each finding: a document in which it fires, with its places, and the nearest one in which it does not. */
const cases: Record<FindingCode, {fires: Document; places: string[]; silent: Document}> = {
	'off-scale': {fires: withOther(16, 8), places: ['other'], silent: withOther(16, 7.9)},
	// Rounds that are all alike: half a percent is no change yet.
	moved: {fires: closedWith(0.51), places: ['inner'], silent: closedWith(0.5)},
	'tilt-explains': {fires: tilted(2.5, 4, 4), places: ['inner', 'outer'], silent: tilted(2.5, 4, 5.5)},
	// A quarter of the good pull limit is allowed: 0.5 %.
	'not-level': {fires: tilted(0.51, 1, 1), places: ['inner', 'outer'], silent: tilted(0.4, 1, 1)},
	'pull-and-friction': {
		fires: documentWith({pull: 5, band: 7}, {pull: 5, band: 1}),
		places: ['inner'],
		silent: documentWith({pull: 5, band: 1}, {pull: 1, band: 7}),
	},
	'constant-pull': {
		fires: documentWith({pull: 3, band: 1}, {pull: 3.99, band: 1}),
		places: ['inner', 'outer'],
		silent: documentWith({pull: 3, band: 1}, {pull: 4, band: 1}),
	},
	'spring-pull': {
		fires: documentWith({pull: 3, band: 1}, {pull: 2, band: 1}),
		places: ['inner', 'outer'],
		silent: documentWith({pull: 3, band: 1}, {pull: 2.01, band: 1}),
	},
	'runaway-pull': {
		fires: documentWith({pull: 2, band: 1}, {pull: 3, band: 1}),
		places: ['inner', 'outer'],
		silent: documentWith({pull: 3, band: 1}, {pull: 2, band: 1}),
	},
	friction: {
		fires: documentWith({pull: 0, band: 7}, {pull: 0, band: 7}),
		places: ['inner', 'outer'],
		silent: documentWith({pull: 0, band: 7}, {pull: 0, band: 5}),
	},
	'friction-local': {
		fires: documentWith({pull: 0, band: 3.5}, {pull: 0, band: 2}),
		places: ['inner', 'outer'],
		silent: documentWith({pull: 0, band: 3.49}, {pull: 0, band: 2}),
	},
	// Bands that differ by half the good limit, 1.5 %, are a pattern.
	'no-pattern': {
		fires: documentWith({pull: 1, band: 7}, {pull: 1, band: 5.6}),
		places: ['inner'],
		silent: documentWith({pull: 1, band: 7}, {pull: 1, band: 5.5}),
	},
	'bias-idle': {
		fires: withBias(quiet, at(136, 1.49), at(68, 0.51)),
		places: ['outer', 'inner'],
		silent: withBias(quiet, at(136, 1.5), at(68, 1)),
	},
	'bias-off-scale': {
		fires: withBias(quiet, at(136, 19.5), at(68, 12)),
		places: ['outer'],
		silent: withBias(quiet, at(136, 19.4), at(68, 12)),
	},
	'bias-rubs': {
		fires: withBias(quiet, at(136, 12, 2.5), at(68, 12)),
		places: ['outer'],
		silent: withBias(quiet, at(136, 12, 2.49), at(68, 12)),
	},
	'bias-uneven': {
		// Bias 11 and 6.5 %: the factor that balances 60 mm against 136 mm, 1.304, leaves 2.9 % out at 136 and 2.4 % in at
		// 68 mm; with 7.9 % it is 1.207, and 1.8 % and 1.3 % are left.
		fires: withBias(quiet, at(136, 12), at(68, 7.5)),
		places: ['inner', 'outer'],
		silent: withBias(quiet, at(136, 12), at(68, 8.9)),
	},
	'playable-with-bias': {
		fires: withBias(pulled, at(136, 11), at(68, 11)),
		places: ['inner', 'outer'],
		silent: withBias(pulled, at(136, 11), at(68, 7)),
	},
	undecided: {
		fires: documentWith({pull: 1, band: 1}, {pull: 2, band: 1}),
		places: ['outer'],
		silent: documentWith({pull: 1, band: 1}, {pull: 2.5, band: 1}),
	},
	sound: {
		fires: documentWith({pull: 1.6, band: 5}, {pull: 2.5, band: 5}),
		places: ['inner', 'outer'],
		silent: documentWith({pull: 4, band: 5}, {pull: 3, band: 5}),
	},
};

describe('the findings', () => {
	it.each(Object.entries(cases))('%s fires where it should and not beside it', (code, {fires, places, silent}) => {
		expect(found(fires).find((finding) => finding.code === code)?.places).toEqual(places);
		expect(codes(silent)).not.toContain(code);
	});

	it('have a case for every row', () => {
		expect(Object.keys(cases)).toEqual(findingRows.map(({code}) => code));
	});

	it('of the worked example stand in order of weight', () => {
		expect(found(example()).map(({code, places, who}) => ({code, places, who}))).toEqual([
			{code: 'spring-pull', places: ['inner', 'outer'], who: 'technician'},
			{code: 'friction-local', places: ['inner', 'outer'], who: 'technician'},
			{code: 'playable-with-bias', places: ['inner', 'outer'], who: 'technician'},
			{code: 'undecided', places: ['inner'], who: 'technician'},
		]);
	});

	const all = Object.values(cases).flatMap(({fires}) => found(fires));
	const wordsOf = (text: string): string[] => text.toLowerCase().match(/\p{L}+/gu) ?? [];

	it('say what was found with value, uncertainty and limit, then the cause and who acts', () => {
		/** The words that stand in each thing that somebody is to do, and in nothing that others are to do. */
		const namesOf = (who: Finding['who']): string[] => {
			const [first = [], ...more] = all.filter((one) => one.who === who).map(({next}) => wordsOf(next));
			const others = all.filter((one) => one.who !== who).flatMap(({next}) => wordsOf(next));
			return first.filter((word) => more.every((one) => one.includes(word)) && !others.includes(word));
		};
		for (const {fires} of Object.values(cases)) {
			for (const {code, text, who, next, likely} of found(fires)) {
				expect(text).toContain('%');
				// Readings with the bias on have no budget of their own: the assumed drag leaves more open than they do.
				// What the closing round may be off stands in the place of its uncertainty.
				if (code === 'moved') expect(text).toContain('0.5 %');
				else if (code !== 'off-scale' && !code.startsWith('bias-')) expect(text).toContain('±');
				expect(text.endsWith('.')).toBe(true);
				for (const name of namesOf(who)) expect(text.toLowerCase()).toContain(name);
				expect(namesOf(who)).not.toEqual([]);
				expect(text).toContain(next.slice(1));
				expect(text).toContain(likely);
				expect(text).not.toMatch(/NaN|undefined|null|Infinity/);
			}
		}
	});

	it('never send the arm to its maker before more readings, and never at once', () => {
		expect(all.map(({who}) => who)).not.toContain('maker');
		/** The longest run of words that stands in each of some texts. */
		const sharedRun = ([first = '', ...more]: readonly string[]): string => {
			const parts = first.split(' ');
			const runs = parts.flatMap((_, from) =>
				parts.slice(from).map((__, to) => parts.slice(from, from + to + 1).join(' ')),
			);
			const shared = runs.filter((run) => more.every((text) => text.includes(run)));
			return shared.toSorted((one, other) => other.length - one.length)[0] ?? '';
		};
		const codes: readonly string[] = ['off-scale', 'pull-and-friction', 'friction', 'no-pattern'];
		const [toMaker, others] = [true, false].map((is) =>
			all.filter(({code}) => codes.includes(code) === is).map(({next}) => next),
		);
		// How readings are taken once more, and after that the way to the maker; no other finding says either.
		const readings = sharedRun(toMaker ?? []);
		const maker = sharedRun((toMaker ?? []).map((next) => next.split(readings)[1] ?? ''));
		for (const run of [readings, maker]) expect(wordsOf(run).length).toBeGreaterThan(3);
		for (const next of others ?? []) for (const run of [readings, maker]) expect(next).not.toContain(run);
		for (const next of toMaker ?? []) expect(next.split(maker)).toHaveLength(2);
	});

	it('lead with what is sure of an undecided figure, and say nothing of more rounds before there are three', () => {
		const openWith = (rounds: number) => {
			const few = {pull: 2, band: 1, rounds};
			return dataOf('undecided', documentWith(few, few))?.values.open ?? [];
		};
		for (const rounds of [1, 2])
			expect(openWith(rounds)).toMatchObject(
				['inner', 'outer'].map((place) => ({at: {place}, figure: 'pull', atWorst: 'usable', wanted: 'three-rounds'})),
			);
		expect(openWith(3).map(({wanted}) => wanted)).not.toContain('three-rounds');
	});

	it('tell the ways apart: out toward the rim, in toward the spindle', () => {
		const document = documentWith({pull: 3, band: 1}, {pull: -3, band: 1});
		const spring = dataOf('spring-pull', document);
		const text = spring && worded(spring).text;
		expect(text).toContain('3.00 % out ±');
		expect(text).toContain('3.00 % in ±');
		// Between the two radii.
		const neutralMm = Math.round(spring?.values.neutralRadiusMm ?? 0);
		expect(neutralMm).toBeGreaterThan(68);
		expect(neutralMm).toBeLessThan(136);
		expect(text).toContain(` ${neutralMm} mm`);
	});
});

describe('A tilt that explains the pull', () => {
	const explains = (document: Document) => found(document).find(({code}) => code === 'tilt-explains')?.places;

	it('may do so at one radius only, where the pull is good at the other', () => {
		expect(explains(tilted(2.1, 2.5, 1.5))).toEqual(['inner']);
	});

	it('makes half of the pull at least, wherever the pull is not good', () => {
		expect(explains(tilted(1.25, 2.5, 1.5))).toEqual(['inner']);
		// What is left is good, 1.3 %, and yet the tilt made less than half.
		expect(explains(tilted(1.2, 2.5, 1.5))).toBeUndefined();
		// Half of it at the inner radius, and not at the outer.
		expect(explains(tilted(1.25, 2.5, 2.9))).toBeUndefined();
	});

	it('is surely there: its share is above its own uncertainty', () => {
		expect(explains(readOnce(0.7, 0.7))).toEqual(['inner']);
		expect(explains(readOnce(0.68, 0.68))).toBeUndefined();
		// The same, read twice with the level turned round: uncertain by 0.03 % only.
		expect(explains(tilted(0.68, 0.68, 0.3, {limits: {pullGoodPct: 0.5}}))).toEqual(['inner']);
	});

	it('leaves a pull at both radii that is good without it', () => {
		expect(explains(tilted(3, 4.9, 4.9))).toEqual(['inner', 'outer']);
		expect(explains(tilted(3, 5.1, 4.9))).toBeUndefined();
	});

	it('is told alone: neither as a constant pull nor as a deck that is not level', () => {
		expect(codes(tilted(2.5, 3.5, 3.5))).toEqual(['tilt-explains']);
		// The same pull on a level deck is the arm's own.
		expect(codes(documentWith({pull: 3.5, band: 1}, {pull: 3.5, band: 1}, {level: level([0, 0])}))).toEqual([
			'constant-pull',
		]);
	});
});

describe('A deck that is not level', () => {
	it('is told at the radii where the tilt makes too much, or at all of them where the whole tilt is too large', () => {
		const spring = (tiltDeg: number): Document => ({
			...documentWith({pull: 1, band: 1}, {pull: 1, band: 1}, {level: level([tiltDeg, -tiltDeg])}),
			arm: {effectiveLengthMm: 233, pivotDistanceMm: 215.4, loading: 'spring'},
		});
		const places = (document: Document) => found(document).find(({code}) => code === 'not-level')?.places;
		// A spring-loaded arm without a guard does not lean at all.
		expect(places(spring(0.51))).toEqual(['inner', 'outer']);
		expect(places(spring(0.5))).toBeUndefined();
	});

	it('is told beside what the arm does by itself', () => {
		expect(codes(tilted(0.6, 5, 5))).toEqual(['not-level', 'constant-pull']);
	});

	it('is not told where the level was not read', () => {
		expect(codes(quiet)).toEqual(['sound']);
	});
});

describe('The hold band', () => {
	it('tells of local friction only where its difference is more than its uncertainty', () => {
		// With steps of 2 % the difference of two bands is uncertain by 1.96·√(2·4/6) = 2.3 %, so 1.5 % says nothing.
		const gauge = {unit: 'percent', topOfScale: 20, zero: 0, setAnew: true} as const;
		const local = (step: number) =>
			codes(documentWith({pull: 0, band: 3.5}, {pull: 0, band: 2}, {gauge: {...gauge, step}}));
		expect(local(0.1)).toContain('friction-local');
		expect(local(2)).not.toContain('friction-local');
	});

	it('and a pull that may be beyond its limit are told together', () => {
		expect(codes(documentWith({pull: 4, band: 7}, {pull: 1, band: 1}))).toContain('pull-and-friction');
		expect(codes(documentWith({pull: 3.9, band: 7}, {pull: 1, band: 1}))).not.toContain('pull-and-friction');
	});
});

describe('A steady pull', () => {
	it('is carried by bias only where it stays usable with a drag of 0.05 less or more', () => {
		// Skating wants between 11.6 and 12.8 % over the record, so the best setting leaves about 0.6 %; 0.05 of drag more
		// is another 2.1 %.
		const carried = (pullUsablePct: number) =>
			codes(withBias({...pulled, limits: {pullUsablePct}}, at(136, 11), at(68, 11)));
		expect(carried(4)).toContain('playable-with-bias');
		expect(carried(2.2)).not.toContain('playable-with-bias');
	});

	it('beside a bias that rubs: the rub is named by its place among the radii read', () => {
		const rubbing = (document: Document) => found(document).find(({code}) => code === 'bias-rubs')?.places;
		expect(rubbing(withBias(quiet, at(136, 12), at(98, 12, 4), at(68, 12)))).toEqual(['other']);
		expect(rubbing(withBias(quiet, at(136, 12), at(98, 12), at(68, 12, 4)))).toEqual(['inner']);
	});

	it('is told of the zero of the gauge where no round was turned', () => {
		const isTurned = (document: Document) => dataOf('constant-pull', document)?.values.isTurned;
		expect(isTurned(pulled)).toBe(false);
		const {zero: _zero, ...gauge} = pulled.gauge;
		const [inner, ...others] = pulled.probe;
		if (!inner) throw new Error('there is an inner radius');
		const turned = {innerLimit: -4.5, outerLimit: -5.5, gauge: 'turned'} as const;
		const withTurned = {...pulled, gauge, probe: [{...inner, rounds: [...inner.rounds, turned]}, ...others]};
		expect(isTurned(withTurned)).toBe(true);
	});
});

describe('A sound arm', () => {
	it('is never told beside a fault', () => {
		const faults: readonly FindingCode[] = [
			'off-scale',
			'moved',
			'tilt-explains',
			'not-level',
			'pull-and-friction',
			'constant-pull',
			'spring-pull',
			'runaway-pull',
			'friction',
			'friction-local',
			'no-pattern',
		];
		for (const code of faults) expect(codes(cases[code].fires)).not.toContain('sound');
	});

	it('may be told beside what the bias does', () => {
		expect(codes(cases['bias-idle'].fires)).toEqual(['bias-idle', 'sound']);
	});
});
