import {roundsApart} from '../measures/hold-band.js';
import type {GaugeUnit} from '../units.js';
import {conditionsOf} from './conditions.js';
import type {Document} from './document-schema.js';
import {reachesScaleTop} from './series-read.js';

/** Rounds of a radius that do not agree; all but the radius in the gauge's own unit. */
export type RadiusApart = {
	readonly radiusMm: number;
	/** How far their middles lie apart, and how far is usual with this step and nudge. */
	readonly apart: number;
	readonly usual: number;
	readonly step: number;
	readonly unit: GaugeUnit;
};

/** Radii whose rounds as used do not agree, those off scale left out. */
export const radiiApart = (document: Document): RadiusApart[] =>
	document.probe.flatMap((radius) => {
		if (reachesScaleTop(radius, conditionsOf(document))) return [];
		const {step, nudge = 0, unit} = document.gauge;
		const asUsed = radius.rounds.filter((round) => round.gauge !== 'turned');
		const found = roundsApart(asUsed, step, nudge);
		return found ? [{radiusMm: radius.radiusMm, ...found, step, unit}] : [];
	});

/**
 * Whether the rounds agree at every probe radius. Their spread is pooled, so where they do not agree at one of them, it
 * tells at no radius what more rounds or a finer step would bring.
 */
export const roundsAgree = (document: Document): boolean => radiiApart(document).length === 0;
