import type {PastCheck, PastProbe} from '../check/past-check.js';
import {placeLabel} from '../procedure/places.js';
import type {MeasuredRadius} from '../results/figures-types.js';
import {isMeasured, type RadiusFigures} from '../results/figures-types.js';
import {bandAt, plainNumber, pullAt} from '../words/wording.js';
import type {BandRow, Shown} from './shown-lines.js';

export const bandRow = (figures: MeasuredRadius, earlier = false): BandRow => ({
	label: `${placeLabel(figures.place)} ${plainNumber(figures.radiusMm)}`,
	lowPct: figures.pullPct - figures.bandPct / 2,
	highPct: figures.pullPct + figures.bandPct / 2,
	pullPct: figures.pullPct,
	...(earlier ? {earlier} : {}),
});

/** The hold bands of all measured radii as one picture; nothing when none has figures. */
export function bandsPicture(
	probe: readonly RadiusFigures[],
	limits: {pullGoodPct: number; pullUsablePct: number},
	earlier: readonly BandRow[] = [],
): Shown[] {
	const measured = probe.filter(isMeasured);
	if (measured.length === 0 && earlier.length === 0) return [];
	return [
		{
			kind: 'bands',
			rows: [...measured.map((one) => bandRow(one)), ...earlier],
			goodPct: limits.pullGoodPct,
			usablePct: limits.pullUsablePct,
			caption: measured
				.map((one) => `${placeLabel(one.place)} radius: pull ${pullAt(one)}; hold band ${bandAt(one)}.`)
				.join(' '),
		},
	];
}

/** The hold bands of the last check, to stand beside those of today. */
export function lastBands([last]: readonly PastCheck[], places?: readonly string[]): BandRow[] {
	return (last?.probe ?? []).filter(({place}) => places?.includes(place) ?? true).flatMap(bandOf);
}

function bandOf({place, pullPct, bandPct}: PastProbe): BandRow[] {
	if (pullPct === null || bandPct === null) return [];
	return [
		{
			label: `last ${placeLabel(place)}`,
			lowPct: pullPct - bandPct / 2,
			highPct: pullPct + bandPct / 2,
			pullPct,
			earlier: true,
		},
	];
}
