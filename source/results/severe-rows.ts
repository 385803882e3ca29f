import {units} from '../units.js';
import {listed, plainNumber, wayOf} from '../words/wording.js';
import {placesWhere} from './diagnosis-facts.js';
import type {RadiusFigures} from './figures-types.js';
import {type FindingRow, repeatFirst} from './finding-row.js';

const isOffScale = ({pullVerdict}: RadiusFigures): boolean => pullVerdict === 'off-scale';

/** What stands above all else: readings that tell nothing, or not of one and the same deck. */
export const severeRows = [
	{
		code: 'off-scale',
		who: 'technician',
		places: ({figures}) => placesWhere(figures.probe, isOffScale),
		say: ({document: {gauge}, figures}) => {
			const radii = figures.probe.filter(isOffScale).map(({radiusMm}) => `${plainNumber(radiusMm)} mm`);
			const top = `${plainNumber(gauge.topOfScale)} ${units[gauge.unit].label}`;
			return `At ${listed(radii)} a reading reached the top of the scale, ${top}, so there is no figure`;
		},
		likely: 'the level is wrong, the bias is still on, or the arm has a fault',
		next: () => `after a look at bias, level and leads ${repeatFirst}; if it stays so the arm goes to its maker`,
	},
	{
		code: 'moved',
		who: 'technician',
		places: ({document, figures}) =>
			figures.closing?.moved
				? document.probe.filter(({rounds}) => rounds.some(({closing}) => closing)).map(({place}) => place)
				: [],
		say: ({figures: {closing}}) =>
			`The closing round reads ${Math.abs(closing?.movedPct ?? 0).toFixed(1)} % farther ${wayOf(closing?.movedPct ?? 0)} than the rounds before it (up to ${(closing?.allowedPct ?? 0).toFixed(1)} % is no change)`,
		likely: 'the gauge, the deck or a lead shifted meanwhile',
		next: () => 'the technician finds what moved, then probes again',
	},
] as const satisfies readonly FindingRow[];
