import type {PastCheck, PastProbe} from '../../check/past-check.js';
import type {BandRow} from '../../pages/shown-lines.js';
import {placeLabel} from '../../words/step-text.js';

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
