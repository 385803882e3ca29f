import type {Limits} from '../../measures/verdict.js';
import type {OpenFigure} from '../../results/closing-rows.js';
import type {FindingCode, FindingValues} from '../../results/diagnose.js';
import {type GaugeUnit, units} from '../../units.js';
import {listed, mm, percent, plainNumber} from '../numbers.js';
import {bandAt, forceWithWay, pullAt, sideForce, sureFirst, wayOf, wouldDecideIt} from './figures.js';

/** What is said of a finding. */
type FindingWords<Values> = {
	/** What the arm does, in one short sentence. */
	readonly brief: string;
	/** What was found, with value, uncertainty and limit: a whole sentence. */
	readonly found: (values: Values) => string;
	/** The likely cause, in the middle of a sentence; empty where the figures name none. */
	readonly likely: string;
	/** What to do next and who does it, in the middle of a sentence. */
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
	`The pull is ${pulls(radii)}; less the tilt it changes by ${percent(differencePct, 1)} (allowed ${plainNumber(leastPct)} %)`;
const neutral = (radiusMm: number | null): string =>
	radiusMm === null ? '' : ` (no pull at ${mm(Math.round(radiusMm))})`;

const wayOn = ({wanted, atWorst}: OpenFigure): string => {
	if (wanted === 'three-rounds') return 'take three rounds';
	if (wanted === 'agreement') return 'the rounds do not agree: take them again, or strike the odd one out';
	return wouldDecideIt(wanted, atWorst);
};

/** What was found, in short and in full, its likely cause and what to do next, by code. */
export const findings: {readonly [Code in FindingCode]: FindingWords<FindingValues[Code]>} = {
	'off-scale': {
		brief: 'A reading ran off the scale. No figure there.',
		found: ({radiiMm, topOfScale, unit}) =>
			`At ${at(radiiMm)} a reading reached the end of the scale, ${top(topOfScale, unit)}: no figure there.`,
		likely: 'the deck is not level, the bias is on, or the arm has a fault',
		next: () =>
			'the technician looks at bias, level and leads, then probes one radius again with the leads dressed, the guard clear and hands off the deck; no change: send the arm to its maker',
	},
	moved: {
		brief: 'Something moved while you took the rounds.',
		found: ({movedPct, allowedPct}) =>
			`The closing round reads ${percent(Math.abs(movedPct), 1)} farther ${wayOf(movedPct)} than the other inner rounds (allowed ${percent(allowedPct, 1)}).`,
		likely: 'the gauge, the deck or a lead shifted',
		next: () => 'the technician finds what moved, then probes again',
	},
	'tilt-explains': {
		brief: 'The tilt of the deck makes the pull.',
		found: ({radii, shares: made, goodPct}) =>
			`The pull is ${pulls(radii)} (good to ${plainNumber(goodPct)} %); the tilt alone makes ${shares(made)}.`,
		likely: 'the tilt makes the pull',
		next: () => 'the owner levels the armboard, then probes again',
	},
	'not-level': {
		brief: 'The deck is not level. Its tilt is in every reading.',
		found: ({shares: made, allowedPct, own}) => {
			const without = listed(own.map((one) => `${forceWithWay(one.ownPullPct, '%', 1)} at ${mm(one.radiusMm)}`));
			return `The tilt alone makes ${shares(made)} (allowed ${plainNumber(allowedPct)} %)${own.length === 0 ? '' : `; without it the pull would be ${without}`}.`;
		},
		likely: 'the tilt is in every reading',
		next: () => 'the owner levels the armboard, then probes again',
	},
	'pull-and-friction': {
		brief: 'The arm sticks, and a pull pushes it too.',
		found: ({radii, pullUsablePct, bandUsablePct}) =>
			`The pull is ${pulls(radii)} (usable to ${plainNumber(pullUsablePct)} %); the friction is ${bands(radii)} (usable to ${plainNumber(bandUsablePct)} %).`,
		likely: 'two causes at once; one single reading shows neither',
		next: ({finestPct}) =>
			`the technician probes one radius again with the leads dressed, the guard clear and hands off the deck; no change: send the arm to its maker; until then set the bias to ± ${percent(finestPct, 1)} and no finer`,
	},
	'constant-pull': {
		brief: 'The same pull pushes the arm at both ends.',
		found: ({radii, goodPct}) =>
			`The pull is about the same at both ends: ${pulls(radii)} (good to ${plainNumber(goodPct)} %).`,
		likely: "the gauge's zero, bias not off, or a lead twisted at the bearing",
		next: ({isTurned}) =>
			isTurned
				? 'the technician looks whether the bias is off, then dresses the leads; inside the arm it is work for the maker'
				: 'the technician takes one turned round, looks whether the bias is off, then dresses the leads; inside the arm it is work for the maker',
	},
	'spring-pull': {
		brief: 'The pull changes over the record, like a spring.',
		found: (values) => `${changed(values)}, and it pushes back like a spring${neutral(values.neutralRadiusMm)}.`,
		likely: 'the leads act as a spring',
		next: () => 'the technician dresses the leads so that they hang slack at mid-record',
	},
	'runaway-pull': {
		brief: 'The pull grows over the record and runs away.',
		found: (values) =>
			`${changed(values)}, and the farther the arm goes, the more it pushes${neutral(values.neutralRadiusMm)}.`,
		likely: 'a loop of the leads going over centre, bias still on, or a magnet',
		next: () => 'the technician looks along the whole swing for what pulls',
	},
	friction: {
		brief: 'The arm sticks everywhere.',
		found: ({radii, usablePct}) => `The friction is ${bands(radii)} (usable to ${plainNumber(usablePct)} %).`,
		likely: 'dirt, preload, dried oil, damping left in, or a lead that rubs',
		next: () =>
			"the technician looks at the damping, then probes one radius again with the leads dressed, the guard clear and hands off the deck; no change: send the arm to its maker, and do not adjust a bearing without the maker's procedure",
	},
	'friction-local': {
		brief: 'The arm sticks more at one end.',
		found: ({radii, differencePct, leastPct}) =>
			`The friction is ${bands(radii)}; it differs by ${percent(differencePct, 1)} (allowed ${plainNumber(leastPct)} %).`,
		likely: 'a rub, a damaged race, a lead that touches there, or the linkage of the stop',
		next: () => 'the technician watches leads, lifter, rest and linkage along the whole swing',
	},
	'no-pattern': {
		brief: 'Beyond limits, but no single cause shows.',
		found: ({radii, pullUsablePct, bandUsablePct}) =>
			`Beyond limits, but no single cause shows: pull ${pulls(radii)} (usable to ${plainNumber(pullUsablePct)} %), friction ${bands(radii)} (usable to ${plainNumber(bandUsablePct)} %).`,
		likely: '',
		next: () =>
			'the technician takes rounds at one more radius, between the two, with the leads dressed, the guard clear and hands off the deck; no cause: send the arm to its maker with the figures',
	},
	'bias-idle': {
		brief: 'The bias device does nothing.',
		found: ({radiiMm, leastPct}) => `The bias changes the reading by less than ${leastPct} % at ${at(radiiMm)}.`,
		likely: 'its weight is not on, its thread is not hooked, or a stop is in the way',
		next: () => 'the technician locks the arm, guard on, looks at the device and probes again',
	},
	'bias-off-scale': {
		brief: 'The bias drives a reading off the scale.',
		found: ({radiiMm, topOfScale, unit}) =>
			`With the bias on, a reading at ${at(radiiMm)} reached the end of the scale, ${top(topOfScale, unit)}: no figure there.`,
		likely: 'too much bias, or a drag assumed too high',
		next: () => 'the technician sets less bias and probes again',
	},
	'bias-rubs': {
		brief: 'The bias device adds friction.',
		found: ({onPct, offPct, radiusMm, leastPct}) =>
			`With the bias on the friction is ${percent(onPct, 1)} at ${mm(radiusMm)}, with it off ${percent(offPct, 1)} at most (allowed ${plainNumber(leastPct)} % more).`,
		likely: 'a thread or pulley that drags',
		next: () => 'the technician cleans and aligns thread and pulley, then probes again',
	},
	'bias-uneven': {
		brief: 'The bias does not fit the whole record.',
		found: ({left, allowedPct}) =>
			`The best setting still leaves ${listed(left.map(({radiusMm, leftPct}) => `${forceWithWay(leftPct, '%', 1)} at ${mm(radiusMm)}`))} (allowed ${plainNumber(allowedPct)} %).`,
		likely: 'a lever that is not level over the whole record, or the angle of the thread',
		next: () =>
			'the technician changes thread or pulley, as far as its maker allows, until the lever is about level at every radius',
	},
	'playable-with-bias': {
		brief: 'Bias can make up for the pull.',
		found: ({radii, worstAfterPct, goodPct, worstAfterDragPct, drag, usablePct}) =>
			`The pull is ${pulls(radii)}; the best bias setting leaves ${percent(worstAfterPct, 1)} at most (good to ${plainNumber(goodPct)} %), or ${percent(worstAfterDragPct, 1)} with a drag ${drag} less or more (usable to ${plainNumber(usablePct)} %).`,
		likely: 'a steady pull',
		next: () => 'the technician sets the bias so; the arm may be played, and the pull cured later',
	},
	undecided: {
		brief: 'A figure is undecided.',
		found: ({open, pullLimits, bandLimits}) =>
			`Undecided is ${listed(open.map((one) => `${one.figure === 'pull' ? `the pull ${pullAt(one.at)}` : `the friction ${bandAt(one.at)}`} (${sureFirst(one.atWorst)})`))}; pull ${limits(pullLimits)}; friction ${limits(bandLimits)}.`,
		likely: '',
		next: ({open}) =>
			`the technician decides it: ${open.map((one) => `${one.figure === 'pull' ? 'pull' : 'friction'} at ${mm(one.at.radiusMm)}: ${wayOn(one)}`).join('; ')}`,
	},
	sound: {
		brief: 'The arm swings freely.',
		found: ({radii, atWorst, pullLimits, bandLimits}) =>
			`The arm is ${atWorst === 'good' ? 'good' : 'usable or better'}: pull ${pulls(radii)} (${limits(pullLimits)}), friction ${bands(radii)} (${limits(bandLimits)}).`,
		likely: '',
		next: () => 'the owner leaves the arm as it is',
	},
};
