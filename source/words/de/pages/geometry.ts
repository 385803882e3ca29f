import type {NullRadii} from '../../../measures/layouts.js';
import {inUnit, mm, rounded} from '../../numbers.js';

type Reach = {readonly leastMm: number; readonly mostMm: number};
type Layout = {
	/** Undefined for this arm itself. */
	readonly name: string | undefined;
	/** Null where there are no two. */
	readonly nulls: NullRadii | null;
	/** Null where no arm of this length has these null radii. */
	readonly overhangMm: number | null;
};

const usual = 'Die meisten Arme haben 13 bis 20 mm Überhang (übliche Praxis). Beide Längen noch einmal messen.';
const reaches = ({leastMm, mostMm}: Reach): string =>
	`Die Nadel erreicht Radien von ${rounded(leastMm, 1)} bis ${rounded(mostMm, 1)} mm`;
const ends = (overhangMm: number): string =>
	overhangMm < 0
		? `endet ${rounded(-overhangMm, 1)} mm vor der Tellerachse`
		: `ragt ${rounded(overhangMm, 1)} mm über die Tellerachse hinaus`;
const name = (layout: Layout): string => layout.name ?? 'dieser Arm';
const nulls = (layout: Layout): string => layout.nulls?.map((one) => rounded(one, 1)).join(' und ') ?? 'keine zwei';
const overhang = ({overhangMm}: Layout): string => (overhangMm === null ? 'keiner' : rounded(overhangMm, 1));

/** The lengths of an arm, and its layout beside the published ones. */
export const geometry = {
	reaches: (reach: Reach) => `${reaches(reach)}.`,
	reachesAndOverhangs: ({overhangMm, ...reach}: Reach & {overhangMm: number}) =>
		`${reaches(reach)} und ${ends(overhangMm)}.`,
	lookAgain: usual,
	unusual: ({effectiveLengthMm, pivotDistanceMm}: {effectiveLengthMm: number; pivotDistanceMm: number}) =>
		`Effektive Länge ${inUnit(effectiveLengthMm, 'mm')}, Montageabstand ${inUnit(pivotDistanceMm, 'mm')}: Die Nadel ${ends(effectiveLengthMm - pivotDistanceMm)}. ${usual}`,
	workedOut: ({
		pivotDistanceMm,
		overhangMm,
		offsetDeg,
		typedDeg,
	}: {
		pivotDistanceMm: number;
		overhangMm: number;
		offsetDeg: number;
		/** What was typed instead, where it is another. */
		typedDeg: number | undefined;
	}) =>
		`Errechnet: Montageabstand ${inUnit(pivotDistanceMm, 'mm')}, Überhang ${rounded(overhangMm, 1)} mm, Kröpfungswinkel ${inUnit(offsetDeg, 'deg')}${typedDeg === undefined ? '' : ` (getippt ${inUnit(typedDeg, 'deg')})`}.`,
	forInformation: ({outermostMm, innermostMm}: {outermostMm: number; innermostMm: number}) =>
		`Zur Information. Äußerste Rille bei ${mm(outermostMm)} angesetzt, innerste bei ${mm(innermostMm)}.`,
	columns: {name: 'in mm', nulls: 'Nullradien', overhang: 'Überhang'},
	cells: {name, nulls, overhang},
	layout: (layout: Layout) =>
		`${name(layout)}: Nullradien ${nulls(layout)}, Überhang ${overhang(layout)}${layout.overhangMm === null ? '' : ' mm'}.`,
};
