import {units} from '../units.js';
import {type DiagnosisFacts, placesWhere} from './diagnosis-facts.js';
import type {MeasuredRadius, RadiusFigures} from './figures-types.js';
import {type FindingRow, repeatFirst} from './finding-row.js';
import {settingsOf} from './settings.js';
import {bandAt, listed, plainNumber, pullAt} from './wording.js';

const isOffScale = ({pullVerdict}: RadiusFigures): boolean => pullVerdict === 'off-scale';
const isHardCase = ({pullVerdict, bandVerdict}: RadiusFigures): boolean =>
	pullVerdict === 'beyond' && bandVerdict === 'beyond';

const hardCases = ({measured}: DiagnosisFacts): MeasuredRadius[] => measured.filter(isHardCase);

/** What stands above all else. */
export const severeRows = [
	{
		code: 'off-scale',
		who: 'maker',
		places: ({figures}) => placesWhere(figures.probe, isOffScale),
		say: ({document, figures}) => {
			const radii = figures.probe.filter(isOffScale).map(({radiusMm}) => `${plainNumber(radiusMm)} mm`);
			const top = `${plainNumber(settingsOf(document).topOfScale)} ${units[document.gauge.unit].label}`;
			return `At ${listed(radii)} a reading reached the top of the scale, ${top}, so there is no figure`;
		},
		likely: 'the level is wrong, the bias is still on, or the arm has a fault',
		next: () => `check level and bias, then ${repeatFirst}; if it stays so the arm goes to its maker`,
	},
	{
		code: 'hard-case',
		who: 'maker',
		places: ({measured}) => placesWhere(measured, isHardCase),
		say: (facts) =>
			`The side pull is ${listed(hardCases(facts).map(pullAt))} (usable to ${plainNumber(facts.pullLimits.usable)} %) and the hold band ${listed(hardCases(facts).map(bandAt))} (usable to ${plainNumber(facts.bandLimits.usable)} %), both beyond their limits`,
		likely:
			'friction and a pull at once: a single reading wanders over the whole band and says nothing, only the two limits tell centre from span',
		next: (facts) => {
			const half = Math.max(...hardCases(facts).map(({breakawayPct}) => breakawayPct));
			return `${repeatFirst}; if it stays so the arm goes to its maker, and until then bias can be set no finer than half the band, ±${half.toFixed(1)} %`;
		},
	},
] as const satisfies readonly FindingRow[];
