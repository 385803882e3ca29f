import {pivotPlace, stylusPlace} from '../../pages/arm-in-plan.js';
import type {GaugedArm} from '../../pages/shown-lines.js';
import {words} from '../../words/index.js';
import type {Row} from '../body.js';
import type {Look} from '../look.js';
import {type DeckPlan, deckPlan, planMarks} from './deck-plan.js';
import {gaugeScale} from './gauge-scale.js';
import {type PlanMark, planWithList} from './plan-with-list.js';
import {brokenText, type Room, shownText} from './sheet.js';

const say = words.faces.gaugedArm;

// Beside a list of marks; a narrower or lower window keeps what is read off: the scale.
const leastWidthOfPlan = 60;
const leastRowsOfPlan = 5;
// The longest reading with the longest state.
const leastWidthOfSentence = 66;
// Thrice the travel of an ordinary gauge: nearer than this its mark would come and go under that of the stylus.
const apartMm = 12;

/**
 * The arm in plan over the record, where there is room, and under it what its gauge shows. How many lines it has does
 * not depend on the reading, so that nothing jumps while the arm moves.
 */
export function armOverRecord(arm: GaugedArm, room: Room, look: Look): Row[] {
	const {columns, rows} = room;
	const reading = say.shows(arm);
	const sentences = columns < leastWidthOfSentence ? [reading, arm.state] : [`${reading} · ${arm.state}`];
	const said = sentences.map(
		(one): Row => ({text: brokenText(shownText(one, look), columns)[0] ?? '', tone: 'strong'}),
	);
	const scale = gaugeScale(arm, columns, look.unicode).map((text): Row => ({text: text.trimEnd(), tone: 'plain'}));
	const planRows = rows - scale.length - said.length;
	// In a small window what does not fit gives way: the words come first.
	if (columns < leastWidthOfPlan || planRows < leastRowsOfPlan) return [...said, ...scale].slice(0, rows);
	const plan = planOf(arm, {columns, rows: planRows}, look);
	const blank: Row = {text: '', tone: 'plain'};
	return [...plan, ...Array.from({length: planRows - plan.length}, () => blank), ...scale, ...said];
}

function planOf(arm: GaugedArm, room: Room, look: Look): Row[] {
	const {unicode} = look;
	const pivot = pivotPlace(arm, arm.pivotDirectionDeg);
	const stylusAt = (radiusMm: number) => stylusPlace(arm, arm.pivotDirectionDeg, radiusMm);
	const [stylus, gauge] = [stylusAt(arm.stylusRadiusMm), stylusAt(arm.gaugeRadiusMm)];
	const plan = deckPlan([pivot], {columns: Math.floor(room.columns / 2), rows: room.rows});
	plan.tube(pivot, stylus, unicode);
	const sign = planMarks[unicode ? 'unicode' : 'ascii'];
	const fixed: readonly PlanMark[] = [
		{sign: sign.pivot, at: pivot, said: say.pivot},
		{sign: sign.spindle, at: {x: 0, y: 0}, said: say.spindle},
	];
	const isOnGauge = Math.abs(arm.stylusRadiusMm - arm.gaugeRadiusMm) < apartMm || isSameCell(plan, [stylus, gauge]);
	const moving: readonly PlanMark[] = isOnGauge
		? [{sign: sign.stylus, at: stylus, said: say.stylusOnGauge(arm).join(' '), tone: 'strong'}]
		: [
				{sign: sign.gauge, at: gauge, said: say.gauge(arm)},
				{sign: sign.stylus, at: stylus, said: say.stylus, tone: 'strong'},
			];
	return planWithList(plan, [...fixed, ...moving], say.front, room, look);
}

type Place = Parameters<DeckPlan['cellOf']>[0];

function isSameCell({cellOf}: DeckPlan, [one, other]: readonly [Place, Place]): boolean {
	const [here, there] = [cellOf(one), cellOf(other)];
	return here.row === there.row && here.column === there.column;
}
