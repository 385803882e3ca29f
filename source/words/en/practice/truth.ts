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
		`This version of the program has no arm "${arm}". What it hides is not known.`,
	hidden: ({arm}: {readonly arm: LessonId}) => `What was hidden: ${arms[arm].name}.`,
	notProbed: 'The probe is not finished. There is nothing to compare.',
	again: ({arm, extent, seed}: {readonly arm: string; readonly extent: string; readonly seed: number}) =>
		`To practise this once more, with the same random scatter in the readings, type: armdrift practice --on ${arm} --extent ${extent} --seed ${seed}`,
	toDoBetter: ({advice}: {readonly advice: string}) => `To do better: ${advice}`,
	oneRound: ({held, of}: {readonly held: number; readonly of: number}) =>
		`After one round the scatter is assumed, so the ± may be too small. Here ${held} of ${of} hidden values lay within their ±.`,
	stillOff: ({mostPct, floorPct}: {readonly mostPct: number; readonly floorPct: number}) =>
		`As set, the bias still left ${percent(mostPct, 1)} at most. Friction hides ${percent(floorPct, 1)}.`,
	/** By its likely cause; what was found where the figures name none. */
	named: ({likely, found}: {readonly likely: string; readonly found: string}) =>
		`Your check is right: ${likely === '' ? found : `${likely}.`}`,
	cured: 'Your check does not show it: you put it right before.',
	showsWithBias: "It shows only with the bias on. At the verdict choose 'set the bias against skating'.",
	notNamed: 'Your check did not find it. Take more rounds, or do what stands below.',
	head: ['', 'found', 'hidden', 'within ±'],
	offScale: 'off scale',
	pull: {
		name: ({place, radiusMm}: Where) => `${entries.places[place]} ${mm(radiusMm)}, pull`,
		found: ({pct, uncertaintyPct}: Stated) => sideForce(pct, uncertaintyPct),
		hidden: ({pct}: Hidden) => forceWithWay(pct, '%', 1),
	},
	band: {
		name: ({place, radiusMm}: Where) => `${entries.places[place]} ${mm(radiusMm)}, friction`,
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
		`The hidden pull at the ${entries.places[place]} radius: leads ${forceWithWay(wirePct, '%', 1)}, tilt ${forceWithWay(tiltPct, '%', 1)}${biasPct === 0 ? '' : `, bias ${forceWithWay(biasPct, '%', 1)}`}.`,
	outside: 'By chance one hidden value in twenty lies outside its ±. If you do not follow the advice below, more do.',
};
