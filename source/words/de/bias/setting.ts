import {listed, mm, percent, rounded} from '../../numbers.js';
import {gauge} from '../pages/gauge.js';

/** Where the scale of the gauge ends, in its own unit. */
type ScaleEnd = Parameters<typeof gauge.ends>[0];

/** A reading as the gauge shows it, with the way the arm pushes. */
type ShownAt = {readonly radiusMm: number; readonly shown: string};

const listedAt = (readings: readonly ShownAt[]): string =>
	listed(readings.map(({radiusMm, shown}) => `${shown} bei ${mm(radiusMm)}`));

/** The drag that figures are worked out with. */
type DragTaken = {
	readonly drag: number;
	/** As much more or less as it is not known. */
	readonly band: number;
	/** Nobody typed another one. */
	readonly isUsual: boolean;
};

const dragTaken = ({drag, band, isUsual}: DragTaken): string =>
	`${rounded(drag, 2)} ± ${rounded(band, 2)}, ${isUsual ? 'Voreinstellung' : 'wie getippt'}`;

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
	const marks = [...(isKept ? ['behalten'] : []), ...(isLeast ? [isChosen ? 'kleinster Rest' : 'bisher beste'] : [])];
	return marks.length === 0 ? '' : ` (${marks.join(', ')})`;
};

type Named = {readonly name: string; readonly isKept: boolean};
const nameOf = ({name, isKept}: Named): string =>
	`Antiskating-Einstellung ${name}.${isKept ? ' Sie wurde behalten.' : ''}`;

const aims = {wanted: 'Sollwert hier', best: 'Mit dieser Vorrichtung hier am besten'};

/** The settings that were read, and what the gauge is to show. */
export const setting = {
	name: nameOf,
	leaves: ({leftPct, ...one}: Named & {readonly leftPct: number}) =>
		`${nameOf(one)} Rest über die ganze Platte: höchstens ${percent(leftPct, 1)}.`,
	drag: (taken: DragTaken) => `Rillenreibung ${dragTaken(taken)}.`,
	wantedOnGauge: ({middles}: {readonly middles: readonly ShownAt[]}) =>
		`Mit richtigem Antiskating ist die Mitte beider Grenzen ${listedAt(middles)}.`,
	tried: (tried: Tried) =>
		`Einstellung ${tried.name}. ${tried.leftPct === undefined ? 'Keine Zahlen' : `Rest höchstens ${percent(tried.leftPct, 1)}`}${marksOf(tried)}.`,
	noFigures: 'Noch keine Zahlen mit Antiskating.',
	noBest: 'Keine beste Einstellung: zwei Radien messen und sehen, ob das Antiskating wirkt.',
	columns: {wanted: 'Sollwert', read: 'Messwert', alone: 'Antiskating', left: 'Rest', setGaugeTo: 'am besten'},
	offScale: 'Skalenende',
	wasSetTo: ({text}: {readonly text: string}) => `Eingestellt war: ${text}.`,
	aimShown: ({of, shows}: {readonly of: keyof typeof aims; readonly shows: string}) => `${aims[of]}: ${shows}.`,
	aimBeyondTop: ({of, middle, ...end}: ScaleEnd & {readonly of: keyof typeof aims; readonly middle: string}) =>
		`${aims[of]}: Mitte ${middle}, aber ${gauge.ends(end)}.`,
	setGaugeTo: ({middles}: {readonly middles: readonly ShownAt[]}) =>
		`Die Mitte beider Grenzen kommt damit auf ${listedAt(middles)}. Keine andere Stärke kommt den Sollwerten näher.`,
	thenLimits: ({limits}: {readonly limits: readonly {radiusMm: number; inner: string; outer: string}[]}) =>
		limits
			.map(
				({radiusMm, inner, outer}) => `Bei ${mm(radiusMm)} ist die innere Grenze dann ${inner}, die äußere ${outer}.`,
			)
			.join(' '),
	outerBeyondTop: ({outers, ...end}: ScaleEnd & {readonly outers: readonly ShownAt[]}) =>
		`Mit richtigem Antiskating kann die äußere Grenze ${listedAt(outers)} sein: ${gauge.ends(end)}.`,
	frictionFirst: ({bandPct}: {readonly bandPct: number}) =>
		`Erst die Reibung beheben: ${percent(bandPct, 1)} ist zu viel. Bis dahin das Antiskating nicht feiner als ± ${percent(bandPct / 2, 1)} einstellen.`,
	torque:
		'Sollwert in Prozent: 100 × Rillenreibung × sin(a). Der Winkel a liegt zwischen Rille und Linie von Nadel zu Drehpunkt. Der Sollwert ist die Kraft, mit der das Skating den Arm dreht, gerechnet an der Nadel. Antiskating hebt sie auf.',
	noDevice: 'Dieser Arm hat keine Antiskating-Vorrichtung. Gegen das Skating wirkt nur sein eigener Zug.',
};
