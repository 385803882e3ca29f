import type {SetBy} from '../../../procedure/bias-devices.js';
import type {BiasFitFigures} from '../../../results/figures-types.js';
import {inUnit, percent, plainNumber, rounded} from '../../numbers.js';

type BestSetting = {
	readonly fit: BiasFitFigures;
	readonly setBy: SetBy;
	/** What hangs on it now, where that is known. */
	readonly weightG: number | undefined;
};

const times = (factor: number): string => `${rounded(factor, factor < 1 ? 2 : 1)} times`;

/** What the device is to be set to, in its own words: a sentence, and where there is another way to do it, one more. */
function doNow({fit: {factor}, setBy, weightG}: BestSetting): string {
	switch (setBy) {
		case 'weight':
			return weightG === undefined
				? `Do this now: make the bias ${times(factor)} as strong, by weight or notch.`
				: `Do this now: hang ${inUnit(weightG * factor, 'g', 1)} on, in place of ${inUnit(weightG, 'g', 1)}. If you have no such weight, take the notch that makes the bias ${times(factor)} as strong.`;
		case 'turning':
			return `Do this now: turn the bias ${factor > 1 ? 'up' : 'down'}, to ${times(factor)} what it is now.`;
		case 'dial':
		case 'nothing':
			return `Do this now: set the bias to ${times(factor)} what it is now.`;
	}
}

/** What to do with the device next, or what a setting that was kept leaves. */
export const advice = {
	leaveItSo: ({frictionFloorPct}: BiasFitFigures) =>
		`Leave it so. Friction hides anything smaller than ${percent(frictionFloorPct, 1)}.`,
	noBetterStrength: 'More or less bias does no better.',
	wrongShape: ({worstAfterPct}: BiasFitFigures) =>
		`Even at its best setting this device leaves ${percent(worstAfterPct, 1)}. It does not fit the whole record.`,
	/** Before hands go to the device. */
	lockFirst: 'First lock the arm, guard on. Leave the counterweight alone.',
	bestWithoutBias: 'Do this now: take the bias off. The arm pushes outward enough.',
	bestSetting: doNow,
	/** The most that was looked at. */
	tooWeak: ({times: most}: {readonly times: number}) =>
		`The bias is far too weak: even ${plainNumber(most)} times as much is not enough.`,
	leftAfter: ({worstAfterPct, rmsAfterPct, frictionFloorPct}: BiasFitFigures) =>
		`With the best setting at most ${percent(worstAfterPct, 1)} is left over, typically ${percent(rmsAfterPct, 1)}. Friction hides anything smaller than ${percent(frictionFloorPct, 1)}.`,
	notTaken: ({fit, isWithoutBias}: {readonly fit: BiasFitFigures; readonly isWithoutBias: boolean}) =>
		`${isWithoutBias ? 'Without bias' : `With ${times(fit.factor)} this bias`}, no more than ${percent(fit.worstAfterPct, 1)} would be left over. Friction hides anything smaller than ${percent(fit.frictionFloorPct, 1)}.`,
	otherDrags: ({best}: {readonly best: readonly {readonly drag: number; readonly factor: number}[]}) =>
		`The drag is assumed. ${best.map(({drag, factor}) => `With a drag of ${rounded(drag, 2)} the right bias is ${rounded(factor, 2)} times the bias as set.`).join(' ')} Setting the bias finer gains nothing.`,
	cureFirst: 'Better: first do what the verdict says, then set the bias.',
};
