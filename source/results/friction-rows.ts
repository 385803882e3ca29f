import {isAtLeast} from '../measures/compare.js';
import {bandAt, listed, plainNumber, pullAt} from '../words/wording.js';
import {type DiagnosisFacts, placesWhere} from './diagnosis-facts.js';
import type {MeasuredRadius} from './figures-types.js';
import {type FindingRow, repeatFirst} from './finding-row.js';
import {pullRows} from './pull-rows.js';

const bothEnds = ['inner', 'outer'] as const;

const sticksAtBoth = ({ends}: DiagnosisFacts): boolean =>
	ends?.both.every(({bandVerdict}) => bandVerdict === 'beyond') ?? false;

const sticksAtOne = ({ends, bandLimits}: DiagnosisFacts): boolean =>
	ends?.between.bandDiffers === true && isAtLeast(ends.bandDifferencePct, bandLimits.good / 2);

const bandsAtEnds = ({ends}: DiagnosisFacts): string => listed(ends?.both.map(bandAt) ?? []);

/** What the hold band says, in order of weight. */
const bandRows = [
	{
		code: 'friction',
		who: 'technician',
		places: (facts) => (sticksAtBoth(facts) ? bothEnds : []),
		say: (facts) => `The hold band is ${bandsAtEnds(facts)} (usable to ${plainNumber(facts.bandLimits.usable)} %)`,
		likely: 'dirt, preload, dried oil, damping left in, or a lead rubbing',
		next: () =>
			`${repeatFirst}, and rule out damping and leads; if it stays so the arm goes to its maker, for bearings are not adjusted without the maker's procedure`,
	},
	{
		code: 'friction-local',
		who: 'technician',
		places: (facts) => (sticksAtOne(facts) ? bothEnds : []),
		say: (facts) =>
			`The hold band is ${bandsAtEnds(facts)}: it differs by ${(facts.ends?.bandDifferencePct ?? 0).toFixed(1)} %, where half the good limit is ${plainNumber(facts.bandLimits.good / 2)} %`,
		likely: 'a local rub, a damaged race, a lead that touches at one end, or the stop or return linkage',
		next: () => 'the technician watches leads, lifter, rest and linkage along the whole swing',
	},
] as const satisfies readonly FindingRow[];

const isBeyond = ({pullVerdict, bandVerdict}: MeasuredRadius): boolean =>
	pullVerdict === 'beyond' || bandVerdict === 'beyond';

const hasPattern = (facts: DiagnosisFacts): boolean =>
	[...pullRows, ...bandRows].some((row: FindingRow) => row.places(facts).length > 0);

const patternless = (facts: DiagnosisFacts): readonly MeasuredRadius[] =>
	hasPattern(facts) ? [] : facts.measured.filter(isBeyond);

/** What the hold band says, and what shows no pattern at all. */
export const frictionRows = [
	...bandRows,
	{
		code: 'no-pattern',
		who: 'technician',
		places: (facts) => placesWhere(patternless(facts), () => true),
		say: (facts) =>
			`Beyond limits, but no single cause shows: side pull ${listed(patternless(facts).map(pullAt))} (usable to ${plainNumber(facts.pullLimits.usable)} %), hold band ${listed(patternless(facts).map(bandAt))} (usable to ${plainNumber(facts.bandLimits.usable)} %)`,
		likely: '',
		next: () =>
			'the technician takes rounds at one more radius between, with the leads dressed anew, the guard not touching and the deck undisturbed; if no cause shows then, the arm goes to its maker with the figures',
	},
] as const satisfies readonly FindingRow[];
