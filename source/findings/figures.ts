import {betweenRadiiOf} from './between-radii-figures.js';
import {biasFigures} from './bias/figures.js';
import type {Document} from './document-schema.js';
import type {Figures} from './figures-types.js';
import {overallOf} from './overall.js';
import {clearanceOf, levelOf} from './preparation-figures.js';
import {radiusFigures} from './radius-figures.js';
import {settingsOf} from './settings.js';

export type * from './figures-types.js';
export {isMeasured} from './figures-types.js';

/** All figures of one series, worked out from its document. Pure; parts whose input is absent are null. */
export const figuresOf = (document: Document): Figures => {
	const settings = settingsOf(document);
	const probe = radiusFigures(document, settings);
	return {
		scaleFactor: settings.scale.factor,
		carriedMn: settings.carriedMn,
		level: levelOf(document, settings, probe),
		clearance: clearanceOf(document),
		probe,
		...overallOf(probe),
		betweenRadii: betweenRadiiOf(document, probe),
		bias: biasFigures(document, settings, probe),
	};
};
