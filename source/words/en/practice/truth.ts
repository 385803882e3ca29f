import type {LessonId} from '../../../practice/arms.js';
import type {PlaceName} from '../../../results/document-schema.js';
import {mm, percent, plainNumber, span} from '../../numbers.js';
import {entries} from '../entries.js';
import {forceWithWay, sideForce} from '../figures.js';
import {arms} from './arms.js';

type Hidden = {readonly pct: number};
type Stated = {readonly pct: number; readonly uncertaintyPct: number};

type Where = {readonly place: PlaceName; readonly radiusMm: number};

type Compared = {
	readonly name: string;
	readonly found: string;
	readonly hidden: string;
	/** Undefined where there is no ± to be within. */
	readonly isWithin: boolean | undefined;
};

type MadeOf = {
	readonly place: PlaceName;
	readonly wirePct: number;
	readonly tiltPct: number;
	/** 0 where no bias is on. */
	readonly biasPct: number;
};

const within = (isWithin: boolean | undefined, yes: string, no: string): string =>
	isWithin === undefined ? '' : isWithin ? yes : no;

/** The hidden truth of an invented arm beside what was found of it. */
export const truth = {
	unknownArm: ({arm}: {readonly arm: string}) =>
		`This version of the program does not have the arm "${arm}", so its truth stays hidden.`,
	hidden: ({arm}: {readonly arm: LessonId}) => `What was hidden: ${arms[arm].name.toLowerCase()}`,
	notProbed: 'The probe was not taken to its end, so there is nothing to compare.',
	again: ({arm, extent, seed}: {readonly arm: string; readonly extent: string; readonly seed: number}) =>
		`The same arm with the same chance: armdrift practice --on ${arm} --extent ${extent} --seed ${seed}`,
	toDoBetter: ({advice}: {readonly advice: string}) => `To do better: ${advice}`,
	oneRound: ({held, of}: {readonly held: number; readonly of: number}) =>
		`One round: how well rounds repeat is assumed, so the ± holds the truth less surely than 95 %. Here it held ${held} of ${of}.`,
	stillOff: ({mostPct, floorPct}: {readonly mostPct: number; readonly floorPct: number}) =>
		`As it was set it still left up to ${percent(mostPct, 1)} over the record, more than the friction floor of ${percent(floorPct, 1)}.`,
	named: ({finding}: {readonly finding: string}) => `Your findings name it: ${finding}`,
	cured: 'Your findings do not name it, because you had put it right before these readings.',
	showsWithBias: "It only shows with the bias on: at the verdict choose 'set the bias device against skating'.",
	notNamed: 'Your findings do not name it: by chance, which more rounds would even out, or for what is said below.',
	head: ['', 'found', 'hidden', 'within ±'],
	offScale: 'off scale',
	pull: {
		name: ({place, radiusMm}: Where) => `${entries.places[place]} ${mm(radiusMm)}, side pull`,
		found: ({pct, uncertaintyPct}: Stated) => sideForce(pct, uncertaintyPct),
		hidden: ({pct}: Hidden) => forceWithWay(pct, '%', 1),
	},
	band: {
		name: ({place, radiusMm}: Where) => `${entries.places[place]} ${mm(radiusMm)}, hold band`,
		found: ({pct, uncertaintyPct}: Stated) => span(pct, uncertaintyPct),
		hidden: ({pct}: Hidden) => percent(pct, 1),
	},
	bias: {
		name: ({radiusMm}: {readonly radiusMm: number}) => `bias alone at ${plainNumber(radiusMm, 1)} mm`,
		found: ({pct}: Hidden) => forceWithWay(pct, '%', 1),
		hidden: ({pct}: Hidden) => forceWithWay(pct, '%', 1),
	},
	compared: ({name, found, hidden, isWithin}: Compared) =>
		`${name}: found ${found}, hidden ${hidden}${within(isWithin, ', within the ±', ', outside the ±')}.`,
	isWithin: ({isWithin}: Pick<Compared, 'isWithin'>) => within(isWithin, 'yes', 'no'),
	madeOf: ({place, wirePct, tiltPct, biasPct}: MadeOf) =>
		`The hidden pull at the ${entries.places[place]} radius: wires ${forceWithWay(wirePct, '%', 1)}, tilt ${forceWithWay(tiltPct, '%', 1)}${biasPct === 0 ? '' : `, bias ${forceWithWay(biasPct, '%', 1)}`}.`,
	outside:
		'A hidden value lies outside its ± once in twenty times by chance; oftener where the advice below was not kept.',
};
