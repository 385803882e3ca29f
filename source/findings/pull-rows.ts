import {isAbove, isAtLeast, isAtMost, isBelow} from '../measures/compare.js';
import type {DiagnosisFacts} from './diagnosis-facts.js';
import type {MeasuredRadius} from './figures-types.js';
import type {FindingRow} from './finding-row.js';
import {listed, plainNumber, pullAt, sideForce} from './wording.js';

const bothEnds = ['inner', 'outer'] as const;

const tiltExplainsAt = ({pullPct, pullUncertaintyPct, tiltSharePct}: MeasuredRadius): boolean =>
	tiltSharePct !== null &&
	isAbove(Math.abs(pullPct), pullUncertaintyPct) &&
	isAtMost(Math.abs(pullPct - tiltSharePct), pullUncertaintyPct) &&
	isAtLeast(Math.abs(tiltSharePct), Math.abs(pullPct) / 2);

const isPair = (readings: readonly number[] = []): boolean => readings.length === 2;

const tiltExplains = ({document: {level}, ends}: DiagnosisFacts): boolean =>
	isPair(level?.leftRightDeg) && isPair(level?.frontBackDeg) && (ends?.both.every(tiltExplainsAt) ?? false);

const staysConstant = (facts: DiagnosisFacts): boolean =>
	facts.ends !== null &&
	!tiltExplains(facts) &&
	facts.ends.both.every(({pullVerdict}) => pullVerdict !== 'good') &&
	Math.sign(facts.ends.inner.pullPct) * Math.sign(facts.ends.outer.pullPct) > 0 &&
	isBelow(facts.ends.pullDifferencePct, facts.pullLimits.good / 2);

const changes = ({ends, pullLimits}: DiagnosisFacts): boolean =>
	ends?.between.differs === true && isAtLeast(ends.pullDifferencePct, pullLimits.good / 2);

const slopeOf = ({ends}: DiagnosisFacts): number => ends?.between.torqueSlopeMicroNmPerDeg ?? 0;

const pullsAtEnds = ({ends}: DiagnosisFacts): string => listed(ends?.both.map(pullAt) ?? []);

const pullChange = (facts: DiagnosisFacts): string =>
	`The side pull is ${pullsAtEnds(facts)}: without the tilt it changes by ${(facts.ends?.pullDifferencePct ?? 0).toFixed(1)} %, where half the good limit is ${plainNumber(facts.pullLimits.good / 2)} %`;

const tiltShares = ({ends}: DiagnosisFacts): string =>
	listed(
		ends?.both.map(
			({tiltSharePct, tiltShareUncertaintyPct, radiusMm}) =>
				`${sideForce(tiltSharePct ?? 0, tiltShareUncertaintyPct ?? 0)} at ${plainNumber(radiusMm)} mm`,
		) ?? [],
	);

/** What the side pull says, in order of weight. */
export const pullRows = [
	{
		code: 'tilt-explains',
		who: 'owner',
		places: (facts) => (tiltExplains(facts) ? bothEnds : []),
		say: (facts) =>
			`The side pull is ${pullsAtEnds(facts)} (good to ${plainNumber(facts.pullLimits.good)} %), and the tilt alone makes ${tiltShares(facts)}`,
		likely: 'the deck is out of level',
		next: () => 'the owner levels the armboard, then probe again',
	},
	{
		code: 'constant-pull',
		who: 'technician',
		places: (facts) => (staysConstant(facts) ? bothEnds : []),
		say: (facts) =>
			`The side pull is much the same at both ends, ${pullsAtEnds(facts)} (good to ${plainNumber(facts.pullLimits.good)} %)`,
		likely: "the gauge's zero, a bias that is not off, or a twist of the lead at the bearing",
		next: () =>
			'the technician turns the gauge end for end, checks that the bias is off, then dresses the leads; inside the arm it is work for the maker',
	},
	{
		code: 'spring-pull',
		who: 'technician',
		places: (facts) => (changes(facts) && slopeOf(facts) < 0 ? bothEnds : []),
		say: (facts) => `${pullChange(facts)}, and it pushes back like a spring${neutralPlace(facts)}`,
		likely: 'the wire acts as a spring',
		next: () => 'the technician dresses the wire anew so that its neutral place lies mid-record',
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
