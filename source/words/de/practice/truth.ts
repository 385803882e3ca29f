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

const at = {inner: 'am inneren Radius', outer: 'am äußeren Radius', other: 'am dritten Radius'};

const within = (isWithin: boolean | undefined, yes: string, no: string): string =>
	isWithin === undefined ? '' : isWithin ? yes : no;

/** The hidden truth of an invented arm beside what was found of it. */
export const truth = {
	unknownArm: ({arm}: {readonly arm: string}) =>
		`Diese Version des Programms hat keinen Arm „${arm}“. Was er verbirgt, ist nicht bekannt.`,
	hidden: ({arm}: {readonly arm: LessonId}) => `Verborgen war: ${arms[arm].name}.`,
	notProbed: 'Die Messung ist nicht fertig. Es gibt nichts zu vergleichen.',
	again: ({arm, extent, seed}: {readonly arm: string; readonly extent: string; readonly seed: number}) =>
		`Um dasselbe noch einmal zu üben, mit derselben zufälligen Streuung der Messwerte: armdrift practice --on ${arm} --extent ${extent} --seed ${seed}`,
	toDoBetter: ({advice}: {readonly advice: string}) => `Besser machen: ${advice}`,
	oneRound: ({held, of}: {readonly held: number; readonly of: number}) =>
		`Nach einer Runde ist die Streuung nur angenommen, das ± also vielleicht zu klein. Hier lagen ${held} von ${of} verborgenen Werten in ihrem ±.`,
	stillOff: ({mostPct, floorPct}: {readonly mostPct: number; readonly floorPct: number}) =>
		`So eingestellt, ließ das Antiskating höchstens ${percent(mostPct, 1)} Rest. Die Reibung verdeckt ${percent(floorPct, 1)}.`,
	/** By its likely cause; what was found where the figures name none. */
	named: ({likely, found}: {readonly likely: string; readonly found: string}) =>
		`Die Prüfung liegt richtig: ${likely === '' ? found : `${likely}.`}`,
	cured: 'Die Prüfung zeigt es nicht: Es war vorher behoben.',
	showsWithBias: 'Es zeigt sich nur mit Antiskating. Beim Urteil „Antiskating einstellen“ wählen.',
	notNamed: 'Die Prüfung hat es nicht gefunden. Mehr Runden messen, oder tun, was unten steht.',
	head: ['', 'gefunden', 'verborgen', 'im ±'],
	offScale: 'Skalenende',
	pull: {
		name: ({place, radiusMm}: Where) => `${entries.places[place]} ${mm(radiusMm)}, Zug`,
		found: ({pct, uncertaintyPct}: Stated) => sideForce(pct, uncertaintyPct),
		hidden: ({pct}: Hidden) => forceWithWay(pct, '%', 1),
	},
	band: {
		name: ({place, radiusMm}: Where) => `${entries.places[place]} ${mm(radiusMm)}, Reibung`,
		found: ({pct, uncertaintyPct}: Stated) => span(pct, uncertaintyPct),
		hidden: ({pct}: Hidden) => percent(pct, 1),
	},
	bias: {
		name: ({radiusMm}: {readonly radiusMm: number}) => `nur Antiskating, ${plainNumber(radiusMm, 1)} mm`,
		found: ({pct}: Hidden) => forceWithWay(pct, '%', 1),
		hidden: ({pct}: Hidden) => forceWithWay(pct, '%', 1),
	},
	compared: ({name, found, hidden, isWithin}: Compared) =>
		`${name}: gefunden ${found}, verborgen ${hidden}${within(isWithin, ', innerhalb des ±', ', außerhalb des ±')}.`,
	isWithin: ({isWithin}: Pick<Compared, 'isWithin'>) => within(isWithin, 'ja', 'nein'),
	madeOf: ({place, wirePct, tiltPct, biasPct}: MadeOf) =>
		`Der verborgene Zug ${at[place]}: Litzen ${forceWithWay(wirePct, '%', 1)}, Neigung ${forceWithWay(tiltPct, '%', 1)}${biasPct === 0 ? '' : `, Antiskating ${forceWithWay(biasPct, '%', 1)}`}.`,
	outside:
		'Zufällig liegt einer von zwanzig verborgenen Werten außerhalb seines ±. Wer den Rat unten nicht befolgt, findet mehr davon.',
};
