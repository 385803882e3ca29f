import type {PlanPlace} from '../../pages/arm-in-plan.js';
import {type DotCanvas, dotCanvas, dotsAcross, dotsDown, middleOf} from './dot-canvas.js';
import type {Room} from './sheet.js';

export const planMarks = {
	unicode: {spindle: '◉', pivot: '○', stylus: '●', gauge: '▲'},
	ascii: {spindle: 'o', pivot: 'P', stylus: '#', gauge: '^'},
} as const;

// Half of 30 cm, and of a label's 10 cm (sizes of a long-playing record, from memory); they are only drawn.
export const rimMm = 150;
const labelMm = 50;

/** The deck from above: who looks at it stands at the lower edge. Places are in mm from the spindle, y to the back. */
export type DeckPlan = {
	readonly columns: number;
	readonly mmPerDot: number;
	readonly lines: (unicode: boolean) => string[];
	/** The cell that a place lies in. */
	readonly cellOf: (place: PlanPlace) => {readonly row: number; readonly column: number};
	readonly tube: (from: PlanPlace, to: PlanPlace, unicode: boolean) => void;
	/** A broken line about the spindle. */
	readonly radius: (radiusMm: number) => void;
	/** The outline of the deck, through two of its corners. */
	readonly outline: (one: PlanPlace, other: PlanPlace) => void;
};

/** The largest plan in a room with the record and all places on it. */
export function deckPlan(places: readonly PlanPlace[], room: Room): DeckPlan {
	const {canvas, columns, mmPerDot, spindle} = sheetFor(places, room);
	const inDots = ({x, y}: PlanPlace): Dots => ({x: spindle.x + x / mmPerDot, y: spindle.y - y / mmPerDot});
	// Marks stand in the middle of a cell, and the arm goes from mark to mark: one that ends beside its stylus looks broken.
	const onSheet = (place: PlanPlace): Dots => canvas.middle(inDots(place).x, inDots(place).y);
	for (const radiusMm of [rimMm, labelMm]) drawCircle(canvas, spindle, radiusMm / mmPerDot, 1);
	return {
		columns,
		mmPerDot,
		lines: canvas.lines,
		cellOf(place) {
			const {x, y} = onSheet(place);
			return {column: Math.floor(x / dotsAcross), row: Math.floor(y / dotsDown)};
		},
		tube: (from, to, unicode) => drawTube(canvas, onSheet(from), onSheet(to), unicode),
		radius: (radiusMm) => drawCircle(canvas, spindle, radiusMm / mmPerDot, 3),
		outline(one, other) {
			const [{x: left, y: up}, {x: right, y: down}] = [inDots(one), inDots(other)];
			for (let x = left; x <= right; x++) for (const y of [up, down]) canvas.dot(x, y);
			for (let y = up; y <= down; y++) for (const x of [left, right]) canvas.dot(x, y);
		},
	};
}

/** Dots from the upper left one, y downward. */
type Dots = {readonly x: number; readonly y: number};

type Sheet = {
	readonly canvas: DotCanvas;
	readonly columns: number;
	readonly mmPerDot: number;
	readonly spindle: Dots;
};

/** With the spindle in the middle of a cell, where its mark stands true. */
function sheetFor(places: readonly PlanPlace[], {columns, rows}: Room): Sheet {
	const reach = (mm: readonly number[]) => Math.max(rimMm, ...mm);
	const [xs, ys] = [places.map(({x}) => x), places.map(({y}) => y)];
	const [left, right, up, down] = [reach(xs.map((x) => -x)), reach(xs), reach(ys), reach(ys.map((y) => -y))];
	const fits = Array.from({length: rows}, (_, row) => {
		const y = middleOf(row, dotsDown);
		// Nearly half a dot beyond the last one is still rounded to it.
		return {y, mmPerDot: Math.max(up / (y + 0.49), down / (rows * dotsDown - 1 - y + 0.49))};
	});
	const {y, mmPerDot: byRows} = fits.reduce((best, fit) => (fit.mmPerDot < best.mmPerDot ? fit : best));
	const cellsFor = (mm: number, mmPerDot: number) => Math.ceil((mm / mmPerDot - 0.99) / dotsAcross);
	const widthAt = (mmPerDot: number) => cellsFor(left, mmPerDot) + 1 + cellsFor(right, mmPerDot);
	let mmPerDot = byRows;
	while (widthAt(mmPerDot) > Math.max(3, columns)) mmPerDot *= 1.02;
	const width = widthAt(mmPerDot);
	return {
		canvas: dotCanvas(width, rows),
		columns: width,
		mmPerDot,
		spindle: {x: middleOf(cellsFor(left, mmPerDot), dotsAcross), y},
	};
}

/** One dot thin and alike in all eight parts, about a centre that lies between dots both ways. */
function drawCircle(canvas: DotCanvas, {x, y}: Dots, radius: number, every: number): void {
	for (let near = 0.5; near <= radius * Math.SQRT1_2 + 0.5; near += every) {
		const far = Math.round(Math.sqrt(Math.max(0, radius ** 2 - near ** 2)) - 0.5) + 0.5;
		for (const across of [-1, 1])
			for (const down of [-1, 1]) {
				canvas.dot(x + across * near, y + down * far);
				canvas.dot(x + across * far, y + down * near);
			}
	}
}

/** Two dots thick, so that it is not taken for a part of the record; of stars where there are no dots. */
function drawTube(canvas: DotCanvas, from: Dots, to: Dots, unicode: boolean): void {
	const [across, down] = [to.x - from.x, to.y - from.y];
	const isFlat = Math.abs(across) > Math.abs(down);
	const cells = Math.max(Math.abs(across) / dotsAcross, Math.abs(down) / dotsDown);
	const parts = Math.max(1, Math.ceil(unicode ? 2 * Math.hypot(across, down) : cells));
	for (let part = 0; part <= parts; part++) {
		const [x, y] = [from.x + (across * part) / parts, from.y + (down * part) / parts];
		if (!unicode) canvas.mark(x, y, '*');
		else for (const aside of [0, 1]) canvas.dot(isFlat ? x : x + aside, isFlat ? y + aside : y);
	}
}
