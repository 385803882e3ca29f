import {placesOf} from './diagnosis-facts.js';
import type {FindingRow} from './finding-row.js';

/** What stands above all else: readings that tell nothing, or not of one and the same deck. */
export const severeRows = [
	{
		code: 'off-scale',
		who: 'technician',
		bias: 'after-cure',
		find: ({document: {gauge}, figures}) => {
			const off = figures.probe.filter(({pullVerdict}) => pullVerdict === 'off-scale');
			const radiiMm = off.map(({radiusMm}) => radiusMm);
			return {places: placesOf(off), values: {radiiMm, topOfScale: gauge.topOfScale, unit: gauge.unit}};
		},
	},
	{
		code: 'moved',
		who: 'technician',
		bias: 'after-cure',
		find: ({document, figures: {closing}}) => {
			if (!closing?.moved) return;
			const {movedPct, allowedPct} = closing;
			const at = document.probe.filter(({rounds}) => rounds.some((round) => round.closing));
			return {places: placesOf(at), values: {movedPct, allowedPct}};
		},
	},
] as const satisfies readonly FindingRow[];
