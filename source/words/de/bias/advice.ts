import type {SetBy} from '../../../procedure/bias-devices.js';
import type {BiasFitFigures} from '../../../results/figures-types.js';
import {inUnit, percent, plainNumber, rounded} from '../../numbers.js';

type BestSetting = {
	readonly fit: BiasFitFigures;
	readonly setBy: SetBy;
	/** What hangs on it now, where that is known. */
	readonly weightG: number | undefined;
};

const timesOf = (factor: number): string => `${rounded(factor, factor < 1 ? 2 : 1)}-Fache`;
const times = (factor: number): string => `das ${timesOf(factor)}`;

/** What the device is to be set to, in its own words: a sentence, and where there is another way to do it, one more. */
function doNow({fit: {factor}, setBy, weightG}: BestSetting): string {
	switch (setBy) {
		case 'weight':
			return weightG === undefined
				? `Jetzt: Antiskating mit Gewicht oder Kerbe auf ${times(factor)} stellen.`
				: `Jetzt: ${inUnit(weightG * factor, 'g', 1)} statt ${inUnit(weightG, 'g', 1)} anhängen. Oder die Kerbe nehmen, die das Antiskating auf ${times(factor)} bringt.`;
		case 'turning':
			return `Jetzt: Antiskating ${factor > 1 ? 'höher' : 'niedriger'} drehen, auf ${times(factor)} von bisher.`;
		case 'dial':
		case 'nothing':
			return `Jetzt: Antiskating auf ${times(factor)} von bisher stellen.`;
	}
}

/** What to do with the device next, or what a setting that was kept leaves. */
export const advice = {
	leaveItSo: ({frictionFloorPct}: BiasFitFigures) =>
		`So lassen. Die Reibung verdeckt alles, was kleiner ist als ${percent(frictionFloorPct, 1)}.`,
	noBetterStrength: 'Mehr oder weniger Antiskating ist nicht besser.',
	wrongShape: ({worstAfterPct}: BiasFitFigures) =>
		`Diese Vorrichtung lässt bestenfalls ${percent(worstAfterPct, 1)} Rest. Sie passt nicht über die ganze Platte.`,
	/** Before hands go to the device. */
	lockFirst: 'Erst den Arm verriegeln, Nadelschutz drauf. Gegengewicht nicht berühren.',
	bestWithoutBias: 'Jetzt: Antiskating ausschalten. Der Arm drückt genug nach außen.',
	bestSetting: doNow,
	/** The most that was looked at. */
	tooWeak: ({times: most}: {readonly times: number}) =>
		`Das Antiskating ist viel zu schwach: Selbst das ${plainNumber(most)}-Fache reicht nicht.`,
	leftAfter: ({worstAfterPct, rmsAfterPct, frictionFloorPct}: BiasFitFigures) =>
		`Mit der besten Einstellung bleiben höchstens ${percent(worstAfterPct, 1)} Rest, typisch ${percent(rmsAfterPct, 1)}. Die Reibung verdeckt alles, was kleiner ist als ${percent(frictionFloorPct, 1)}.`,
	notTaken: ({fit, isWithoutBias}: {readonly fit: BiasFitFigures; readonly isWithoutBias: boolean}) =>
		`${isWithoutBias ? 'Ohne Antiskating' : `Mit dem ${timesOf(fit.factor)}n des jetzigen Antiskatings`} blieben höchstens ${percent(fit.worstAfterPct, 1)} Rest. Die Reibung verdeckt alles, was kleiner ist als ${percent(fit.frictionFloorPct, 1)}.`,
	otherDrags: ({best}: {readonly best: readonly {readonly drag: number; readonly factor: number}[]}) =>
		`Die Rillenreibung ist angenommen. ${best.map(({drag, factor}) => `Bei ${rounded(drag, 2)} wäre das ${rounded(factor, 2)}-Fache des jetzigen Antiskatings richtig.`).join(' ')} Das Antiskating feiner einzustellen lohnt nicht.`,
	cureFirst: 'Besser zuerst die Abhilfe aus dem Urteil, dann das Antiskating.',
};
