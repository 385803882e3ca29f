import type {ProblemValues, SpanMm, UnconfirmedStep, WayId} from '../../procedure/problem.js';
import type {Sentences} from '../../said.js';
import {decimalsApart} from '../../units.js';
import {inDegrees, inUnit, mm, percent, plainNumber, rounded} from '../numbers.js';

/** What is left to do where a line of a list is answered with no. */
const lineLeft = {
	safe: {
		amplifier: 'Switch the amplifier off, or mute it, before you handle the stylus.',
		platter: 'Block the platter: the gauge will stand on it.',
		mains: 'Unplug the deck: moving the arm can start it.',
		rest: 'Put the arm in its rest and lay the stylus guard ready.',
		record: 'Take record, clamp and weight off: the gauge stands there.',
		lock: 'Lock the arm in its rest. No lock: tie it there softly.',
	},
	wires: {
		upright: 'Set its sideways balance first, the way its maker says; never press the arm down.',
		leads: 'Lay the leads as they are used and clear the arm.',
		lifter: 'Lower the lifter until daylight shows under the tube.',
		rest: 'Turn the clip of the rest out of the way.',
		screws: 'Tighten them by hand: arm locked, stylus guarded, headshell held.',
		air: 'Switch them off and wait until the air stands still.',
		static: 'Touch bare earthed metal, and brush the mat.',
	},
} as const satisfies Record<ProblemValues['lines-left']['list'], Readonly<Record<string, string>>>;

const notConfirmed: Readonly<Record<UnconfirmedStep, string>> = {
	'damping-off': 'With damping in, the readings show the fluid and not the arm.',
	'bias-off': "While the bias device pulls, its force cannot be told from the arm's own.",
	'bias-on': 'With the bias off there is nothing to read here.',
	'arm-afloat': 'An arm that sinks or rises is not afloat: its weight gets into the push.',
	'lifter-clear': 'A lifter that touches the arm holds it, and shows as friction.',
	'first-swing': 'An arm that does not swing freely now is not ready to probe.',
	'probe-end': 'Lock the arm in its rest before you read on.',
	'back-lock': 'Lock the arm before anything else is touched.',
	'back-gauge': 'The gauge still stands under the arm.',
	'back-mat': 'The mat is still off.',
	'back-damping': 'The damping is not restored yet.',
	'back-blocks': 'A block or a tie that stays holds the platter or the arm.',
	'back-leads': 'A cartridge without its leads does not play.',
	'back-bias': 'The bias device is still out of action.',
	'back-height': 'The arm is not at its playing height yet.',
	'back-weight': 'The counterweight is not set for play yet.',
	'back-guard': 'With the guard on, its mass is in the tracking force and the deck cannot play.',
	'back-level': 'Level the deck again.',
	'back-upright': 'An arm that leans sideways plays one channel louder.',
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
		`With these lengths the stylus reaches only radii ${reach(reached)}: it never crosses the record.`,
	'no-such-arm': () => 'No arm of this effective length has these two null radii.',
	'pivot-not-believable': ({pivotMm, leastMm, mostMm}) =>
		`The pivot distance would come out as ${inUnit(pivotMm, 'mm')}; ${plainNumber(leastMm)} to ${mm(mostMm)} is believable.`,
	'offset-not-known': () =>
		'One null radius says where the pivot is only together with the offset angle, which is not known.',
	'radius-out-of-reach': ({radiusMm, ...reached}) =>
		`The stylus does not reach a radius of ${inUnit(radiusMm, 'mm')}: this arm reaches ${reach(reached)}.`,
	'outer-not-larger': ({outerMm, innerMm}) =>
		`The outer radius (${inUnit(outerMm, 'mm')}) must be larger than the inner one (${inUnit(innerMm, 'mm')}).`,
	'radius-taken': ({radiusMm}) => `There is a probe at ${inUnit(radiusMm, 'mm')} already; choose another radius.`,
	'stop-takes-hold': ({leastMm}) =>
		`The automatic stop takes hold of the arm inside ${mm(leastMm)}; choose ${mm(leastMm)} or more.`,
	'middle-not-between': ({innerMm, outerMm}) =>
		`The middle radius must lie between the inner one (${inUnit(innerMm, 'mm')}) and the outer one (${inUnit(outerMm, 'mm')}).`,
	'percent-of-nothing': () => 'A floating arm carries nothing, so this gauge must read a force.',
	'low-force-too-high': () => 'The lowest force of the range is above the playing force.',
	'high-force-too-low': () => 'The highest force of the range is below the playing force.',
	'mat-meets-guard': () => 'With the mat on, a guard this deep would touch it.',
	'level-read-once': () => "One reading alone does not pass: the level's own error may be larger than the tilt.",
	'leans-at-once': ({readDeg, allowedDeg}) =>
		`${inDegrees(readDeg, 2)} is too much: ${plainNumber(allowedDeg)}° is allowed, and no level is that far off by itself.`,
	'tilt-too-much': ({sharePct, allowedPct}) =>
		`The tilt alone pushes the stylus by ${percent(sharePct, decimalsApart(sharePct, allowedPct, 2))}; ${plainNumber(allowedPct)} % is allowed.`,
	'deck-leans': ({leanDeg, allowedDeg}) =>
		`The deck leans by ${inDegrees(leanDeg, decimalsApart(leanDeg, allowedDeg, 2))}; ${plainNumber(allowedDeg)}° is allowed.`,
	'guard-mass-not-known': () => 'The guard was left out and its mass is not known, so the carried force is unknown.',
	'weigh-with-guard': () => 'Put the guard on and weigh again, without zeroing the scale on it.',
	'force-range-not-known': ({carriedMn}) =>
		`The cartridge's range is not known, so nobody can say whether ${inUnit(carriedMn, 'gf')} is safe for it.`,
	'force-outside-range': ({carriedMn, side, lowMn, highMn}) =>
		`The gauge would carry ${inUnit(carriedMn, 'gf')}, ${side} the cartridge's range of ${inUnit(lowMn, 'gf')} to ${inUnit(highMn, 'gf')}.`,
	'force-off-target': ({carriedMn, playingMn, offPct, allowedPct}) =>
		`${inUnit(carriedMn, 'gf')} is ${percent(Math.abs(offPct), decimalsApart(offPct, allowedPct, 0))} from the playing force of ${inUnit(playingMn, 'gf')}; ${plainNumber(allowedPct)} % is allowed. Was the guard left out, or the scale zeroed on it? Set it anew.`,
	'stylus-height': ({stylusMm, side, lowMm, highMm}) =>
		`${mm(stylusMm)} is too ${side}: the stylus should stand ${plainNumber(lowMm)} to ${mm(highMm)} above the surface.`,
	'guard-too-near': ({guardMm}) =>
		`The guard's underside is only ${rounded(guardMm, 1)} mm above the surface; more than 0.5 mm is needed.`,
	'closing-off-scale': () =>
		'The closing round is off scale, though the inner rounds were not: something moved. Probe again.',
	'closing-moved': ({movedPct}) =>
		`Something moved: the closing round is ${percent(Math.abs(movedPct), 2)} away from the inner rounds. Probe again.`,
	'not-weighed': () => 'It was not weighed as played.',
	'playing-force-off': ({weighedMn, playingMn, offPct, allowedPct}) => {
		const size = percent(Math.abs(offPct), decimalsApart(Math.abs(offPct), allowedPct, 1));
		return `${inUnit(weighedMn, 'gf')} is ${size} ${offPct > 0 ? 'more' : 'less'} than the playing force of ${inUnit(playingMn, 'gf')}; within ${plainNumber(allowedPct)} % is wanted.`;
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
	'correct-middle': 'correct the middle radius',
	'correct-lowest': 'correct the lowest force',
	'correct-highest': 'correct the highest force',
	'correct-playing': 'correct the playing force',
	'correct-mount': 'it is not pushed by hand',
	'reads-mn': 'it reads millinewtons (mN)',
	'reads-grams': 'it reads grams (gram-force)',
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
	'weighed-guarded': 'done: guard on, scale not zeroed',
	'weighed-without': 'the guard was not on, or the scale was zeroed on it',
	'add-guard-mass': "add the guard's known mass instead",
	'tick-again': 'done now: tick again',
	'probe-anew': 'probe again from the start: a new series',
	'do-now': 'do it now, then confirm',
	'switch-on': 'switch it on now, then confirm',
};
