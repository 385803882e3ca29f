import type {Limits} from '../../measures/verdict.js';
import type {OpenFigure} from '../../results/closing-rows.js';
import type {FindingCode, FindingValues} from '../../results/diagnose.js';
import {type GaugeUnit, units} from '../../units.js';
import {listed, mm, percent, plainNumber} from '../numbers.js';
import {bandAt, forceWithWay, limitInQuestion, pullAt, sideForce, sureFirst, wayOf, wouldDecideIt} from './figures.js';

/** What is said of a finding. */
type FindingWords<Values> = {
	/** What the arm does, in one short sentence. */
	readonly brief: string;
	/** What was found, with value, uncertainty and limit: in short sentences. */
	readonly found: (values: Values) => string;
	/** The likely cause, after a colon; empty where the figures name none. */
	readonly likely: string;
	/** Who does what next, in short sentences. */
	readonly next: (values: Values) => string;
};

const at = (radiiMm: readonly number[]): string => listed(radiiMm.map(mm));
const pulls = (radii: readonly Parameters<typeof pullAt>[0][]): string => listed(radii.map(pullAt));
const bands = (radii: readonly Parameters<typeof bandAt>[0][]): string => listed(radii.map(bandAt));
const top = (topOfScale: number, unit: GaugeUnit): string => `${plainNumber(topOfScale)} ${units[unit].label}`;
const shares = (all: FindingValues['not-level']['shares']): string =>
	listed(
		all.map(({radiusMm, sharePct, uncertaintyPct}) => `${sideForce(sharePct, uncertaintyPct)} at ${mm(radiusMm)}`),
	);
const limits = ({good, usable}: Limits): string => `good to ${plainNumber(good)} %, usable to ${plainNumber(usable)} %`;

const changed = ({radii, differencePct, leastPct}: FindingValues['spring-pull']): string =>
	`The pull is ${pulls(radii)}. Without the tilt it changes by ${percent(differencePct, 1)} from radius to radius (allowed ${plainNumber(leastPct)} %).`;
const neutral = (radiusMm: number | null): string =>
	radiusMm === null ? '' : ` There is no pull at ${mm(Math.round(radiusMm))}.`;

const open = ({figure, at: radius, atWorst}: OpenFigure, limits: Limits): string =>
	`${figure === 'pull' ? `Pull ${pullAt(radius)}` : `Friction ${bandAt(radius)}`} (${limitInQuestion(atWorst, limits)}): ${sureFirst(atWorst)}.`;

const decidedBy = ({wanted, atWorst}: OpenFigure): string => {
	if (wanted === 'three-rounds') return 'take three rounds';
	if (wanted === 'agreement') return 'the rounds do not agree. Take them again, or strike the odd one out';
	return wouldDecideIt(wanted, atWorst);
};
const wayOn = (one: OpenFigure): string =>
	`${one.figure === 'pull' ? 'Pull' : 'Friction'} at ${mm(one.at.radiusMm)}: ${decidedBy(one)}.`;

const probeAgain = 'Then probe one radius again: guard clear, hands off the deck.';
const toMaker = 'No change: send the arm to its maker.';
const levelFirst = 'Owner: level the armboard, then probe again.';

/** What was found, in short and in full, its likely cause and what to do next, by code. */
export const findings: {readonly [Code in FindingCode]: FindingWords<FindingValues[Code]>} = {
	'off-scale': {
		brief: 'A reading ran off the scale. No figure there.',
		found: ({radiiMm, topOfScale, unit}) =>
			`At ${at(radiiMm)} a reading reached the end of the scale, ${top(topOfScale, unit)}. There is no figure there.`,
		likely: 'the deck is not level, the bias is on, or the arm has a fault',
		next: () => `Technician: look at bias and level, dress the leads. ${probeAgain} ${toMaker}`,
	},
	moved: {
		brief: 'Something moved while you took the rounds.',
		found: ({movedPct, allowedPct}) =>
			`The closing round reads ${percent(Math.abs(movedPct), 1)} farther ${wayOf(movedPct)} than the other inner rounds (allowed ${percent(allowedPct, 1)}).`,
		likely: 'the gauge, the deck or a lead shifted',
		next: () => 'Technician: find what moved, then probe again.',
	},
	'tilt-explains': {
		brief: 'The tilt of the deck makes the pull.',
		found: ({radii, shares: made, goodPct}) =>
			`The pull is ${pulls(radii)} (good to ${plainNumber(goodPct)} %). The tilt alone makes a pull of ${shares(made)}.`,
		likely: 'the tilt makes the pull',
		next: () => levelFirst,
	},
	'not-level': {
		brief: 'The deck is not level. Its tilt is in every reading.',
		found: ({shares: made, allowedPct, own}) => {
			const without = listed(own.map((one) => `${forceWithWay(one.ownPullPct, '%', 1)} at ${mm(one.radiusMm)}`));
			return `The tilt alone makes a pull of ${shares(made)} (allowed ${plainNumber(allowedPct)} %).${own.length === 0 ? '' : ` Without it the pull would be ${without}.`}`;
		},
		likely: 'the tilt is in every reading',
		next: () => levelFirst,
	},
	'pull-and-friction': {
		brief: 'The arm sticks, and a pull pushes it too.',
		found: ({radii, pullUsablePct, bandUsablePct}) =>
			`The pull is ${pulls(radii)} (usable to ${plainNumber(pullUsablePct)} %). The friction is ${bands(radii)} (usable to ${plainNumber(bandUsablePct)} %).`,
		likely: 'two causes at once',
		next: ({finestPct}) =>
			`Technician: dress the leads. ${probeAgain} ${toMaker} Until then set the bias no finer than ± ${percent(finestPct, 1)}.`,
	},
	'constant-pull': {
		brief: 'The pull is about the same at both radii.',
		found: ({radii, goodPct}) =>
			`The pull is about the same at both radii: ${pulls(radii)} (good to ${plainNumber(goodPct)} %).`,
		likely: "the gauge's zero, bias not off, or a lead twisted at the bearing",
		next: ({isTurned}) =>
			`Technician: ${isTurned ? 'make' : 'take one turned round. Make'} sure that the bias is off, then dress the leads. Inside the arm it is work for the maker.`,
	},
	'spring-pull': {
		brief: 'The pull changes over the record, like a spring.',
		found: (values) => `${changed(values)} It pushes back like a spring.${neutral(values.neutralRadiusMm)}`,
		likely: 'the leads act as a spring',
		next: () => 'Technician: dress the leads so that they hang slack between both radii.',
	},
	'runaway-pull': {
		brief: 'The pull grows over the record and runs away.',
		found: (values) =>
			`${changed(values)} The farther the arm goes, the more it pushes.${neutral(values.neutralRadiusMm)}`,
		likely: 'a loop of the leads going over centre, bias still on, or a magnet',
		next: () => 'Technician: look along the whole swing for what pulls.',
	},
	friction: {
		brief: 'The arm sticks everywhere.',
		found: ({radii, usablePct}) => `The friction is ${bands(radii)} (usable to ${plainNumber(usablePct)} %).`,
		likely: 'dirt, preload, dried oil, damping left in, or a lead that rubs',
		next: () =>
			`Technician: look at the damping, dress the leads. ${probeAgain} ${toMaker} Never adjust a bearing without its maker's procedure.`,
	},
	'friction-local': {
		brief: 'The arm sticks more at one end.',
		found: ({radii, differencePct, leastPct}) =>
			`The friction is ${bands(radii)}. They differ by ${percent(differencePct, 1)} (allowed ${plainNumber(leastPct)} %).`,
		likely: 'a rub, a damaged race, a lead that touches there, or the linkage of the stop',
		next: () => 'Technician: watch leads, lifter, rest and linkage along the whole swing.',
	},
	'no-pattern': {
		brief: 'Too much, and no single cause shows.',
		found: ({radii, pullUsablePct, bandUsablePct}) =>
			`The pull is ${pulls(radii)} (usable to ${plainNumber(pullUsablePct)} %). The friction is ${bands(radii)} (usable to ${plainNumber(bandUsablePct)} %). No single cause shows.`,
		likely: '',
		next: () =>
			'Technician: take rounds at one more radius, between the two: leads dressed, guard clear, hands off the deck. No cause found: send the arm to its maker with the figures.',
	},
	'bias-idle': {
		brief: 'The bias device does nothing.',
		found: ({radiiMm, leastPct}) =>
			`The bias changes the reading by less than ${plainNumber(leastPct)} % at ${at(radiiMm)}.`,
		likely: 'its weight is not on, its thread is not hooked, or a stop is in the way',
		next: () => 'Technician: lock the arm, guard on. Look at the device, then probe again.',
	},
	'bias-off-scale': {
		brief: 'The bias drives a reading off the scale.',
		found: ({radiiMm, topOfScale, unit}) =>
			`With the bias on, a reading at ${at(radiiMm)} reached the end of the scale, ${top(topOfScale, unit)}. There is no figure there.`,
		likely: 'too much bias, or a drag assumed too high',
		next: () => 'Technician: set less bias, then probe again.',
	},
	'bias-rubs': {
		brief: 'The bias device adds friction.',
		found: ({onPct, offPct, radiusMm, leastPct}) =>
			`With the bias on the friction is ${percent(onPct, 1)} at ${mm(radiusMm)}. With the bias off it is ${percent(offPct, 1)} at most (allowed: ${plainNumber(leastPct)} % more).`,
		likely: 'a thread or pulley that drags',
		next: () => 'Technician: clean and align thread and pulley, then probe again.',
	},
	'bias-uneven': {
		brief: 'The bias does not fit the whole record.',
		found: ({left, allowedPct}) =>
			`The best setting still leaves ${listed(left.map(({radiusMm, leftPct}) => `${forceWithWay(leftPct, '%', 1)} at ${mm(radiusMm)}`))} (allowed ${plainNumber(allowedPct)} %).`,
		likely: 'a lever that is not level over the whole record, or the angle of the thread',
		next: () =>
			'Technician: change thread or pulley, as far as its maker allows, until the lever is about level at every radius.',
	},
	'playable-with-bias': {
		brief: 'Bias can make up for the pull.',
		found: ({radii, worstAfterPct, goodPct, worstAfterDragPct, drag, usablePct}) =>
			`Bias can make up for the pull of ${pulls(radii)}. With the best bias setting at most ${percent(worstAfterPct, 1)} is left over (good to ${plainNumber(goodPct)} %). If the drag is ${plainNumber(drag)} less or more, at most ${percent(worstAfterDragPct, 1)} is left over (usable to ${plainNumber(usablePct)} %).`,
		likely: 'a steady pull',
		next: () => 'Technician: set the bias so. The arm may be played, and the pull cured later.',
	},
	undecided: {
		brief: 'A figure is undecided.',
		found: ({open: all, pullLimits, bandLimits}) =>
			all.map((one) => open(one, one.figure === 'pull' ? pullLimits : bandLimits)).join(' '),
		likely: '',
		next: ({open: all}) => `Technician: decide it. ${all.map(wayOn).join(' ')}`,
	},
	sound: {
		brief: 'The arm swings freely.',
		found: ({radii, atWorst, pullLimits, bandLimits}) =>
			`The arm is ${atWorst === 'good' ? 'good' : 'usable or better'}. The pull is ${pulls(radii)} (${limits(pullLimits)}). The friction is ${bands(radii)} (${limits(bandLimits)}).`,
		likely: '',
		next: () => 'Owner: leave the arm as it is.',
	},
};
