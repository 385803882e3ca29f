import limits from '../../shared/limits.json' with {type: 'json'};
import {isAbove, isBelow} from '../measures/compare.js';
import {reaches} from '../measures/geometry.js';
import {grams} from '../units.js';
import type {Facts} from './facts.js';
import {
	armOf,
	armProblem,
	believablePivotMm,
	isWorkedOut,
	nullsProblem,
	type ProbePlace,
	pivotWayOf,
	radiusProblem,
} from './geometry.js';
import {problem, setTo, wayTo} from './problem.js';
import {type Step, stepsOf, withProfile} from './step.js';
import {forceSteps} from './step-groups.js';

const step = stepsOf('arm');

/** Believable null radii, mm: within the grooves of a record, with something to spare. */
const believableNullMm = [40, 150] as const;

/** What the pivot distance is worked out from where it was left empty; kept with the arm. */
const pivotSteps = [
	step('arm-pivot-way', {
		when: isWorkedOut,
		touches: ['arm-null-radius', 'radius-inner', 'radius-outer'],
	}),
	step('arm-offset', {
		values: (facts) => ({isWorkedOut: isWorkedOut(facts)}),
		input: {unit: 'deg', between: [0, 45], optional: true},
		when: (facts) => pivotWayOf(facts) === 'offset' || facts.everAnswered('arm-offset'),
		verify: (facts) =>
			pivotWayOf(facts) === 'offset' && facts.unknown('arm-offset')
				? problem(
						'offset-not-known',
						{},
						wayTo('type-offset', 'arm-offset'),
						setTo('from-both-nulls', 'arm-pivot-way', 'nulls'),
						wayTo('measure-pivot', 'arm-pivot-distance'),
					)
				: undefined,
		touches: ['arm-null-radius'],
	}),
	step('arm-null-radius', {
		input: {unit: 'mm', between: believableNullMm},
		when: (facts) => pivotWayOf(facts) !== undefined,
		touches: ['radius-inner', 'radius-outer'],
	}),
	step('arm-null-other', {
		input: {unit: 'mm', between: believableNullMm},
		when: (facts) => pivotWayOf(facts) === 'nulls',
		verify: nullsProblem,
		touches: ['radius-inner', 'radius-outer'],
	}),
];

/** A usual probe radius, where the arm reaches it: common practice, no source (`shared/limits.json`). */
const usualRadius = (place: 'inner' | 'outer') => (facts: Facts) => {
	const inner = facts.is('arm-auto-stop', 'yes') ? limits.linkageInnerRadiusMm : limits.innerRadiusMm;
	const radiusMm = (place === 'inner' ? inner : limits.outerRadiusMm).value;
	const arm = armOf(facts);
	return arm && !reaches(arm, radiusMm) ? undefined : radiusMm;
};

/** A radius at which rounds are taken. */
const radius = (place: ProbePlace['place'], between: readonly [number, number]) => ({
	input: {unit: 'mm' as const, between, ...(place === 'extra' ? {optional: true} : {})},
	verify: (facts: Facts) => radiusProblem(place, facts),
	touches: ['rounds'] as const,
});

const isNotKnown = () => null;

/** An end of the forces that the maker of the cartridge allows, in mN; the playing force lies between them. */
const endOfRange = (end: 'low' | 'high', mostMn: number, isBeyond: (one: number, other: number) => boolean) =>
	step(`force-${end}`, {
		input: {unit: 'gf', between: [grams(0.1), mostMn], optional: true},
		usual: isNotKnown,
		verify: (facts) => {
			const [endMn, playingMn] = [facts.number(`force-${end}`), facts.number('playing-force')];
			if (endMn === undefined || playingMn === undefined || !isBeyond(endMn, playingMn)) return;
			const [id, correct] =
				end === 'low'
					? (['low-force-too-high', 'correct-lowest'] as const)
					: (['high-force-too-low', 'correct-highest'] as const);
			return problem(id, {}, wayTo(correct, `force-${end}`), wayTo('correct-playing', 'playing-force', `force-${end}`));
		},
		touches: forceSteps,
	});

/** What is kept with an arm, and asked by nobody: it decides nothing at the bench, or has something usual in its place. */
const keptSteps = [
	step('arm-serial', {input: {optional: true}, usual: isNotKnown}),
	step('arm-gravity-centre', {usual: () => 'near', touches: ['rounds']}),
	step('arm-auto-stop', {usual: () => 'no', touches: ['radius-inner']}),
	step('radius-inner', {...radius('inner', [50, 110]), usual: usualRadius('inner')}),
	step('radius-outer', {...radius('outer', [90, 160]), usual: usualRadius('outer')}),
	step('radius-extra', {...radius('extra', [50, 160]), usual: isNotKnown}),
	step('cartridge-name', {usual: isNotKnown}),
	endOfRange('low', grams(8), isAbove),
	endOfRange('high', grams(10), isBelow),
	step('cartridge-compliance', {input: {unit: 'umPerMn', between: [1, 120], optional: true}, usual: isNotKnown}),
	step('cartridge-cantilever', {input: {unit: 'mm', between: [2, 12], optional: true}, usual: isNotKnown}),
];

const asked = [
	step('arm-name', {}),
	step('arm-length', {
		input: {unit: 'mm', between: [120, 420]},
		touches: ['arm-pivot-distance'],
	}),
	step('arm-pivot-distance', {
		input: {unit: 'mm', between: believablePivotMm, optional: true},
		verify: armProblem,
		touches: ['radius-inner', 'radius-outer'],
	}),
	...pivotSteps,
	step('playing-force', {
		input: {unit: 'gf', between: [grams(0.2), grams(8)]},
		touches: ['force-low', 'force-high', 'back-force'],
	}),
	step('arm-loading', {suggest: () => 'gravity'}),
	step('arm-bias-device', {
		suggest: () => 'weight-on-thread',
		touches: ['bias-setting', 'bias-off', 'rounds'],
	}),
	...keptSteps,
];

const picker = step('arm-profile', {input: {of: 'arm'}});

/** A cartridge that an earlier version kept by itself; today it is kept with its arm. */
const cartridgePicker = step('cartridge-profile', {
	input: {of: 'cartridge'},
	when: (facts) =>
		facts.everAnswered('cartridge-profile') ||
		(facts.profiles.some(({kind, setAside}) => kind === 'cartridge' && !setAside) &&
			!facts.everAnswered('playing-force')),
});

/** Asked in a shop only; who has no customer finds it in the list of steps. */
const ofCustomer = {
	input: {optional: true},
	usual: (facts: Facts) => (facts.isShop ? undefined : null),
	listed: true,
	isPrivate: true,
} as const;

/** Whose arm it is, and what is wrong with it in the customer's words. */
export const customerSteps = [step('customer-name', ofCustomer), step('customer-complaint', ofCustomer)];

/** The arm on the bench. Picked from the profiles with one key, or entered once. */
export const armSteps: readonly Step[] = withProfile(picker, asked).flatMap((one) =>
	one.id === 'playing-force' ? [cartridgePicker, one] : [one],
);
