import {type GaugeUnit, gaugeUnits} from '../units.js';
import type {Facts} from './facts.js';
import type {Sides} from './step.js';
import {answerKinds, type OptionOf} from './step-ids.js';

/** Directions of a gauge reading. `out` and `in` always say which way the arm pushes. */
export const pushSides: Sides = {
	plus: {word: 'out', also: ['o', 'outward', 'rim']},
	minus: {word: 'in', also: ['i', 'inward', 'spindle']},
	sign: 'of-gauge',
	words: 'direction',
};

/** Which side the level calls high, left to right. */
export const leftRight: Sides = {
	plus: {word: 'right', also: ['r']},
	minus: {word: 'left', also: ['l']},
	sign: 'means-nothing',
	words: 'direction',
};

/** Which side the level calls high, front to back. */
export const frontBack: Sides = {
	plus: {word: 'back', also: ['b', 'rear']},
	minus: {word: 'front', also: ['f']},
	sign: 'means-nothing',
	words: 'direction',
};

export const gaugeUnitOf = (facts: Facts): GaugeUnit =>
	gaugeUnits.find((unit) => facts.is('gauge-unit', unit)) ?? 'percent';

/** How the gauge is held at the arm. */
export type GaugeMount = OptionOf<'gauge-mount'>;

/** Known gauges of before this was asked stand. */
export const gaugeMountOf = (facts: Facts): GaugeMount =>
	answerKinds['gauge-mount'].find((mount) => facts.is('gauge-mount', mount)) ?? 'stands';

/** The gauge is pushed by hand: it carries nothing, so the arm is floated instead of weighed. */
export const isPushedByHand = (facts: Facts): boolean => facts.is('gauge-mount', 'hand');

/** The gauge shows the force of a hand that starts the arm, instead of the force of the arm on the gauge. */
export const showsHandForce = (facts: Facts): boolean =>
	isPushedByHand(facts) || facts.is('gauge-sign', 'hand-out', 'hand-in');

/** The sign that a typed + has in the program's sense (positive: the arm pushes toward the rim). */
export const signOfPlus = (facts: Facts): 1 | -1 => (facts.is('gauge-sign', 'arm-in', 'hand-out') ? -1 : 1);

/** Read free of the arm or turned, the gauge's own sign counts: there are no directions of the arm. */
export const gaugeSides: Sides = {
	plus: {word: 'plus', also: []},
	minus: {word: 'minus', also: []},
	sign: 'of-gauge',
	words: 'sign-of-gauge',
};
