import type {MeasuredRadius} from '../../results/figures-types.js';
import {units} from '../../units.js';
import {inDegrees, inUnit, mm, plainNumber, printsAsZero, rounded, span, withSign} from '../numbers.js';
import {entries} from './entries.js';
import {sideForce} from './figures.js';

type Limits = {readonly goodPct: number; readonly usablePct: number};

type Window = {
	readonly label: string;
	readonly lowMm: number;
	readonly highMm: number;
	readonly mm: number | undefined;
};

type Deciding = {readonly place: MeasuredRadius['place']; readonly uncertainty: string};

type Axis = 'leftRight' | 'frontBack';
type Leaning = {readonly name: string; readonly deg: number; readonly axis: Axis; readonly decimals: number};

const ends: Readonly<Record<Axis, readonly [minus: string, plus: string]>> = {
	leftRight: ['links', 'rechts'],
	frontBack: ['vorn', 'hinten'],
};

const feet = {
	'front-left': 'vorn links',
	'front-right': 'vorn rechts',
	'back-left': 'hinten links',
	'back-right': 'hinten rechts',
};

/** What stands in the instruments of a screen: names of marks, sides and limits, as short as they can be. */
export const instruments = {
	/** Stands where a reading will be. */
	nothingTyped: ' ',
	seconds: 's',
	/** Beside the large digits of what is being typed. */
	asked: {
		aims: {inner: 'Soll, innere Grenze', middle: 'Soll, Mitte beider Grenzen'},
		aimAt: ({text, unit}: {readonly text: string; readonly unit: string}) => `Soll ${text} ${unit}`,
		target: ({text, unit}: {readonly text: string; readonly unit: string}) => `Soll: ${text} ${unit}.`,
		innerLimit: ({typed}: {readonly typed: string}) => `innere Grenze ${typed}`,
		allowed: ({deg}: {readonly deg: number}) => `erlaubt ± ${inDegrees(deg, 2)}`,
		window: ({lowMm, highMm}: Pick<Window, 'lowMm' | 'highMm'>) =>
			`${plainNumber(lowMm, 1)} bis ${inUnit(highMm, 'mm', 1)}`,
	},
	/** Beside the figure that the verdict hangs on. */
	deciding: {
		pull: ({place, uncertainty}: Deciding) => `± ${uncertainty} %: Zug, ${entries.places[place]}`,
		band: ({place, uncertainty}: Deciding) => `± ${uncertainty} %: Reibung, ${entries.places[place]}`,
	},
	/** At the end of a row of the bands. */
	judged: {
		pull: ({pullPct, pullUncertaintyPct}: MeasuredRadius) => `Zug ${sideForce(pullPct, pullUncertaintyPct)}`,
		band: ({bandPct, bandUncertaintyPct}: MeasuredRadius) => span(bandPct, bandUncertaintyPct),
	},
	bands: {
		/** Over the line of a limit of the pull. */
		good: ({pct}: {readonly pct: number}) => `gut ${withSign(pct)}`,
		usable: ({pct}: {readonly pct: number}) => `brauchbar ${withSign(pct)}`,
		/** At the end of an axis, with the unit of all its numbers. */
		end: ({pct}: {readonly pct: number}) => `${withSign(pct)} %`,
		limits: ({goodPct, usablePct}: Limits) =>
			`gut bis ± ${plainNumber(goodPct)}, brauchbar bis ± ${plainNumber(usablePct)} %`,
		judged: ({middle}: {readonly middle: string}) => `${middle} Zug (gut und brauchbar oben gelten für ihn)`,
		earlier: ({middle}: {readonly middle: string}) => `${middle} letzte Prüfung`,
	},
	clearance: {
		stylus: 'Nadel',
		guard: 'Nadelschutz',
		head: 'Headshell',
		gauge: 'Kraftmesser',
		platter: 'Teller, Matte ab',
		mat: 'Matte',
		/** At the end of a window, with the unit of all numbers there. */
		end: (high: string) => `${high} ${units.mm.label}`,
		named: ({name, mm: height, decimals}: Pick<Window, 'mm'> & {readonly name: string; readonly decimals: number}) =>
			height === undefined ? name : `${name} ${rounded(height, decimals)} ${units.mm.label}`,
		within: ({label, lowMm, highMm, mm: now}: Window) =>
			`${label} ${plainNumber(lowMm, 2)} bis ${inUnit(highMm, 'mm', 2)}${now === undefined ? '' : `: ${inUnit(now, 'mm', 2)}`}`,
	},
	deck: {
		/** What to touch, and which way. */
		foot: ({foot, way}: {readonly foot: keyof typeof feet; readonly way: 'up' | 'down'}) =>
			`${feet[foot]} ${way === 'up' ? 'heben' : 'senken'}`,
		gauge: ({radiusMm}: {readonly radiusMm: number}) => `Kraftmesser, ${mm(radiusMm)}`,
		nudge: {outward: 'nach außen', inward: 'nach innen'},
		parts: {
			bias: 'Antiskating',
			lifter: 'Lift',
			rest: 'Stütze',
			counterweight: 'Gegengewicht',
			pivot: 'Drehpunkt',
			leads: 'Litzen',
			head: 'Headshell',
		},
		/** What else is drawn. */
		stylus: 'Nadel',
		pivot: 'Drehpunkt',
		spindle: 'Tellerachse',
		front: 'vorn: hier stehen',
	},
	level: {
		/** At the ends of the scale. */
		ends,
		first: 'erste',
		turned: 'gedreht',
		tilt: 'Neigung',
		degrees: '°',
		mark: ({name, deg, axis, decimals}: Leaning) =>
			printsAsZero(deg, decimals)
				? `${name} waagrecht`
				: `${name} ${inDegrees(Math.abs(deg), decimals)} ${ends[axis][deg > 0 ? 1 : 0]} hoch`,
		allowed: ({deg, decimals}: {readonly deg: number; readonly decimals: number}) =>
			`erlaubt ± ${inDegrees(deg, decimals)}`,
	},
	history: {
		point: ({point}: {readonly point: string}) => `${point} mit ±`,
		limits: ({
			limit,
			goodPct,
			usablePct,
			isTwoSided,
		}: Limits & {readonly limit: string; readonly isTwoSided: boolean}) => {
			const size = (pct: number) => `${isTwoSided ? '±' : ''}${plainNumber(pct)}`;
			return `${limit} gut bis ${size(goodPct)}, brauchbar bis ${size(usablePct)} %`;
		},
		event: ({mark, label}: {readonly mark: string; readonly label: string}) => `${mark} ${label}`,
	},
	friction: {
		heading: 'Reibung',
		row: ({label, figure}: {readonly label: string; readonly figure: string}) => `${label} ${figure}`,
		good: ({pct}: {readonly pct: number}) => `gut ${plainNumber(pct)}`,
		usable: ({pct}: {readonly pct: number}) => `brauchbar ${plainNumber(pct)} %`,
		limits: ({goodPct, usablePct}: Limits) =>
			`gut bis ${plainNumber(goodPct)}, brauchbar bis ${plainNumber(usablePct)} %`,
	},
};
