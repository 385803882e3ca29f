import {spellings} from '../spellings.js';
import {type GaugeUnit, gaugeUnits} from '../units.js';
import type {Facts} from './facts.js';
import type {Side, Sides, SideWord} from './step.js';
import {answerKinds, type OptionOf} from './step-ids.js';

const side = (word: SideWord): Side => ({word, spelled: spellings[word]});

/** Directions of a gauge reading. `out` and `in` always say which way the arm pushes. */
export const pushSides: Sides = {
	plus: side('out'),
	minus: side('in'),
	sign: 'of-gauge',
	words: 'direction',
};

/** Which side the level calls high, left to right. */
export const leftRight: Sides = {
	plus: side('right'),
	minus: side('left'),
	sign: 'means-nothing',
	words: 'direction',
};

/** Which side the level calls high, front to back. */
export const frontBack: Sides = {
	plus: side('back'),
	minus: side('front'),
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
	plus: side('plus'),
	minus: side('minus'),
	sign: 'of-gauge',
	words: 'sign-of-gauge',
};
