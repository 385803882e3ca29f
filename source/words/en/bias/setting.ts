import {listed, mm, percent, rounded} from '../../numbers.js';

/** A reading as the gauge shows it, with the way the arm pushes. */
type ShownAt = {readonly radiusMm: number; readonly shown: string};

const listedAt = (readings: readonly ShownAt[]): string =>
	listed(readings.map(({radiusMm, shown}) => `${shown} at ${mm(radiusMm)}`));

/** The drag that figures are worked out with. */
type DragTaken = {
	readonly drag: number;
	/** As much more or less as it is not known. */
	readonly band: number;
	/** Nobody typed another one. */
	readonly isUsual: boolean;
};

const dragTaken = ({drag, band, isUsual}: DragTaken): string =>
	`${rounded(drag, 2)} ± ${rounded(band, 2)}, ${isUsual ? 'default of this program' : 'as typed'}`;

type Tried = {
	/** Its number, and how the device was set. */
	readonly name: string;
	/** The most that it leaves over the record, where there are figures. */
	readonly leftPct: number | undefined;
	readonly isKept: boolean;
	readonly isLeast: boolean;
	/** One of those that were tried was kept. */
	readonly isChosen: boolean;
};

const marksOf = ({isKept, isLeast, isChosen}: Tried): string => {
	const marks = [...(isKept ? ['kept'] : []), ...(isLeast ? [isChosen ? 'least left' : 'best so far'] : [])];
	return marks.length === 0 ? '' : ` (${marks.join(', ')})`;
};

const aims = {wanted: 'Wanted here', best: 'Best with this device'};

/** The settings that were read, and what the gauge is to show. */
export const setting = {
	name: ({name, isKept}: {readonly name: string; readonly isKept: boolean}) =>
		`Bias setting ${isKept ? 'kept: number ' : ''}${name}`,
	leaves: ({name, isKept, leftPct}: {readonly name: string; readonly isKept: boolean; readonly leftPct: number}) =>
		`Bias setting ${isKept ? 'kept: number ' : ''}${name}. At most ${percent(leftPct, 1)} is left over the record.`,
	drag: (taken: DragTaken) => `Drag ${dragTaken(taken)}.`,
	wantedOnGauge: ({middles}: {readonly middles: readonly ShownAt[]}) =>
		`With the bias right the gauge shows ${listedAt(middles)}, in the middle of both limits.`,
	tried: (tried: Tried) =>
		`Setting ${tried.name}: ${tried.leftPct === undefined ? 'no figures' : `at most ${percent(tried.leftPct, 1)} left over the record`}${marksOf(tried)}`,
	noFigures: 'No reading with the bias on that has figures.',
	noBest: 'Too few radii, or no bias worth the name: no best setting.',
	columns: {wanted: 'wanted', read: 'read', alone: 'bias alone', left: 'left over', setGaugeTo: 'set gauge to'},
	offScale: 'off scale',
	wasSetTo: ({text}: {readonly text: string}) => `It was set to: ${text}.`,
	aimShown: ({of, shows}: {readonly of: keyof typeof aims; readonly shows: string}) =>
		`${aims[of]}: the gauge shows ${shows}.`,
	aimBeyondTop: ({of, middle, end}: {readonly of: keyof typeof aims; readonly middle: string; readonly end: string}) =>
		`${aims[of]}: ${middle} in the middle, but ${end}.`,
	setGaugeTo: ({middles}: {readonly middles: readonly ShownAt[]}) =>
		`Aim: ${listedAt(middles)}, midway between the limits.`,
	thenLimits: ({limits}: {readonly limits: readonly {radiusMm: number; inner: string; outer: string}[]}) =>
		`It then shows inner and outer limit at ${limits.map(({radiusMm, inner, outer}) => `${inner} and ${outer} at ${mm(radiusMm)}`).join('; ')}.`,
	outerBeyondTop: ({outers, end}: {readonly outers: readonly ShownAt[]; readonly end: string}) =>
		`With the bias as wanted the outer limit may come to ${listedAt(outers)}: ${end}.`,
	frictionFirst: ({bandPct}: {readonly bandPct: number}) =>
		`First: the hold band of ${percent(bandPct, 1)} is beyond limits, and bias can be set no finer than half of it, ± ${percent(bandPct / 2, 1)}.`,
	torque:
		'Wanted is the torque that bias must cancel: drag times the sine of the angle between groove tangent and the line stylus to pivot. The groove wall, without bias, gives a little more: drag times the tangent.',
	noDevice: 'This arm has no bias device: its own pull is all there is against skating.',
};
