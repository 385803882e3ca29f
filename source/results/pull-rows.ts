import {isAtLeast, isBelow} from '../measures/compare.js';
import {bandAt, listed, plainNumber, pullAt} from '../words/wording.js';
import {type DiagnosisFacts, placesWhere} from './diagnosis-facts.js';
import type {MeasuredRadius} from './figures-types.js';
import {type FindingRow, repeatFirst} from './finding-row.js';
import {levelRows} from './level-rows.js';

const bothEnds = ['inner', 'outer'] as const;

const isHardCase = ({pullAtWorst, bandVerdict}: MeasuredRadius): boolean =>
	bandVerdict === 'beyond' && pullAtWorst === 'beyond';

const hardCases = ({measured}: DiagnosisFacts): MeasuredRadius[] => measured.filter(isHardCase);

const isFired = (row: FindingRow, facts: DiagnosisFacts): boolean => row.places(facts).length > 0;

const staysConstant = (facts: DiagnosisFacts): boolean =>
	facts.ends !== null &&
	!isFired(levelRows[0], facts) &&
	facts.ends.both.every(({pullVerdict}) => pullVerdict !== 'good') &&
	Math.sign(facts.ends.inner.pullPct) * Math.sign(facts.ends.outer.pullPct) > 0 &&
	isBelow(facts.ends.pullDifferencePct, facts.pullLimits.good / 2);

const changes = ({ends, pullLimits}: DiagnosisFacts): boolean =>
	ends?.between.differs === true && isAtLeast(ends.pullDifferencePct, pullLimits.good / 2);

const slopeOf = ({ends}: DiagnosisFacts): number => ends?.between.torqueSlopeMicroNmPerDeg ?? 0;

const pullsAtEnds = ({ends}: DiagnosisFacts): string => listed(ends?.both.map(pullAt) ?? []);

const pullChange = (facts: DiagnosisFacts): string =>
	`The side pull is ${pullsAtEnds(facts)}: without the tilt it changes by ${(facts.ends?.pullDifferencePct ?? 0).toFixed(1)} %, where half the good limit is ${plainNumber(facts.pullLimits.good / 2)} %`;

/** What the side pull says, in order of weight. */
export const pullRows = [
	{
		code: 'pull-and-friction',
		who: 'technician',
		places: ({measured}) => placesWhere(measured, isHardCase),
		say: (facts) =>
			`The side pull is ${listed(hardCases(facts).map(pullAt))} (usable to ${plainNumber(facts.pullLimits.usable)} %) and the hold band ${listed(hardCases(facts).map(bandAt))} (usable to ${plainNumber(facts.bandLimits.usable)} %)`,
		likely:
			'friction and a pull at once: the arm reads differently wherever it rests, and neither shows in one reading',
		next: (facts) => {
			const half = Math.max(...hardCases(facts).map(({breakawayPct}) => breakawayPct));
			return `${repeatFirst}; if it stays so the arm goes to its maker, and until then bias can be set no finer than half the band, ±${half.toFixed(1)} %`;
		},
	},
	{
		code: 'constant-pull',
		who: 'technician',
		places: (facts) => (staysConstant(facts) ? bothEnds : []),
		say: (facts) =>
			`The side pull is much the same at both ends, ${pullsAtEnds(facts)} (good to ${plainNumber(facts.pullLimits.good)} %)`,
		likely: "the gauge's zero, a bias that is not off, or a twist of the lead at the bearing",
		next: (facts) =>
			`the technician ${facts.figures.zero.source === 'turned' ? '' : 'turns the gauge end for end for one round, '}checks that the bias is off, then dresses the leads as far as the maker allows; inside the arm it is work for the maker`,
	},
	{
		code: 'spring-pull',
		who: 'technician',
		places: (facts) => (changes(facts) && slopeOf(facts) < 0 ? bothEnds : []),
		say: (facts) => `${pullChange(facts)}, and it pushes back like a spring${neutralPlace(facts)}`,
		likely: 'the wire acts as a spring',
		next: () => 'the technician dresses the leads, as far as the maker allows, so that they hang slack at mid-record',
	},
	{
		code: 'runaway-pull',
		who: 'technician',
		places: (facts) => (changes(facts) && slopeOf(facts) > 0 ? bothEnds : []),
		say: (facts) => `${pullChange(facts)}, and it runs away from its neutral place${neutralPlace(facts)}`,
		likely: 'a loop of wire going over centre, a bias still acting, or a magnet',
		next: () => 'the technician looks along the whole swing for what takes hold',
	},
] as const satisfies readonly FindingRow[];

function neutralPlace({ends}: DiagnosisFacts): string {
	const radiusMm = ends?.between.neutralRadiusMm ?? null;
	return radiusMm === null ? '' : ` (neutral at ${radiusMm.toFixed(0)} mm)`;
}
