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
	`The side pull is ${pulls(radii)}: without the tilt it changes by ${percent(differencePct, 1)}, where half the good limit is ${plainNumber(leastPct)} %`;
const neutral = (radiusMm: number | null): string =>
	radiusMm === null ? '' : ` (neutral at ${mm(Math.round(radiusMm))})`;

const wayOn = ({wanted, atWorst}: OpenFigure): string => {
	if (wanted === 'three-rounds') return 'fewer than three rounds as used say too little: take three';
	if (wanted === 'agreement') return 'the rounds do not agree, so take them again or strike the odd one out';
	return wouldDecideIt(wanted, atWorst);
};

/** What was found, in short and in full, its likely cause and what to do next, by code. */
export const findings: {readonly [Code in FindingCode]: FindingWords<FindingValues[Code]>} = {
	'off-scale': {
		brief: 'A reading ran off the scale: no figure there.',
		found: ({radiiMm, topOfScale, unit}) =>
			`At ${at(radiiMm)} a reading reached the top of the scale, ${top(topOfScale, unit)}, so there is no figure.`,
		likely: 'the level is wrong, the bias is still on, or the arm has a fault',
		next: () =>
			'after a look at bias, level and leads the technician first repeats at one radius with the leads dressed anew, the guard not touching and the deck undisturbed; if it stays so the arm goes to its maker',
	},
	moved: {
		brief: 'Something moved while the rounds were taken.',
		found: ({movedPct, allowedPct}) =>
			`The closing round reads ${percent(Math.abs(movedPct), 1)} farther ${wayOf(movedPct)} than the rounds before it (up to ${percent(allowedPct, 1)} is no change).`,
		likely: 'the gauge, the deck or a lead shifted meanwhile',
		next: () => 'the technician finds what moved, then probes again',
	},
	'tilt-explains': {
		brief: 'The tilt of the deck makes the pull.',
		found: ({radii, shares: made, goodPct}) =>
			`The side pull is ${pulls(radii)} (good to ${plainNumber(goodPct)} %), and the tilt alone makes ${shares(made)}.`,
		likely: 'the tilt makes the pull',
		next: () => 'the owner levels the armboard, then probe again',
	},
	'not-level': {
		brief: 'The deck is not level: the tilt is in every reading.',
		found: ({shares: made, allowedPct, own}) => {
			const without = listed(own.map((one) => `${forceWithWay(one.ownPullPct, '%', 1)} at ${mm(one.radiusMm)}`));
			return `The deck is not level: the tilt alone makes ${shares(made)} (allowed ${plainNumber(allowedPct)} %)${own.length === 0 ? '' : `; without it the pull would be ${without}`}.`;
		},
		likely: 'the tilt is part of every reading',
		next: () => 'the owner levels the armboard, then probe again',
	},
	'pull-and-friction': {
		brief: 'Friction holds the arm, and a pull pushes it at once.',
		found: ({radii, pullUsablePct, bandUsablePct}) =>
			`The side pull is ${pulls(radii)} (usable to ${plainNumber(pullUsablePct)} %) and the hold band ${bands(radii)} (usable to ${plainNumber(bandUsablePct)} %).`,
		likely:
			'friction and a pull at once: the arm reads differently wherever it rests, and neither shows in one reading',
		next: ({finestPct}) =>
			`the technician first repeats at one radius with the leads dressed anew, the guard not touching and the deck undisturbed; if it stays so the arm goes to its maker, and until then bias can be set no finer than half the band, ± ${percent(finestPct, 1)}`,
	},
	'constant-pull': {
		brief: 'The same pull pushes the arm at both ends.',
		found: ({radii, goodPct}) =>
			`The side pull is much the same at both ends, ${pulls(radii)} (good to ${plainNumber(goodPct)} %).`,
		likely: "the gauge's zero, a bias that is not off, or a twist of the lead at the bearing",
		next: ({isTurned}) =>
			isTurned
				? 'the technician checks that the bias is off, then dresses the leads as far as the maker allows; inside the arm it is work for the maker'
				: 'the technician turns the gauge end for end for one round, checks that the bias is off, then dresses the leads as far as the maker allows; inside the arm it is work for the maker',
	},
	'spring-pull': {
		brief: 'The pull changes over the record and pushes back, like a spring.',
		found: (values) => `${changed(values)}, and it pushes back like a spring${neutral(values.neutralRadiusMm)}.`,
		likely: 'the wire acts as a spring',
		next: () => 'the technician dresses the leads, as far as the maker allows, so that they hang slack at mid-record',
	},
	'runaway-pull': {
		brief: 'The pull grows over the record and runs away from its neutral place.',
		found: (values) => `${changed(values)}, and it runs away from its neutral place${neutral(values.neutralRadiusMm)}.`,
		likely: 'a loop of wire going over centre, a bias still acting, or a magnet',
		next: () => 'the technician looks along the whole swing for what takes hold',
	},
	friction: {
		brief: 'Friction holds the arm everywhere.',
		found: ({radii, usablePct}) => `The hold band is ${bands(radii)} (usable to ${plainNumber(usablePct)} %).`,
		likely: 'dirt, preload, dried oil, damping left in, or a lead rubbing',
		next: () =>
			"the technician first repeats at one radius with the leads dressed anew, the guard not touching and the deck undisturbed, and rules out damping and leads; if it stays so the arm goes to its maker, for bearings are not adjusted without the maker's procedure",
	},
	'friction-local': {
		brief: 'Friction holds the arm more at one end than at the other.',
		found: ({radii, differencePct, leastPct}) =>
			`The hold band is ${bands(radii)}: it differs by ${percent(differencePct, 1)}, where half the good limit is ${plainNumber(leastPct)} %.`,
		likely: 'a local rub, a damaged race, a lead that touches at one end, or the stop or return linkage',
		next: () => 'the technician watches leads, lifter, rest and linkage along the whole swing',
	},
	'no-pattern': {
		brief: 'It is beyond limits, and no single cause shows.',
		found: ({radii, pullUsablePct, bandUsablePct}) =>
			`Beyond limits, but no single cause shows: side pull ${pulls(radii)} (usable to ${plainNumber(pullUsablePct)} %), hold band ${bands(radii)} (usable to ${plainNumber(bandUsablePct)} %).`,
		likely: '',
		next: () =>
			'the technician takes rounds at one more radius between, with the leads dressed anew, the guard not touching and the deck undisturbed; if no cause shows then, the arm goes to its maker with the figures',
	},
	'bias-idle': {
		brief: 'The bias device does nothing.',
		found: ({radiiMm, leastPct}) =>
			`With the bias on, less than ${leastPct} % more was read at ${at(radiiMm)} than without it.`,
		likely: 'the device does nothing: its weight is not on, its thread is not hooked, or a stop is in its way',
		next: () => 'the technician looks at the device, arm locked and guard on, then probes again',
	},
	'bias-off-scale': {
		brief: 'The bias runs a reading off the scale.',
		found: ({radiiMm, topOfScale, unit}) =>
			`With the bias on, a reading at ${at(radiiMm)} reached the top of the scale, ${top(topOfScale, unit)}, so there is no figure.`,
		likely: 'too strong a bias, or a drag that is assumed too high',
		next: () => 'the technician sets less bias and probes again',
	},
	'bias-rubs': {
		brief: 'The bias device adds friction.',
		found: ({onPct, offPct, radiusMm, leastPct}) =>
			`With the bias on the hold band is ${percent(onPct, 1)} at ${mm(radiusMm)}, without it at most ${percent(offPct, 1)}: the device adds friction (half the good limit is ${plainNumber(leastPct)} %).`,
		likely: 'a thread or pulley that drags',
		next: () => 'the technician cleans and aligns thread and pulley, and probes again',
	},
	'bias-uneven': {
		brief: 'The bias does not fit over the whole record.',
		found: ({left, allowedPct}) =>
			`At its best setting the bias still leaves ${listed(left.map(({radiusMm, leftPct}) => `${forceWithWay(leftPct, '%', 1)} at ${mm(radiusMm)}`))} (allowed: ${plainNumber(allowedPct)} %): its shape over the record does not fit.`,
		likely: 'a lever that does not lie about level over the whole record, or the angle of the thread',
		next: () =>
			'the technician makes the thread longer or shorter, or shifts its pulley as far as its maker allows, until the lever lies about level at every radius read',
	},
	'playable-with-bias': {
		brief: 'Bias can carry the pull.',
		found: ({radii, worstAfterPct, goodPct, worstAfterDragPct, drag, usablePct}) =>
			`The side pull is ${pulls(radii)}, yet bias can carry it: at its best setting at most ${percent(worstAfterPct, 1)} is left over the record (good to ${plainNumber(goodPct)} %), and ${percent(worstAfterDragPct, 1)} were the drag ${drag} less or more (usable to ${plainNumber(usablePct)} %).`,
		likely: 'a steady pull',
		next: () => 'the technician sets the bias so, it may be played, and the pull is cured at leisure',
	},
	undecided: {
		brief: 'Something is not decided.',
		found: ({open, pullLimits, bandLimits}) =>
			`Not decided: ${open.map((one) => `${one.figure === 'pull' ? `side pull ${pullAt(one.at)}` : `hold band ${bandAt(one.at)}`} is ${sureFirst(one.atWorst)}`).join('; ')} (pull ${limits(pullLimits)}; band ${limits(bandLimits)}).`,
		likely: '',
		next: ({open}) =>
			`the technician goes on: ${open.map((one) => `${one.figure === 'pull' ? 'side pull' : 'hold band'} at ${mm(one.at.radiusMm)}: ${wayOn(one)}`).join('; ')}`,
	},
	sound: {
		brief: 'The arm swings freely.',
		found: ({radii, atWorst, pullLimits, bandLimits}) =>
			`The arm is ${atWorst === 'good' ? 'good' : 'usable at worst'}: side pull ${pulls(radii)} (${limits(pullLimits)}), hold band ${bands(radii)} (${limits(bandLimits)}).`,
		likely: '',
		next: () => 'the owner may leave it as it is',
	},
};
