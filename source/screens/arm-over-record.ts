import {ascii} from './ascii.js';
import {type ArmInPlan, deckPlan, planMarks} from './deck-plan.js';
import {type GaugeReading, gaugeScale, shownPct} from './gauge-scale.js';

/** An arm on its gauge at one moment. */
export type GaugedArm = ArmInPlan &
	GaugeReading & {
		/** In words, short: 'still for 3 s', 'swings inward'. */
		readonly state: string;
	};

// Beside a list of marks; a narrower window keeps what is read off: the scale.
const leastWidthOfPlan = 60;

/**
 * The arm in plan over the record, where there is room, and under it what its gauge shows: eleven lines, or four.
 * How many does not depend on the reading, so that nothing jumps while the arm moves.
 */
export function armOverRecord(arm: GaugedArm, width: number, unicode: boolean): string[] {
	const sentence = `the gauge shows ${shownPct(arm)} % · ${arm.state}`;
	return [
		...(width < leastWidthOfPlan ? [] : planWithMarks(arm, unicode)),
		...gaugeScale(arm, width, unicode),
		unicode ? sentence : ascii(sentence),
	].map((text) => text.trimEnd().slice(0, width));
}

function planWithMarks(arm: GaugedArm, unicode: boolean): string[] {
	const mark = planMarks[unicode ? 'unicode' : 'ascii'];
	const radius = `gauge at ${Number(arm.gaugeRadiusMm.toFixed(1))} mm`;
	const {lines, isOnGauge} = deckPlan(arm, unicode);
	const beside = [
		'',
		`${mark.pivot} pivot`,
		`${mark.spindle} spindle`,
		...(isOnGauge
			? [`${mark.stylus} stylus on the`, `  ${radius}`]
			: [`${mark.stylus} stylus`, `${mark.gauge} ${radius}`]),
		'',
		'front: you stand here',
	];
	return lines.map((text, row) => `  ${text}   ${beside[row] ?? ''}`);
}
