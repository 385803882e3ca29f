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

const usual = 'Most arms overhang by 13 to 20 mm (common practice)';
const reaches = ({leastMm, mostMm}: Reach): string =>
	`The stylus reaches radii from ${rounded(leastMm, 1)} to ${rounded(mostMm, 1)} mm`;
const ends = (overhangMm: number): string =>
	overhangMm < 0
		? `ends ${rounded(-overhangMm, 1)} mm short of the spindle`
		: `overhangs the spindle by ${rounded(overhangMm, 1)} mm`;
const name = (layout: Layout): string => layout.name ?? 'this arm';
const nulls = (layout: Layout): string => layout.nulls?.map((one) => rounded(one, 1)).join(' and ') ?? 'no two';
const overhang = ({overhangMm}: Layout): string => (overhangMm === null ? 'none' : rounded(overhangMm, 1));

/** The lengths of an arm, and its layout beside the published ones. */
export const geometry = {
	reaches: (reach: Reach) => `${reaches(reach)}.`,
	reachesAndOverhangs: ({overhangMm, ...reach}: Reach & {overhangMm: number}) =>
		`${reaches(reach)}, and overhangs the spindle by ${rounded(overhangMm, 1)} mm.`,
	lookAgain: `${usual}: measure both lengths again.`,
	unusual: ({effectiveLengthMm, pivotDistanceMm}: {effectiveLengthMm: number; pivotDistanceMm: number}) =>
		`Effective length ${inUnit(effectiveLengthMm, 'mm')}, pivot distance ${inUnit(pivotDistanceMm, 'mm')}: the stylus ${ends(effectiveLengthMm - pivotDistanceMm)}. ${usual}: measure both lengths again.`,
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
		`Worked out: pivot distance ${inUnit(pivotDistanceMm, 'mm')}, overhang ${rounded(overhangMm, 1)} mm, offset ${inUnit(offsetDeg, 'deg')}${typedDeg === undefined ? '' : ` (you typed ${inUnit(typedDeg, 'deg')})`}.`,
	forInformation: ({outermostMm, innermostMm}: {outermostMm: number; innermostMm: number}) =>
		`For information. Outermost groove taken at ${mm(outermostMm)}, innermost at ${mm(innermostMm)}.`,
	columns: {name: 'in mm', nulls: 'null radii', overhang: 'overhang'},
	cells: {name, nulls, overhang},
	layout: (layout: Layout) => `${name(layout)}: null radii ${nulls(layout)}, overhang ${overhang(layout)} mm.`,
};
