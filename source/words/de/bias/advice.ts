import type {SetBy} from '../../../procedure/bias-devices.js';
import type {BiasFitFigures} from '../../../results/figures-types.js';
import {inUnit, listed, percent, plainNumber, rounded} from '../../numbers.js';

type BestSetting = {
	readonly fit: BiasFitFigures;
	readonly setBy: SetBy;
	/** What hangs on it now, where that is known. */
	readonly weightG: number | undefined;
};

const times = (factor: number): string => `${rounded(factor, factor < 1 ? 2 : 1)} times`;

/** What the device is to be set to, in its own words. */
function toSet({fit: {factor}, setBy, weightG}: BestSetting): string {
	switch (setBy) {
		case 'weight':
			return weightG === undefined
				? `set the bias to ${times(factor)} as much, by weight or notch`
				: `hang ${inUnit(weightG * factor, 'g', 1)} on in place of ${inUnit(weightG, 'g', 1)} (or ${times(factor)} as much by its notch)`;
		case 'turning':
			return `turn the bias ${factor > 1 ? 'up' : 'down'}, to ${times(factor)} what it is now`;
		case 'dial':
		case 'nothing':
			return `set the bias to ${times(factor)} what it is now`;
	}
}

/** What to do with the device next, or what a setting that was kept leaves. */
export const advice = {
	leaveItSo: ({frictionFloorPct}: BiasFitFigures) =>
		`Leave it so: friction hides all below ${percent(frictionFloorPct, 1)}.`,
	noBetterStrength: 'No stronger or weaker bias does better.',
	wrongShape: ({worstAfterPct}: BiasFitFigures) =>
		`This device leaves ${percent(worstAfterPct, 1)} at best. It does not fit the whole record.`,
	/** Before hands go to the device. */
	lockFirst: 'First lock the arm, guard on. Leave the counterweight alone.',
	bestWithoutBias: 'Do this now: take the bias off. The arm pushes outward enough.',
	bestSetting: (best: BestSetting) => `Do this now: ${toSet(best)}.`,
	/** The most that was looked at. */
	tooWeak: ({times: most}: {readonly times: number}) =>
		`The bias is far too weak: even ${plainNumber(most)} times as much is not enough.`,
	leftAfter: ({worstAfterPct, rmsAfterPct, frictionFloorPct}: BiasFitFigures) =>
		`Left over at best: ${percent(worstAfterPct, 1)} at most, ${percent(rmsAfterPct, 1)} typically. Friction hides ${percent(frictionFloorPct, 1)}.`,
	notTaken: ({fit, isWithoutBias}: {readonly fit: BiasFitFigures; readonly isWithoutBias: boolean}) =>
		`Friction hides ${percent(fit.frictionFloorPct, 1)}. ${isWithoutBias ? 'No bias' : `${times(fit.factor)} this bias`} would leave ${percent(fit.worstAfterPct, 1)}.`,
	otherDrags: ({best}: {readonly best: readonly {readonly drag: number; readonly factor: number}[]}) =>
		`The drag is assumed. Best is ${listed(best.map(({drag, factor}) => `${rounded(factor, 2)} times this bias for drag ${rounded(drag, 2)}`))}. Set no finer than that.`,
	cureFirst: 'Better: first do what the verdict says, then set the bias.',
};
