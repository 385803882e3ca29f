import type {PastCheck, PastProbe} from '../check/past-check.js';
import type {VerdictLimits} from '../procedure/facts.js';
import {isMeasured, type MeasuredRadius, type RadiusFigures} from '../results/figures-types.js';
import {words} from '../words/index.js';
import {placeLabel} from '../words/step-text.js';
import type {BandRow, Shown} from './shown-lines.js';

const {label, at, last: lastLabel} = words.pages.verdict.bands;

export const bandRow = (figures: MeasuredRadius): BandRow => ({
	label: label(figures),
	lowPct: figures.pullPct - figures.bandPct / 2,
	highPct: figures.pullPct + figures.bandPct / 2,
	pullPct: figures.pullPct,
});

/** The hold bands of all measured radii as one picture; nothing when none has figures. */
export function bandsShown(
	probe: readonly RadiusFigures[],
	limits: Pick<VerdictLimits, 'pullGoodPct' | 'pullUsablePct'>,
	earlier: readonly BandRow[] = [],
): Shown[] {
	const measured = probe.filter(isMeasured);
	if (measured.length === 0 && earlier.length === 0) return [];
	return [
		{
			kind: 'bands',
			rows: [...measured.map(bandRow), ...earlier],
			goodPct: limits.pullGoodPct,
			usablePct: limits.pullUsablePct,
			caption: measured.map(at).join(' '),
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
			label: lastLabel({place: placeLabel(place)}),
			lowPct: pullPct - bandPct / 2,
			highPct: pullPct + bandPct / 2,
			pullPct,
			earlier: true,
		},
	];
}
