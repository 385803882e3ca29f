import {isAtLeast} from '../measures/compare.js';
import type {DiagnosisFacts} from './diagnosis-facts.js';
import {type FindingRow, repeatFirst} from './finding-row.js';
import {bandAt, listed, plainNumber} from './wording.js';

const bothEnds = ['inner', 'outer'] as const;

const sticksAtBoth = ({ends}: DiagnosisFacts): boolean =>
	ends?.both.every(({bandVerdict}) => bandVerdict === 'beyond') ?? false;

const sticksAtOne = ({ends, bandLimits}: DiagnosisFacts): boolean =>
	ends?.between.bandDiffers === true && isAtLeast(ends.bandDifferencePct, bandLimits.good / 2);

const bandsAtEnds = ({ends}: DiagnosisFacts): string => listed(ends?.both.map(bandAt) ?? []);

/** What the hold band says, in order of weight. */
export const frictionRows = [
	{
		code: 'friction',
		who: 'maker',
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
		next: () => 'the technician watches leads and linkage through the whole swing',
	},
] as const satisfies readonly FindingRow[];
