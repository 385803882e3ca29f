import {describe, expect, it} from 'vitest';
import {withAction} from '../../source/pages/next-action.js';
import {type RemedyId, remedies, remedyById} from '../../source/procedure/remedies.js';
import {compute} from '../../source/results/compute.js';
import type {FindingCode} from '../../source/results/diagnose.js';
import type {Document} from '../../source/results/document.js';
import {type ActionCase, nextActionOf} from '../../source/results/next-action.js';
import {worded} from '../../source/words/finding-text.js';
import {words} from '../helpers/said.js';
import {Dice} from '../model/random-dice.js';
import {randomDocuments} from '../model/random-documents.js';
import {documentWith} from './example.js';

const ofFriction = ['lifter', 'gauge-friction', 'damping', 'touching'] as const;
const ofChange = ['bias', 'lead-loop', 'magnet'] as const;
const ofConstant = ['gauge-zero', 'bias', 'level', 'half-force', 'leads', 'leads-off', 'cartridge-weight'] as const;

/** The suspects in the order in which a technician looks at them, cheapest first. Nothing goes to a maker unrepeated. */
const suspects: Readonly<Partial<Record<FindingCode, readonly RemedyId[]>>> = {
	'off-scale': ['bias', 'level', 'leads', 'repeat'],
	moved: ['gauge-foot', 'platter', 'still-deck', 'leads'],
	'tilt-explains': ['level'],
	'not-level': ['level'],
	'constant-pull': [...ofConstant, 'repeat'],
	'spring-pull': [...ofChange, 'repeat'],
	'runaway-pull': [...ofChange, 'repeat'],
	friction: [...ofFriction, 'repeat'],
	'friction-local': ['along-swing', 'repeat'],
	'no-pattern': ['repeat'],
};
const toMaker = Object.keys(suspects).filter((code) => !['moved', 'tilt-explains', 'not-level'].includes(code));
/** Those that figures alone can rule out. */
const ruledOutByFigures: readonly RemedyId[] = ['bias', 'level', 'gauge-zero'];

const caseOf = (document: Document, more: Partial<ActionCase> = {}): ActionCase => {
	const {findings, ...figures} = compute(document);
	return {figures, findings, tried: [], fits: () => true, ...more};
};

/** What is to be done time after time while nothing helps, up to the first that is no suspect, or is one over again. */
function followed(document: Document, more: Partial<ActionCase> = {}) {
	const tried: RemedyId[] = [];
	for (;;) {
		const action = nextActionOf(caseOf(document, {...more, tried}));
		if (action?.kind !== 'suspect' || tried.includes(action.remedy)) return {tried, end: action};
		tried.push(action.remedy);
	}
}

const ids = remedies.map(({id}) => id);
const sample = randomDocuments(3000, 7000).map((document, index) => {
	const dice = new Dice(index + 1);
	const drawn = (chance: number) => ids.filter(() => dice.chance(chance));
	const [before, unfit] = [drawn(dice.chance(0.5) ? 0.3 : 0.9), drawn(0.2)];
	const last = ids[dice.whole(0, ids.length - 1)];
	const tried = last ? [...before, last] : before;
	return {
		given: caseOf(document as Document, {tried, fits: (id) => !unfit.includes(id)}),
		tried,
		unfit,
		isAsUsed: remedyById[tried.at(-1) ?? 'again'].undoneBy === undefined,
	};
});

describe('The next action of any readings', () => {
	it('is one, belongs to the first finding, and stands beside no other', () => {
		for (const {given} of sample) {
			const action = nextActionOf(given);
			expect(action?.code).toBe(given.findings[0]?.code);
			const issued = withAction(given.findings.map(worded), action);
			expect(issued.map(({next}) => next !== '')).toEqual(issued.map((_one, index) => index === 0));
		}
	});

	it('never touches the deck of an arm that is sound, or only not decided', () => {
		const seen = sample.filter(
			({given, isAsUsed}) => isAsUsed && ['sound', 'undecided'].includes(given.findings[0]?.code ?? ''),
		);
		expect(seen.length).toBeGreaterThan(100);
		for (const {given} of seen) expect(['leave', 'more-rounds', 'odd-round']).toContain(nextActionOf(given)?.kind);
	});

	it('puts the deck back as it is used before anything else is said of it', () => {
		const seen = sample.filter(({given, isAsUsed}) => !isAsUsed && given.findings[0]?.code === 'sound');
		expect(seen.length).toBeGreaterThan(10);
		for (const {given, tried} of seen)
			expect(nextActionOf(given)).toMatchObject({
				kind: 'suspect',
				remedy: remedyById[tried.at(-1) ?? 'again'].undoneBy,
			});
	});

	it('is the maker only where every suspect was looked at, cannot be here, or is ruled out by figures', () => {
		const seen = sample.filter(({given}) => nextActionOf(given)?.kind === 'maker');
		expect(seen.length).toBeGreaterThan(50);
		for (const {given, tried, unfit} of seen) {
			const code = given.findings[0]?.code ?? 'sound';
			const due = code === 'pull-and-friction' ? [...ofFriction, 'repeat'] : (suspects[code] ?? []);
			expect([...toMaker, 'pull-and-friction']).toContain(code);
			const left = due.filter((id) => !tried.includes(id as RemedyId) && !unfit.includes(id as RemedyId));
			expect(left.filter((id) => !ruledOutByFigures.includes(id as RemedyId))).toEqual([]);
		}
	});

	it('never names what makes no sense here, nor what was tried, but for a level that still is none and readings that move', () => {
		for (const {given, tried, unfit} of sample) {
			const action = nextActionOf(given);
			if (action?.kind !== 'suspect' || remedyById[tried.at(-1) ?? 'again'].undoneBy === action.remedy) continue;
			const isOver = ['tilt-explains', 'not-level', 'moved'].includes(action.code);
			expect(tried.includes(action.remedy) && !isOver).toBe(false);
			expect(unfit.includes(action.remedy) && !isOver).toBe(false);
		}
	});
});

describe('Suspects', () => {
	const turnedOut = {gauge: {unit: 'percent', step: 0.1, topOfScale: 20, setAnew: true}} as const;
	const level = (deg: number) => ({level: {stepDeg: 0.05, leftRightDeg: [deg, -deg], frontBackDeg: [0, 0]}});

	it.each([
		['constant-pull', documentWith({pull: 5, band: 1}, {pull: 5, band: 1}, turnedOut)],
		['spring-pull', documentWith({pull: 5, band: 1}, {pull: 2, band: 1})],
		['runaway-pull', documentWith({pull: 2, band: 1}, {pull: 5, band: 1})],
		['friction', documentWith({pull: 0, band: 8}, {pull: 0, band: 8})],
		['friction-local', documentWith({pull: 0, band: 5}, {pull: 0, band: 1})],
		['off-scale', documentWith({pull: 18, band: 8}, {pull: 1, band: 1})],
	] as const)('of %s are looked at in the order of what costs least, then the maker is asked', (code, document) => {
		expect(followed(document)).toMatchObject({tried: suspects[code], end: {kind: 'maker', who: 'maker', code}});
	});

	it('of rounds that moved are gauge, platter, hands and leads; then they are taken again', () => {
		const document = documentWith({pull: 1, band: 1}, {pull: 1, band: 1});
		const [inner, outer] = document.probe;
		if (!inner || !outer) throw new Error('there are two radii');
		const closing = {innerLimit: 3.5, outerLimit: 4.5, closing: true as const};
		const moved = {...document, probe: [{...inner, rounds: [...inner.rounds, closing]}, outer]};
		expect(compute(moved).findings[0]?.code).toBe('moved');
		expect(nextActionOf(caseOf(moved, {tried: suspects.moved ?? []}))).toMatchObject({remedy: 'again'});
		expect(followed(moved).tried).toEqual([...(suspects.moved ?? []), 'again']);
	});

	it('of friction and a pull at once are those of friction first, then those of the pull as it shows', () => {
		const {tried, end} = followed(documentWith({pull: 5, band: 8}, {pull: 5, band: 8}, turnedOut));
		expect(tried).toEqual([...ofFriction, ...ofConstant, 'repeat']);
		expect(end).toMatchObject({kind: 'maker', finestPct: 4});
		expect(followed(documentWith({pull: 8, band: 8}, {pull: 5, band: 8})).tried).toEqual([
			...ofFriction,
			...ofChange,
			'repeat',
		]);
	});

	it('of a pull inward have no bias among them: it pulls outward', () => {
		expect(followed(documentWith({pull: -5, band: 1}, {pull: -5, band: 1}, turnedOut)).tried).toEqual(
			[...ofConstant, 'repeat'].filter((id) => id !== 'bias'),
		);
	});

	it('leave out a level that was read and passes, and a zero that is known', () => {
		const {tried} = followed(documentWith({pull: 5, band: 1}, {pull: 5, band: 1}, level(0.01)));
		expect(tried).toEqual([...ofConstant, 'repeat'].filter((id) => id !== 'level' && id !== 'gauge-zero'));
	});

	it('of a deck that is not level are its feet, over again while it is not', () => {
		const document = documentWith({pull: 0, band: 1}, {pull: 0, band: 1}, level(0.4));
		expect(followed(document)).toMatchObject({
			tried: ['level'],
			end: {remedy: 'level', who: 'owner', code: 'not-level'},
		});
	});

	it('without a pattern are rounds at one more radius first', () => {
		const document = documentWith({pull: 1.5, band: 6.8}, {pull: 0.6, band: 5.9});
		expect(compute(document).findings[0]?.code).toBe('no-pattern');
		expect(followed(document).end).toMatchObject({kind: 'radius-between'});
		const [inner, outer] = document.probe;
		if (!inner || !outer) throw new Error('there are two radii');
		const between = {...inner, place: 'other' as const, radiusMm: 100};
		expect(followed({...document, probe: [inner, outer, between]})).toMatchObject({
			tried: ['repeat'],
			end: {kind: 'maker'},
		});
	});
});

describe('What decides an undecided figure', () => {
	it('is rounds, at the radius that needs them and so many in all, where fewer than three were taken', () => {
		const document = documentWith({pull: 2, band: 1}, {pull: 1.5, band: 1, rounds: 2});
		const [first] = compute(document).findings;
		expect(first?.code).toBe('undecided');
		expect(nextActionOf(caseOf(document))).toMatchObject({kind: 'leave', atWorst: 'usable'});
		const few = documentWith({pull: 2, band: 1, rounds: 2}, {pull: 1.5, band: 1});
		expect(nextActionOf(caseOf(few))).toMatchObject({kind: 'more-rounds', place: 'inner', radiusMm: 68, total: 3});
	});
});

describe('What is said of a remedy', () => {
	it.each(remedies)(
		'$id begins with arm locked, guard on and amplifier off where hands go to what is delicate',
		(one) => {
			const {delicateWith} = one;
			expect(delicateWith !== undefined).toBe(
				['bias', 'leads', 'lead-loop', 'leads-off', 'touching', 'along-swing', 'repeat'].includes(one.id),
			);
			// Only where the arm itself must be moved it is not locked.
			expect(delicateWith === 'free').toBe(one.id === 'lead-loop');
			const {findings, ...figures} = compute(documentWith({pull: 5, band: 1}, {pull: 5, band: 1}));
			const action = nextActionOf({figures, findings, tried: [], fits: () => true});
			if (action?.kind !== 'suspect') throw new Error('there is a suspect');
			const [issued] = withAction(findings.map(worded), {...action, remedy: one.id});
			const {locked, free} = words.actions.delicate;
			expect([locked, free].filter((caution) => issued?.next.includes(caution.slice(0, -1)))).toEqual(
				delicateWith ? [words.actions.delicate[delicateWith]] : [],
			);
			expect(words.remedies[one.id].doing.length).toBeGreaterThan(5);
		},
	);
});
