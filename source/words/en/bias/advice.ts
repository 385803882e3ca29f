import type {SetBy} from '../../../procedure/bias-devices.js';
import type {BiasFitFigures} from '../../../results/figures-types.js';
import {inUnit, listed, percent, plainNumber, rounded} from '../../numbers.js';

type BestSetting = {
	readonly fit: BiasFitFigures;
	readonly setBy: SetBy;
	/** What hangs on it now, where that is known. */
	readonly weightG: number | undefined;
	/** The most that was looked at, where even that is too weak. */
	readonly tooWeakAt: number | undefined;
};

const times = (factor: number): string => `${rounded(factor, factor < 1 ? 2 : 1)} times`;

/** What the device is to be set to, in its own words. */
function toSet({fit: {factor}, setBy, weightG}: BestSetting): string {
	switch (setBy) {
		case 'weight':
			return weightG === undefined
				? `Make it pull about ${times(factor)} as much by weight or notch`
				: `Its weight from ${inUnit(weightG, 'g', 1)} to ${inUnit(weightG * factor, 'g', 1)} (or as much by its notch)`;
		case 'turning':
			return `Turn it ${factor > 1 ? 'up' : 'down'}, to about ${times(factor)} its present pull`;
		case 'dial':
		case 'nothing':
			return `About ${times(factor)} the present setting`;
	}
}

const leftAfter = ({worstBeforePct, worstAfterPct, rmsAfterPct, frictionFloorPct}: BiasFitFigures): string =>
	`Left over the record: at most ${percent(worstAfterPct, 1)} instead of ${percent(worstBeforePct, 1)} (root mean square ${percent(rmsAfterPct, 1)}, friction floor ${percent(frictionFloorPct, 1)}).`;

/** What to do with the device next, or what a setting that was kept leaves. */
export const advice = {
	leaveItSo: ({worstBeforePct, frictionFloorPct}: BiasFitFigures) =>
		`At most ${percent(worstBeforePct, 1)} is left over the record: under the friction floor of ${percent(frictionFloorPct, 1)}. Leave it so.`,
	noBetterStrength: ({worstBeforePct}: BiasFitFigures) =>
		`At most ${percent(worstBeforePct, 1)} is left over the record; no other strength does better.`,
	wrongShape: ({worstAfterPct}: BiasFitFigures) =>
		`No setting of this device can do better than ${percent(worstAfterPct, 1)}: its pull has the wrong shape over the record.`,
	bestWithoutBias: (fit: BiasFitFigures) =>
		`Best without any bias: the arm pulls outward enough by itself. ${leftAfter(fit)}`,
	bestSetting: (best: BestSetting) =>
		`${toSet(best)}, then probe again.${best.tooWeakAt === undefined ? '' : ` It is far too weak: even ${plainNumber(best.tooWeakAt)} times is not enough.`} ${leftAfter(best.fit)}`,
	notTaken: ({fit, isWithoutBias}: {readonly fit: BiasFitFigures; readonly isWithoutBias: boolean}) =>
		`At most ${percent(fit.worstBeforePct, 1)} is left over the record (friction floor ${percent(fit.frictionFloorPct, 1)}). Not taken: ${isWithoutBias ? 'no bias at all' : `about ${times(fit.factor)} its pull`}, which would leave ${percent(fit.worstAfterPct, 1)}.`,
	otherDrags: ({best}: {readonly best: readonly {readonly drag: number; readonly factor: number}[]}) =>
		`The drag is assumed. Best would be ${listed(best.map(({drag, factor}) => `${rounded(factor, 2)} times with a drag of ${rounded(drag, 2)}`))}: nothing finer than that is worth setting.`,
	cureFirst: 'Better: first do what stands first at the verdict, then set the bias.',
};
