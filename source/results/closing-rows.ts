import type {Limits, WouldDecide, Zone} from '../measures/verdict.js';
import {bandAt, listed, plainNumber, pullAt, sureFirst, wouldDecideIt} from '../words/wording.js';
import {type DiagnosisFacts, placesWhere} from './diagnosis-facts.js';
import type {Document} from './document-schema.js';
import type {MeasuredRadius} from './figures-types.js';
import type {FindingRow} from './finding-row.js';
import {frictionRows} from './friction-rows.js';
import {levelRows} from './level-rows.js';
import {isWorthAdvice} from './one-more-round.js';
import {pullRows} from './pull-rows.js';
import {roundsAgree} from './rounds-agree.js';
import {severeRows} from './severe-rows.js';

type Open = {
	readonly name: string;
	readonly value: string;
	readonly atWorst: Zone;
	readonly wouldDecide: WouldDecide;
	/** There are rounds enough to say so. */
	readonly isWorth: boolean;
};

const openAt = (document: Document, figures: MeasuredRadius): Open[] => {
	const where = `at ${plainNumber(figures.radiusMm)} mm`;
	const {pullWouldDecide, bandWouldDecide, pullAtWorst, bandAtWorst} = figures;
	const isWorth = isWorthAdvice(document, figures);
	const pull = {name: `side pull ${where}`, value: `side pull ${pullAt(figures)}`, atWorst: pullAtWorst, isWorth};
	const band = {name: `hold band ${where}`, value: `hold band ${bandAt(figures)}`, atWorst: bandAtWorst, isWorth};
	return [
		...(pullWouldDecide ? [{...pull, wouldDecide: pullWouldDecide}] : []),
		...(bandWouldDecide ? [{...band, wouldDecide: bandWouldDecide}] : []),
	];
};

/** What to do about an undecided figure; what would decide it says nothing while its rounds do not agree. */
const wayOn = ({document}: DiagnosisFacts, {atWorst, wouldDecide, isWorth}: Open): string => {
	if (!isWorth) return 'fewer than three rounds as used say too little: take three';
	return roundsAgree(document)
		? wouldDecideIt(wouldDecide, atWorst)
		: 'the rounds do not agree, so take them again or strike the odd one out';
};

const allOpen = ({document, measured}: DiagnosisFacts): Open[] => measured.flatMap((one) => openAt(document, one));

const isOpen = ({pullVerdict, bandVerdict}: MeasuredRadius): boolean =>
	pullVerdict === 'undecided' || bandVerdict === 'undecided';

const limitsInWords = ({good, usable}: Limits): string =>
	`good to ${plainNumber(good)} %, usable to ${plainNumber(usable)} %`;

/** What forbids calling an arm sound, beside a figure that may be beyond its limit. */
const faults: readonly FindingRow[] = [...severeRows, ...levelRows, ...pullRows, ...frictionRows];

const isSound = (facts: DiagnosisFacts): boolean =>
	(facts.figures.atWorst === 'good' || facts.figures.atWorst === 'usable') &&
	faults.every((row) => row.places(facts).length === 0);

/** What is left to say once no cause is left to look for. */
export const closingRows = [
	{
		code: 'undecided',
		who: 'technician',
		places: ({measured}) => placesWhere(measured, isOpen),
		say: (facts) =>
			`Not decided: ${allOpen(facts)
				.map(({value, atWorst}) => `${value} is ${sureFirst(atWorst)}`)
				.join('; ')} (pull ${limitsInWords(facts.pullLimits)}; band ${limitsInWords(facts.bandLimits)})`,
		likely: '',
		next: (facts) =>
			`the technician goes on: ${allOpen(facts)
				.map((open) => `${open.name}: ${wayOn(facts, open)}`)
				.join('; ')}`,
	},
	{
		code: 'sound',
		who: 'owner',
		places: (facts) => (isSound(facts) ? placesWhere(facts.measured, () => true) : []),
		say: ({measured, figures, pullLimits, bandLimits}) =>
			`The arm is ${figures.atWorst === 'good' ? 'good' : 'usable at worst'}: side pull ${listed(measured.map(pullAt))} (${limitsInWords(pullLimits)}), hold band ${listed(measured.map(bandAt))} (${limitsInWords(bandLimits)})`,
		likely: '',
		next: () => 'the owner may leave it as it is',
	},
] as const satisfies readonly FindingRow[];
