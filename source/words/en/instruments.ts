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
	leftRight: ['left', 'right'],
	frontBack: ['front', 'back'],
};

const feet = {
	'front-left': 'front left',
	'front-right': 'front right',
	'back-left': 'back left',
	'back-right': 'back right',
};

/** What stands in the instruments of a screen: names of marks, sides and limits, as short as they can be. */
export const instruments = {
	/** Stands where a reading will be. */
	nothingTyped: ' ',
	seconds: 's',
	/** Beside the large digits of what is being typed. */
	asked: {
		aims: {inner: 'aim, inner limit', middle: 'aim, middle of both limits'},
		aimAt: ({text, unit}: {readonly text: string; readonly unit: string}) => `aim ${text} ${unit}`,
		target: ({text, unit}: {readonly text: string; readonly unit: string}) => `Aim at ${text} ${unit}.`,
		innerLimit: ({typed}: {readonly typed: string}) => `inner limit ${typed}`,
		allowed: ({deg}: {readonly deg: number}) => `allowed ± ${inDegrees(deg, 2)}`,
		window: ({lowMm, highMm}: Pick<Window, 'lowMm' | 'highMm'>) =>
			`${plainNumber(lowMm, 1)} to ${inUnit(highMm, 'mm', 1)}`,
	},
	/** Beside the figure that the verdict hangs on. */
	deciding: {
		pull: ({place, uncertainty}: Deciding) => `± ${uncertainty} %: pull, ${entries.places[place]}`,
		band: ({place, uncertainty}: Deciding) => `± ${uncertainty} %: friction, ${entries.places[place]}`,
	},
	/** At the end of a row of the bands. */
	judged: {
		pull: ({pullPct, pullUncertaintyPct}: MeasuredRadius) => `pull ${sideForce(pullPct, pullUncertaintyPct)}`,
		band: ({bandPct, bandUncertaintyPct}: MeasuredRadius) => span(bandPct, bandUncertaintyPct),
	},
	bands: {
		/** Over the line of a limit of the pull. */
		good: ({pct}: {readonly pct: number}) => `good ${withSign(pct)}`,
		usable: ({pct}: {readonly pct: number}) => `usable ${withSign(pct)}`,
		/** At the end of an axis, with the unit of all its numbers. */
		end: ({pct}: {readonly pct: number}) => `${withSign(pct)} %`,
		limits: ({goodPct, usablePct}: Limits) =>
			`good to ± ${plainNumber(goodPct)}, usable to ± ${plainNumber(usablePct)} %`,
		judged: ({middle}: {readonly middle: string}) => `${middle} pull (good and usable above are those of the pull)`,
		earlier: ({middle}: {readonly middle: string}) => `${middle} last check`,
	},
	clearance: {
		stylus: 'stylus',
		guard: 'guard',
		head: 'headshell',
		gauge: 'gauge',
		platter: 'platter, mat off',
		mat: 'mat',
		/** At the end of a window, with the unit of all numbers there. */
		end: (high: string) => `${high} ${units.mm.label}`,
		named: ({name, mm: height, decimals}: Pick<Window, 'mm'> & {readonly name: string; readonly decimals: number}) =>
			height === undefined ? name : `${name} ${rounded(height, decimals)} ${units.mm.label}`,
		within: ({label, lowMm, highMm, mm: now}: Window) =>
			`${label} ${plainNumber(lowMm, 2)} to ${inUnit(highMm, 'mm', 2)}${now === undefined ? '' : `: ${inUnit(now, 'mm', 2)}`}`,
	},
	deck: {
		/** What to touch, and which way. */
		foot: ({foot, way}: {readonly foot: keyof typeof feet; readonly way: 'up' | 'down'}) =>
			`${way === 'up' ? 'raise' : 'lower'} ${feet[foot]}`,
		gauge: ({radiusMm}: {readonly radiusMm: number}) => `gauge here, ${mm(radiusMm)}`,
		nudge: {outward: 'nudge outward', inward: 'nudge inward'},
		parts: {
			bias: 'bias device',
			lifter: 'lifter',
			rest: 'arm rest',
			counterweight: 'counterweight',
			pivot: 'pivot',
			leads: 'leads',
			head: 'headshell',
		},
		/** What else is drawn. */
		stylus: 'stylus',
		pivot: 'pivot',
		spindle: 'spindle',
		front: 'front: you stand here',
	},
	level: {
		/** At the ends of the scale. */
		ends,
		first: 'first',
		turned: 'turned',
		tilt: 'tilt',
		degrees: '°',
		mark: ({name, deg, axis, decimals}: Leaning) =>
			printsAsZero(deg, decimals)
				? `${name} level`
				: `${name} ${inDegrees(Math.abs(deg), decimals)} ${ends[axis][deg > 0 ? 1 : 0]} high`,
		allowed: ({deg, decimals}: {readonly deg: number; readonly decimals: number}) =>
			`allowed ± ${inDegrees(deg, decimals)}`,
	},
	history: {
		point: ({point}: {readonly point: string}) => `${point} with its ±`,
		limits: ({
			limit,
			goodPct,
			usablePct,
			isTwoSided,
		}: Limits & {readonly limit: string; readonly isTwoSided: boolean}) => {
			const size = (pct: number) => `${isTwoSided ? '±' : ''}${plainNumber(pct)}`;
			return `${limit} good to ${size(goodPct)}, usable to ${size(usablePct)} %`;
		},
		event: ({mark, label}: {readonly mark: string; readonly label: string}) => `${mark} ${label}`,
	},
	friction: {
		heading: 'friction',
		row: ({label, figure}: {readonly label: string; readonly figure: string}) => `${label} ${figure}`,
		good: ({pct}: {readonly pct: number}) => `good ${plainNumber(pct)}`,
		usable: ({pct}: {readonly pct: number}) => `usable ${plainNumber(pct)} %`,
		limits: ({goodPct, usablePct}: Limits) => `good to ${plainNumber(goodPct)}, usable to ${plainNumber(usablePct)} %`,
	},
};
