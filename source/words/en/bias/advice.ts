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
				? `make the bias pull ${times(factor)} as much, by its weight or notch`
				: `bias weight ${inUnit(weightG * factor, 'g', 1)} instead of ${inUnit(weightG, 'g', 1)} (or ${times(factor)} by its notch)`;
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
		`That is under the friction floor of ${percent(frictionFloorPct, 1)}: leave it so.`,
	noBetterStrength: 'No other strength does better.',
	wrongShape: ({worstAfterPct}: BiasFitFigures) =>
		`No setting of this device can do better than ${percent(worstAfterPct, 1)}: its pull has the wrong shape over the record.`,
	/** Before hands go to the device. */
	lockFirst: 'First lock the arm, guard on. The counterweight stays as it is.',
	bestWithoutBias: 'Do this now: take the bias off. The arm pulls outward enough by itself.',
	bestSetting: (best: BestSetting) => `Do this now: ${toSet(best)}.`,
	/** The most that was looked at. */
	tooWeak: ({times: most}: {readonly times: number}) =>
		`It is far too weak: even ${plainNumber(most)} times is not enough.`,
	leftAfter: ({worstAfterPct, rmsAfterPct, frictionFloorPct}: BiasFitFigures) =>
		`Best setting: at most ${percent(worstAfterPct, 1)} is left over the record (root mean square ${percent(rmsAfterPct, 1)}, friction floor ${percent(frictionFloorPct, 1)}).`,
	notTaken: ({fit, isWithoutBias}: {readonly fit: BiasFitFigures; readonly isWithoutBias: boolean}) =>
		`Friction floor ${percent(fit.frictionFloorPct, 1)}. Not taken: ${isWithoutBias ? 'no bias at all' : `about ${times(fit.factor)} its pull`}, which would leave ${percent(fit.worstAfterPct, 1)}.`,
	otherDrags: ({best}: {readonly best: readonly {readonly drag: number; readonly factor: number}[]}) =>
		`The drag is assumed. Best would be ${listed(best.map(({drag, factor}) => `${rounded(factor, 2)} times with a drag of ${rounded(drag, 2)}`))}: nothing finer than that is worth setting.`,
	cureFirst: 'Better: first do what stands first at the verdict, then set the bias.',
};
