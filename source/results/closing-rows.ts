import type {WouldDecide, Zone} from '../measures/verdict.js';
import {type DiagnosisFacts, placesOf} from './diagnosis-facts.js';
import type {MeasuredRadius} from './figures-types.js';
import {type FindingRow, holds} from './finding-row.js';
import {frictionRows} from './friction-rows.js';
import {levelRows} from './level-rows.js';
import {isWorthAdvice} from './one-more-round.js';
import {pullRows} from './pull-rows.js';
import {roundsAgree} from './rounds-agree.js';
import {severeRows} from './severe-rows.js';

/** An undecided figure, and what to do about it. */
export type OpenFigure = {
	readonly figure: 'pull' | 'band';
	readonly at: MeasuredRadius;
	readonly atWorst: Zone;
	/** 'three-rounds': there are fewer of them, which say too little. 'agreement': what would decide it says nothing while its rounds do not agree. */
	readonly wanted: WouldDecide | 'three-rounds' | 'agreement';
};

function openAt({document}: DiagnosisFacts, at: MeasuredRadius): OpenFigure[] {
	const {pullWouldDecide, bandWouldDecide, pullAtWorst, bandAtWorst} = at;
	const wanted = (would: WouldDecide) =>
		isWorthAdvice(document, at) ? (roundsAgree(document) ? would : 'agreement') : 'three-rounds';
	return [
		...(pullWouldDecide ? [{figure: 'pull', at, atWorst: pullAtWorst, wanted: wanted(pullWouldDecide)} as const] : []),
		...(bandWouldDecide ? [{figure: 'band', at, atWorst: bandAtWorst, wanted: wanted(bandWouldDecide)} as const] : []),
	];
}

/** What forbids calling an arm sound, beside a figure that may be beyond its limit. */
const faults: readonly FindingRow[] = [...severeRows, ...levelRows, ...pullRows, ...frictionRows];

/** What is left to say once no cause is left to look for. */
export const closingRows = [
	{
		code: 'undecided',
		who: 'technician',
		bias: 'none',
		find: (facts) => {
			const {measured, pullLimits, bandLimits} = facts;
			const radii = measured.filter(
				({pullVerdict, bandVerdict}) => pullVerdict === 'undecided' || bandVerdict === 'undecided',
			);
			const open = measured.flatMap((one) => openAt(facts, one));
			return {places: placesOf(radii), values: {open, pullLimits, bandLimits}};
		},
	},
	{
		code: 'sound',
		who: 'owner',
		bias: 'none',
		find: (facts) => {
			const {measured, figures, pullLimits, bandLimits} = facts;
			const {atWorst} = figures;
			if ((atWorst !== 'good' && atWorst !== 'usable') || faults.some((row) => holds(row, facts))) return;
			return {places: placesOf(measured), values: {radii: measured, atWorst, pullLimits, bandLimits}};
		},
	},
] as const satisfies readonly FindingRow[];
