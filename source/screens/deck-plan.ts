import {pivotPlace, stylusPlace} from '../pages/arm-in-plan.js';
import {type DotCanvas, dotCanvas, dotsAcross, dotsDown, middleOf} from './dot-canvas.js';

/** An arm over its record with a gauge under it, seen from above. */
export type ArmInPlan = {
	readonly effectiveLengthMm: number;
	readonly pivotDistanceMm: number;
	/** Where the pivot stands seen from the spindle: degrees from the right, turning to the back. */
	readonly pivotDirectionDeg: number;
	readonly stylusRadiusMm: number;
	readonly gaugeRadiusMm: number;
};

export const planMarks = {
	unicode: {spindle: '◉', pivot: '○', stylus: '●', gauge: '▲'},
	ascii: {spindle: 'o', pivot: 'P', stylus: '#', gauge: '^'},
} as const;

// Half of 30 cm, and of a label's 10 cm (sizes of a long-playing record, from memory); they are only drawn.
const [rimMm, labelMm] = [150, 50];
const rows = 7;
// Thrice the travel of an ordinary gauge: nearer than this its mark would come and go under that of the stylus.
const apartMm = 12;

export type DeckPlan = {
	readonly lines: readonly string[];
	/** One mark is both stylus and gauge. */
	readonly isOnGauge: boolean;
};

/** The deck from above, as large as seven lines allow: who looks at it stands at the lower edge. Up to thirty columns wide. */
export function deckPlan(arm: ArmInPlan, unicode: boolean): DeckPlan {
	const pivotMm = pivotPlace(arm, arm.pivotDirectionDeg);
	const {canvas, mmPerDot, spindle} = sheetFor(pivotMm);
	// Marks stand in the middle of a cell, and the arm goes from mark to mark: one that ends beside its stylus looks broken.
	const onSheet = ({x, y}: Place): Place => canvas.middle(spindle.x + x / mmPerDot, spindle.y - y / mmPerDot);
	const stylusAt = (radiusMm: number) => onSheet(stylusPlace(arm, arm.pivotDirectionDeg, radiusMm));
	const [pivot, stylus, gauge] = [onSheet(pivotMm), stylusAt(arm.stylusRadiusMm), stylusAt(arm.gaugeRadiusMm)];
	const isOnGauge = Math.abs(arm.stylusRadiusMm - arm.gaugeRadiusMm) < apartMm || isSame(stylus, gauge);
	for (const radiusMm of [rimMm, labelMm]) drawCircle(canvas, spindle, radiusMm / mmPerDot);
	drawTube(canvas, pivot, stylus, unicode);
	const marks = planMarks[unicode ? 'unicode' : 'ascii'];
	canvas.mark(spindle.x, spindle.y, marks.spindle);
	canvas.mark(pivot.x, pivot.y, marks.pivot);
	if (!isOnGauge) canvas.mark(gauge.x, gauge.y, marks.gauge);
	canvas.mark(stylus.x, stylus.y, marks.stylus);
	return {lines: canvas.lines(unicode), isOnGauge};
}

const isSame = (one: Place, other: Place): boolean => one.x === other.x && one.y === other.y;

/** In mm from the spindle (y to the back), or in dots from the upper left one (y downward). */
type Place = {readonly x: number; readonly y: number};

type Sheet = {readonly canvas: DotCanvas; readonly mmPerDot: number; readonly spindle: Place};

/** The largest sheet with record and pivot on it and the spindle in the middle of a cell, where its mark stands true. */
function sheetFor(pivot: Place): Sheet {
	const reach = (mm: number) => Math.max(rimMm, mm);
	const [left, right, up, down] = [reach(-pivot.x), reach(pivot.x), reach(pivot.y), reach(-pivot.y)];
	const fits = Array.from({length: rows}, (_, row) => {
		const y = middleOf(row, dotsDown);
		// Nearly half a dot beyond the last one is still rounded to it.
		return {y, mmPerDot: Math.max(up / (y + 0.49), down / (rows * dotsDown - 1 - y + 0.49))};
	});
	const {y, mmPerDot} = fits.reduce((best, fit) => (fit.mmPerDot < best.mmPerDot ? fit : best));
	const cellsFor = (mm: number) => Math.ceil((mm / mmPerDot - 0.99) / dotsAcross);
	return {
		canvas: dotCanvas(cellsFor(left) + 1 + cellsFor(right), rows),
		mmPerDot,
		spindle: {x: middleOf(cellsFor(left), dotsAcross), y},
	};
}

/** One dot thin and alike in all eight parts, about a centre that lies between dots both ways. */
function drawCircle(canvas: DotCanvas, {x, y}: Place, radius: number): void {
	for (let near = 0.5; near <= radius * Math.SQRT1_2 + 0.5; near++) {
		const far = Math.round(Math.sqrt(Math.max(0, radius ** 2 - near ** 2)) - 0.5) + 0.5;
		for (const across of [-1, 1])
			for (const down of [-1, 1]) {
				canvas.dot(x + across * near, y + down * far);
				canvas.dot(x + across * far, y + down * near);
			}
	}
}

/** Two dots thick, so that it is not taken for a part of the record; of stars where there are no dots. */
function drawTube(canvas: DotCanvas, from: Place, to: Place, unicode: boolean): void {
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
