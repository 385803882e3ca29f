import type {GaugedArm} from '../pages/shown-lines.js';
import {words} from '../words/index.js';
import {ascii} from './ascii.js';
import {deckPlan, planMarks} from './deck-plan.js';
import {gaugeScale} from './gauge-scale.js';

const say = words.faces.gaugedArm;

// Beside a list of marks; a narrower window keeps what is read off: the scale.
const leastWidthOfPlan = 60;
// The longest reading with the longest state.
const leastWidthOfSentence = 66;

/**
 * The arm in plan over the record, where there is room, and under it what its gauge shows: eleven lines or twelve, else five.
 * How many does not depend on the reading, so that nothing jumps while the arm moves.
 */
export function armOverRecord(arm: GaugedArm, width: number, unicode: boolean): string[] {
	const reading = say.shows(arm);
	const sentences = width < leastWidthOfSentence ? [reading, arm.state] : [`${reading} · ${arm.state}`];
	const said = sentences.map((one) => (unicode ? one : ascii(one)));
	const scale = gaugeScale(arm, width, unicode);
	// In a small window what does not fit is a page further: the words come first.
	const lines = width < leastWidthOfPlan ? [...said, ...scale] : [...planWithMarks(arm, unicode), ...scale, ...said];
	return lines.map((text) => text.trimEnd().slice(0, width));
}

function planWithMarks(arm: GaugedArm, unicode: boolean): string[] {
	const mark = planMarks[unicode ? 'unicode' : 'ascii'];
	const {lines, isOnGauge} = deckPlan(arm, unicode);
	const beside = [
		'',
		`${mark.pivot} ${say.pivot}`,
		`${mark.spindle} ${say.spindle}`,
		...(isOnGauge
			? say.stylusOnGauge(arm).map((text, line) => `${line === 0 ? mark.stylus : ' '} ${text}`)
			: [`${mark.stylus} ${say.stylus}`, `${mark.gauge} ${say.gauge(arm)}`]),
		'',
		say.front,
	];
	return lines.map((text, row) => `  ${text}   ${beside[row] ?? ''}`);
}
