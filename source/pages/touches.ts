import type {Facts} from '../procedure/facts.js';
import {armOf, pivotDirectionDeg} from '../procedure/geometry.js';
import {levelState} from '../procedure/level.js';
import type {StepId} from '../procedure/step-ids.js';
import type {Foot, Touch} from './instruments/deck.js';
import type {Shown} from './shown-lines.js';

/** The one place that hands touch in a step, and which way. */
type TouchOf = (facts: Facts) => Touch | undefined;

const part =
	(touched: Extract<Touch, {kind: 'part'}>['part']): TouchOf =>
	() => ({kind: 'part', part: touched});

const gaugeAt =
	(end: 'inner' | 'outer'): TouchOf =>
	(facts) => {
		const radiusMm = facts.number(`radius-${end}`);
		return radiusMm === undefined ? undefined : {kind: 'gauge', radiusMm};
	};

/** The feet under the high side go down. */
const feet: TouchOf = (facts) => {
	const state = levelState(facts);
	if (!state) return;
	const {leftRight, frontBack} = state.dropsMm;
	const sides: readonly (readonly [Foot, Foot])[] = [
		...(leftRight > 0
			? [
					state.leftRight.tiltDeg > 0
						? (['front-right', 'back-right'] as const)
						: (['front-left', 'back-left'] as const),
				]
			: []),
		...(frontBack > 0
			? [
					state.frontBack.tiltDeg > 0
						? (['back-left', 'back-right'] as const)
						: (['front-left', 'front-right'] as const),
				]
			: []),
	];
	const high = [...new Set(sides.flat())];
	return high.length === 0 ? undefined : {kind: 'feet', feet: high.map((foot) => ({foot, way: 'down'}))};
};

const touches: Readonly<Partial<Record<StepId, TouchOf>>> = {
	'guard-on': part('head'),
	'bias-off': part('bias'),
	'arm-wire-path': part('leads'),
	'lifter-clear': part('lifter'),
	'first-swing': part('head'),
	'probe-end': part('rest'),
	'bias-on': part('bias'),
	'back-lock': part('rest'),
	'back-gauge': gaugeAt('inner'),
	'back-bias': part('bias'),
	'back-leads': part('leads'),
	'back-guard': part('head'),
	'back-upright': part('pivot'),
};

/** The deck from above with the one place that a step touches. */
export const touchOf = (step: StepId, facts: Facts): Shown[] => touchShown(facts, touches[step]?.(facts));

/** The feet to turn, where the level does not pass. */
export const feetShown = (facts: Facts): Shown[] => touchShown(facts, feet(facts));

/** The deck from above with a place to touch; nothing without one, and while the arm's lengths are not known. */
export function touchShown(facts: Facts, touch: Touch | undefined): Shown[] {
	const arm = armOf(facts);
	if (!arm || !touch) return [];
	// What is to be touched stands in the question: only the eye needs it twice.
	return [{kind: 'deck', ...arm, pivotDirectionDeg: pivotDirectionDeg(facts), touch, caption: ''}];
}
