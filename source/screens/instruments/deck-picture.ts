import {type PlanPlace, pivotPlace, stylusPlace} from '../../pages/arm-in-plan.js';
import type {DeckTouch, Foot, Touch, TouchedPart} from '../../pages/instruments/deck.js';
import {words} from '../../words/index.js';
import {listed} from '../../words/numbers.js';
import type {Row} from '../body.js';
import type {Look} from '../look.js';
import {deckPlan, planMarks, rimMm} from './deck-plan.js';
import {leastList, type PlanMark, planWithList} from './plan-with-list.js';
import type {Room} from './sheet.js';

const glyphs = {
	unicode: {touch: '◆', foot: '□', up: '▲', down: '▼', gauge: '▲', arrows: '→↗↑↖←↙↓↘'},
	ascii: {touch: 'X', foot: '.', up: '^', down: 'v', gauge: '^', arrows: '>>^<<<v>'},
} as const;
type Glyphs = (typeof glyphs)['unicode' | 'ascii'];

const leastPlan = {columns: 10, rows: 5};
// The list, and what is blank to both sides of the plan.
const besidePlan = leastList + 5;

/** The deck from above, as large as its room allows, with the one place to touch; beside it what to do there. */
export function deckPicture(deck: DeckTouch, room: Room, look: Look): Row[] {
	const columns = room.columns - besidePlan;
	// Without the drawing its words say nothing that the task does not.
	if (columns < leastPlan.columns || room.rows < leastPlan.rows) return [];
	const {touch} = deck;
	const scene = sceneOf(deck);
	const {pivot, stylus, counterweight, corners} = scene;
	const isStanding = touch.kind === 'feet';
	const part = touch.kind === 'part' ? [placeOf(touch.part, scene)] : [];
	const plan = deckPlan([pivot, stylus, counterweight, ...part, ...(isStanding ? Object.values(corners) : [])], {
		...room,
		columns,
	});
	if (isStanding) plan.outline(corners['back-left'], corners['front-right']);
	if (touch.kind === 'gauge') plan.radius(touch.radiusMm);
	plan.tube(counterweight, stylus, look.unicode);
	const said = words.instruments.deck;
	const sign = planMarks[look.unicode ? 'unicode' : 'ascii'];
	const glyph = glyphs[look.unicode ? 'unicode' : 'ascii'];
	const touched = touchMarks(deck, scene, plan.mmPerDot, glyph);
	const fixed: readonly PlanMark[] = [
		{sign: sign.stylus, at: stylus, said: said.stylus},
		{sign: sign.pivot, at: pivot, said: said.pivot},
		{sign: sign.spindle, at: {x: 0, y: 0}, said: said.spindle},
	];
	// What is touched comes first in the list, and lies over all else in the plan; what it hides is not named.
	const above = touched.map(({said: _, ...mark}) => mark);
	const hidden = new Set(touched.flatMap(({at}) => at).map((place) => JSON.stringify(plan.cellOf(place))));
	const seen = fixed.filter(({at}) => [at].flat().every((place) => !hidden.has(JSON.stringify(plan.cellOf(place)))));
	return planWithList(plan, [...touched, ...seen, ...above], said.front, room, look);
}

/** What to touch, and which way. */
function touchText(touch: Touch): string {
	const said = words.instruments.deck;
	switch (touch.kind) {
		case 'part':
			return said.parts[touch.part];
		case 'gauge':
			return said.gauge(touch);
		case 'nudge':
			return said.nudge[touch.way];
		case 'feet':
			return listed(touch.feet.map(said.foot));
	}
}

/** Places in mm from the spindle. */
type Scene = ReturnType<typeof sceneOf>;

// What is not measured is only drawn: an arm in its rest outside the rim, a counterweight behind the pivot, what lies
// beside the pivot, a deck with room about record and pivot.
const [restMm, behindMm, besideMm, edgeMm] = [170, 50, 40, 30];

function sceneOf(deck: DeckTouch) {
	const {touch, pivotDirectionDeg} = deck;
	const pivot = pivotPlace(deck, pivotDirectionDeg);
	const stylus = stylusPlace(deck, pivotDirectionDeg, touch.kind === 'nudge' ? touch.radiusMm : restMm);
	const length = Math.hypot(stylus.x - pivot.x, stylus.y - pivot.y);
	const along = {x: (stylus.x - pivot.x) / length, y: (stylus.y - pivot.y) / length};
	const edge = (mm: number) => Math.max(rimMm, mm) + edgeMm;
	const [left, right, front, back] = [-edge(-pivot.x), edge(pivot.x), -edge(-pivot.y), edge(pivot.y)];
	const onArm = (part: number): PlanPlace => beyond(pivot, along, part * length);
	return {
		pivot,
		stylus,
		counterweight: beyond(pivot, along, -behindMm),
		lifter: onArm(0.2),
		rest: onArm(0.45),
		leads: beyond(pivot, {x: -along.y, y: along.x}, besideMm),
		bias: beyond(pivot, {x: along.y, y: -along.x}, besideMm),
		corners: {
			'back-left': {x: left, y: back},
			'back-right': {x: right, y: back},
			'front-left': {x: left, y: front},
			'front-right': {x: right, y: front},
		} satisfies Record<Foot, PlanPlace>,
	};
}

const beyond = (from: PlanPlace, way: PlanPlace, mm: number): PlanPlace => ({
	x: from.x + way.x * mm,
	y: from.y + way.y * mm,
});

/** Dots from the middle of the head to the two arrows beside it: two cells and three. */
const arrowDots = [4, 6];

function touchMarks(deck: DeckTouch, scene: Scene, mmPerDot: number, glyph: Glyphs): PlanMark[] {
	const {touch} = deck;
	const said = touchText(touch);
	const tone = 'strong';
	switch (touch.kind) {
		case 'part':
			return [{sign: glyph.touch, at: placeOf(touch.part, scene), said, tone}];
		case 'gauge':
			return [{sign: glyph.gauge, at: stylusPlace(deck, deck.pivotDirectionDeg, touch.radiusMm), said, tone}];
		case 'nudge': {
			const {stylus} = scene;
			const size = (touch.way === 'outward' ? 1 : -1) / Math.hypot(stylus.x, stylus.y);
			const way = {x: stylus.x * size, y: stylus.y * size};
			const eighth = Math.round((4 * Math.atan2(way.y, way.x)) / Math.PI + 8) % 8;
			const at = arrowDots.map((dots) => beyond(stylus, way, dots * mmPerDot));
			return [{sign: glyph.arrows[eighth] ?? glyph.touch, at, said, tone}];
		}
		case 'feet': {
			const idle = Object.entries(scene.corners).filter(([foot]) => touch.feet.every((one) => one.foot !== foot));
			return [
				...touch.feet.map(({foot, way}) => ({
					sign: glyph[way],
					at: scene.corners[foot],
					said: words.instruments.deck.foot({foot, way}),
					tone: 'strong' as const,
				})),
				{sign: glyph.foot, at: idle.map(([, place]) => place)},
			];
		}
	}
}

const placeOf = (part: TouchedPart, scene: Scene): PlanPlace => (part === 'head' ? scene.stylus : scene[part]);
