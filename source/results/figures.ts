import {betweenRadiiOf} from './between-radii-figures.js';
import {biasFigures} from './bias/figures.js';
import type {Document} from './document-schema.js';
import type {Figures} from './figures-types.js';
import {overallOf} from './overall.js';
import {clearanceOf, levelOf} from './preparation-figures.js';
import {placedOf, radiusFigures} from './radius-figures.js';
import {closingFigures, zeroFigures} from './series-figures.js';
import {seriesRead} from './series-read.js';

export type * from './figures-types.js';
export {isMeasured} from './figures-types.js';

/** All figures of one series, worked out from its document. Pure; parts whose input is absent are null. */
export const figuresOf = (document: Document): Figures => {
	const series = seriesRead(document);
	const {settings} = series;
	const placed = document.probe.map((radius) => placedOf(document, settings, radius));
	const level = levelOf(document, settings, placed);
	const probe = radiusFigures(series, placed, level?.passes ?? true);
	return {
		scaleFactor: settings.factor,
		carriedMn: settings.carriedMn,
		level,
		clearance: clearanceOf(document),
		zero: zeroFigures(series),
		probe,
		closing: closingFigures(series),
		...overallOf(probe),
		betweenRadii: betweenRadiiOf(series, probe),
		bias: biasFigures(series, probe),
	};
};
