import {listed, mm, percent, rounded} from '../../numbers.js';
import {gauge} from '../pages/gauge.js';

/** Where the scale of the gauge ends, in its own unit. */
type ScaleEnd = Parameters<typeof gauge.ends>[0];

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
	`${rounded(drag, 2)} ± ${rounded(band, 2)}, ${isUsual ? 'the default' : 'as typed'}`;

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
	const marks = [...(isKept ? ['kept'] : []), ...(isLeast ? [isChosen ? 'least left over' : 'best so far'] : [])];
	return marks.length === 0 ? '' : ` (${marks.join(', ')})`;
};

type Named = {readonly name: string; readonly isKept: boolean};
const nameOf = ({name, isKept}: Named): string => `Bias setting ${name}.${isKept ? ' It was kept.' : ''}`;

const aims = {wanted: 'Wanted here', best: 'Best this device can do here'};

/** The settings that were read, and what the gauge is to show. */
export const setting = {
	name: nameOf,
	leaves: ({leftPct, ...one}: Named & {readonly leftPct: number}) =>
		`${nameOf(one)} Over the whole record at most ${percent(leftPct, 1)} is left over.`,
	drag: (taken: DragTaken) => `Drag ${dragTaken(taken)}.`,
	wantedOnGauge: ({middles}: {readonly middles: readonly ShownAt[]}) =>
		`With the right bias the middle of both limits is ${listedAt(middles)}.`,
	tried: (tried: Tried) =>
		`Setting ${tried.name}. ${tried.leftPct === undefined ? 'No figures' : `At most ${percent(tried.leftPct, 1)} is left over`}${marksOf(tried)}.`,
	noFigures: 'No figures with the bias on yet.',
	noBest: 'No best setting: read two radii, and make sure the bias acts.',
	columns: {wanted: 'wanted', read: 'read', alone: 'bias alone', left: 'left over', setGaugeTo: 'best here'},
	offScale: 'off scale',
	wasSetTo: ({text}: {readonly text: string}) => `It was set to: ${text}.`,
	aimShown: ({of, shows}: {readonly of: keyof typeof aims; readonly shows: string}) => `${aims[of]}: ${shows}.`,
	aimBeyondTop: ({of, middle, ...end}: ScaleEnd & {readonly of: keyof typeof aims; readonly middle: string}) =>
		`${aims[of]}: middle ${middle}, but ${gauge.ends(end)}.`,
	setGaugeTo: ({middles}: {readonly middles: readonly ShownAt[]}) =>
		`That should bring the middle of both limits to ${listedAt(middles)}. No other strength comes nearer to what is wanted.`,
	thenLimits: ({limits}: {readonly limits: readonly {radiusMm: number; inner: string; outer: string}[]}) =>
		limits
			.map(
				({radiusMm, inner, outer}) => `At ${mm(radiusMm)} the inner limit is then ${inner}, the outer limit ${outer}.`,
			)
			.join(' '),
	outerBeyondTop: ({outers, ...end}: ScaleEnd & {readonly outers: readonly ShownAt[]}) =>
		`With the right bias the outer limit may be ${listedAt(outers)}: ${gauge.ends(end)}.`,
	frictionFirst: ({bandPct}: {readonly bandPct: number}) =>
		`First cure the friction: ${percent(bandPct, 1)} is too much. Until then set the bias no finer than ± ${percent(bandPct / 2, 1)}.`,
	torque:
		'Wanted, in percent: 100 × drag × sin(a). The angle a lies between the groove and the line from stylus to pivot. The wanted reading is the force with which skating turns the arm, given as a push at the stylus. Bias must cancel it.',
	noDevice: 'This arm has no bias device. Only its own pull acts against skating.',
};
