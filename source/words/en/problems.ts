import type {ProblemValues, SpanMm, UnconfirmedStep, WayId} from '../../procedure/problem.js';
import type {Sentences} from '../../said.js';
import {decimalsApart} from '../../units.js';
import {inDegrees, inUnit, mm, percent, plainNumber, rounded} from '../numbers.js';

/** What is left to do where a line of a list is answered with no. */
const lineLeft = {
	safe: {
		amplifier: 'Switch the amplifier off or mute it.',
		platter: 'Block the platter.',
		mains: 'Unplug the deck: moving the arm can start it.',
		rest: 'Put the arm in its rest. Lay the guard ready.',
		record: 'Take record, clamp and weight off the platter.',
		lock: 'Lock the arm in its rest. No lock: tie it softly.',
	},
	wires: {
		upright: 'Set the arm upright the way its maker says. Never press it down.',
		leads: 'Lay the leads as they are used, clear of the arm.',
		lifter: 'Lower the lifter until light shows under the tube.',
		rest: 'Turn the clip of the rest away.',
		screws: 'Lock the arm, guard on. Hold the headshell and tighten by hand.',
		air: 'Take the lid off. Switch fan and heating off. Wait for still air.',
		static: 'Touch bare earthed metal, and brush the mat.',
	},
} as const satisfies Record<ProblemValues['lines-left']['list'], Readonly<Record<string, string>>>;

const notConfirmed: Readonly<Record<UnconfirmedStep, string>> = {
	'damping-off': 'With the damping in you measure the fluid, not the arm.',
	'bias-off': 'With the bias on you measure bias and arm together.',
	'bias-on': 'Put the bias on first: this step reads it.',
	'arm-afloat': 'An arm that sinks or rises is not afloat. Its weight spoils the reading.',
	'lifter-clear': 'A lifter that touches the arm reads as friction.',
	'first-swing': 'Swing and nudge the arm first.',
	'probe-end': 'Lock the arm in its rest first.',
	'back-lock': 'Lock the arm before you touch anything else.',
	'back-gauge': 'The gauge still stands under the arm.',
	'back-mat': 'The mat is still off.',
	'back-damping': 'The damping is not back yet.',
	'back-blocks': 'A block or tie still holds platter or arm.',
	'back-leads': 'The cartridge does not play without its leads.',
	'back-bias': 'The bias is still off.',
	'back-height': 'The arm is not at its playing height yet.',
	'back-weight': 'The counterweight is not set for play yet.',
	'back-guard': 'The guard is still on: the deck cannot play.',
	'back-level': 'Level the deck again.',
	'back-upright': 'An arm that leans plays one channel louder.',
	'back-covers': 'The deck is not ready to play yet.',
};

const reach = ({leastMm, mostMm}: SpanMm): string => `from ${rounded(leastMm, 1)} to ${rounded(mostMm, 1)} mm`;

/** What a person reads of each problem. */
export const problems: Sentences<ProblemValues> = {
	'lines-left': ({list, lines}) => {
		const left: Readonly<Record<string, string>> = lineLeft[list];
		return lines.map((id) => left[id] ?? id).join(' ');
	},
	'not-confirmed': ({step}) => notConfirmed[step],
	'never-crosses-record': (reached) =>
		`With these lengths the stylus never crosses the record: it reaches radii ${reach(reached)}.`,
	'no-such-arm': () => 'No arm of this effective length has these two null radii.',
	'pivot-not-believable': ({pivotMm, leastMm, mostMm}) =>
		`That gives a pivot distance of ${inUnit(pivotMm, 'mm')}. Allowed: ${plainNumber(leastMm)} to ${mm(mostMm)}.`,
	'offset-not-known': () => 'One null radius is not enough: the offset angle is not known.',
	'radius-out-of-reach': ({radiusMm, ...reached}) =>
		`The stylus does not reach ${inUnit(radiusMm, 'mm')}. It reaches radii ${reach(reached)}.`,
	'outer-not-larger': ({outerMm, innerMm}) =>
		`The outer radius (${inUnit(outerMm, 'mm')}) must be larger than the inner one (${inUnit(innerMm, 'mm')}).`,
	'radius-taken': ({radiusMm}) => `${inUnit(radiusMm, 'mm')} is probed already. Choose another radius.`,
	'stop-takes-hold': ({leastMm}) =>
		`The automatic stop holds the arm inside ${mm(leastMm)}. Choose ${mm(leastMm)} or more.`,
	'middle-not-between': ({innerMm, outerMm}) =>
		`The third radius must lie between the inner one (${inUnit(innerMm, 'mm')}) and the outer one (${inUnit(outerMm, 'mm')}).`,
	'percent-of-nothing': () => 'A floating arm has no tracking force to take percent of. Choose mN or grams.',
	'low-force-too-high': () => 'The lowest force of the range is above the playing force.',
	'high-force-too-low': () => 'The highest force of the range is below the playing force.',
	'mat-meets-guard': () => 'A guard this deep touches the mat.',
	'level-read-once': () => "One reading is not enough: the level's own error may be larger than the tilt.",
	'leans-at-once': ({readDeg, allowedDeg}) =>
		`${inDegrees(readDeg, 2)} is too much (allowed ${plainNumber(allowedDeg)}°). That is no error of the level.`,
	'tilt-too-much': ({sharePct, allowedPct}) =>
		`The tilt alone makes a pull of ${percent(sharePct, decimalsApart(sharePct, allowedPct, 2))} (allowed ${plainNumber(allowedPct)} %).`,
	'deck-leans': ({leanDeg, allowedDeg}) =>
		`The deck is tilted by ${inDegrees(leanDeg, decimalsApart(leanDeg, allowedDeg, 2))} (allowed ${plainNumber(allowedDeg)}°).`,
	'guard-mass-not-known': () =>
		'The guard was left out and its mass is not known. So the force on the gauge is not known.',
	'weigh-with-guard': () => 'Zero the empty scale, put the guard on and weigh again.',
	'force-range-not-known': ({carriedMn}) =>
		`Is ${inUnit(carriedMn, 'gf')} safe for the cartridge? Its range is not known.`,
	'force-outside-range': ({carriedMn, side, lowMn, highMn}) =>
		`The force on the gauge would be ${inUnit(carriedMn, 'gf')}, ${side} the cartridge's range of ${inUnit(lowMn, 'gf')} to ${inUnit(highMn, 'gf')}.`,
	'force-off-target': ({carriedMn, playingMn, offPct, allowedPct}) =>
		`${inUnit(carriedMn, 'gf')} is ${percent(Math.abs(offPct), decimalsApart(offPct, allowedPct, 0))} off the playing force of ${inUnit(playingMn, 'gf')} (allowed ${plainNumber(allowedPct)} %). Is the guard on? Was the scale empty when zeroed?`,
	'stylus-height': ({stylusMm, side, lowMm, highMm}) =>
		`The stylus is too ${side}, ${mm(stylusMm)} above the surface. Wanted: ${plainNumber(lowMm)} to ${mm(highMm)}.`,
	'guard-gap-off': ({guardMm, side, lowMm, highMm}) =>
		`The gap under the guard is ${inUnit(guardMm, 'mm', 1)}: too ${side === 'low' ? 'small' : 'large'}. Wanted: ${plainNumber(lowMm, 1)} to ${inUnit(highMm, 'mm', 1)}.`,
	'guard-too-near': ({guardMm}) =>
		`The gap under the guard is ${inUnit(guardMm, 'mm', 1)}: too small. Wanted: more than 0.5 mm.`,
	'closing-off-scale': () => 'Something moved: the closing round is off scale, the inner rounds were not. Probe again.',
	'closing-moved': ({movedPct}) =>
		`Something moved: the closing round is ${percent(Math.abs(movedPct), 2)} away from the inner rounds. Probe again.`,
	'not-weighed': () => 'The arm was not weighed as played.',
	'playing-force-off': ({weighedMn, playingMn, offPct, allowedPct}) => {
		const size = percent(Math.abs(offPct), decimalsApart(Math.abs(offPct), allowedPct, 1));
		return `${inUnit(weighedMn, 'gf')} is ${size} ${offPct > 0 ? 'more' : 'less'} than the playing force of ${inUnit(playingMn, 'gf')} (allowed ${plainNumber(allowedPct)} %).`;
	},
};

/** What a way out of a problem is called. */
export const ways: Readonly<Record<WayId, string>> = {
	'correct-length': 'correct the effective length',
	'correct-pivot': 'correct the pivot distance',
	'correct-null': 'correct the first null radius',
	'correct-other-null': 'correct the other null radius',
	'correct-inner': 'correct the inner radius',
	'correct-outer': 'correct the outer radius',
	'correct-third': 'correct the third radius',
	'correct-stop': 'correct the automatic stop',
	'correct-middle': 'correct the third radius',
	'correct-lowest': 'correct the lowest force',
	'correct-highest': 'correct the highest force',
	'correct-playing': 'correct the playing force',
	'correct-mount': 'correct how the gauge is held',
	'reads-mn': 'the gauge reads millinewtons (mN)',
	'reads-grams': 'the gauge reads grams (gram-force)',
	'measure-pivot': 'measure the pivot distance',
	'type-offset': 'type the offset angle',
	'from-both-nulls': 'work it out from both null radii',
	'set-height': 'set the height, then measure again',
	'take-mat-off': 'take the mat off',
	'level-again': 'level the armboard, then read it again',
	'turn-level': 'turn the level round and read it again',
	'weigh-now': 'weigh it now',
	'set-force': 'set the tracking force, weigh again',
	'set-force-guarded': 'set the tracking force with the guard on, weigh again',
	'type-range': "type the maker's range",
	'weigh-guarded': 'weigh again with the guard on',
	'type-guard-mass': "type the guard's mass",
	'weighed-guarded': 'done: guard on, scale not zeroed on it',
	'weighed-without': 'the guard was not on, or the scale was zeroed on it',
	'add-guard-mass': "add the guard's known mass",
	'tick-again': 'done now: look again',
	'probe-anew': 'probe again from the start: a new series',
	'do-now': 'do it now',
	'switch-on': 'put the bias on now',
};
