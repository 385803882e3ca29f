import constants from '../../shared/constants.json' with {type: 'json'};
import {type ArmGeometry, nullRadiiMm, overhangMm, reachMm} from '../measures/geometry.js';
import {armFromNulls, layouts, type NullRadii} from '../measures/layouts.js';
import type {Facts} from '../procedure/facts.js';
import {armOf} from '../procedure/geometry.js';
import {offsetOf, workedOutArm} from '../procedure/worked-out-arm.js';
import {fixed, formatIn} from '../units.js';
import {line, type Shown} from './shown-lines.js';

const grooves = {innermostMm: constants.innermostGroove.value, outermostMm: constants.outermostGroove.value};

/** What the lengths of an arm come to: where the stylus reaches, and its layout beside the published ones. */
export function geometryLines(facts: Facts): readonly Shown[] {
	const arm = armOf(facts);
	if (!arm) return [];
	const offsetDeg = offsetOf(facts);
	const reach = `The stylus reaches radii from ${reachMm(arm)
		.map((radiusMm) => radiusMm.toFixed(1))
		.join(' to ')} mm`;
	return [
		...workedOutLines(facts),
		// With the offset known the table has the overhang, and this is the line that a small screen can spare.
		offsetDeg === undefined
			? line(`${reach}, and overhangs the spindle by ${overhang(arm)} mm.`)
			: line(`${reach}.`, 'dim'),
		...(isUnusual(arm) ? [line(`${usual}: look at both lengths again.`, 'warn')] : []),
		...(offsetDeg === undefined ? [] : besideLayouts(arm, offsetDeg)),
	];
}

const usual = 'Most arms overhang by some 13 to 20 mm (common practice)';
const isUnusual = (arm: ArmGeometry): boolean => Math.abs(overhangMm(arm) - 15) > 15;

/** Lengths that an arm may have and few have, in one sentence with both of them; undefined where they are as usual. */
export function unusualLengths(facts: Facts): string | undefined {
	const arm = armOf(facts);
	if (!arm || !isUnusual(arm)) return;
	const {effectiveLengthMm, pivotDistanceMm} = arm;
	const byMm = overhangMm(arm);
	const ends =
		byMm < 0 ? `ends ${fixed(-byMm, 1)} mm short of the spindle` : `overhangs the spindle by ${fixed(byMm, 1)} mm`;
	return `With an effective length of ${formatIn(effectiveLengthMm, 'mm')} and a pivot distance of ${formatIn(pivotDistanceMm, 'mm')} the stylus ${ends}. ${usual}: look at both lengths, and correct what is wrong.`;
}

const overhang = (arm: ArmGeometry): string => fixed(overhangMm(arm), 1);

/** The pivot distance that was worked out, and what goes with it; nothing where it was typed. */
export function workedOutLines(facts: Facts): readonly Shown[] {
	const arm = workedOutArm(facts);
	if (!arm) return [];
	const typedDeg = facts.number('arm-offset');
	const instead =
		typedDeg === undefined || fixed(typedDeg, 1) === fixed(arm.offsetDeg, 1)
			? ''
			: ` (you typed ${formatIn(typedDeg, 'deg')})`;
	return [
		line(
			`Worked out: pivot distance ${formatIn(arm.pivotDistanceMm, 'mm')}, overhang ${overhang(arm)} mm, offset ${formatIn(arm.offsetDeg, 'deg')}${instead}.`,
			'strong',
		),
	];
}

/** The published layouts for this effective length, the arm's own first; nothing is worked out from them. */
function besideLayouts(arm: ArmGeometry, offsetDeg: number): readonly Shown[] {
	const {effectiveLengthMm} = arm;
	const rows = [
		rowOf('this arm', nullRadiiMm(arm, offsetDeg), arm),
		...layouts.map(({name, nullsMm}) =>
			rowOf(name, nullsMm(grooves), armFromNulls(effectiveLengthMm, nullsMm(grooves))),
		),
	];
	return [
		line(`For information only. Grooves: a usual pair, ${grooves.outermostMm} and ${grooves.innermostMm} mm.`),
		{
			kind: 'table',
			head: ['in mm', 'null radii', 'overhang'],
			rows,
			caption: rows.map(([name, nulls, over]) => `${name}: null radii ${nulls}, overhang ${over} mm.`).join(' '),
		},
	];
}

const rowOf = (name: string, nulls: NullRadii | null, arm: ArmGeometry | null): readonly string[] => [
	name,
	nulls ? nulls.map((radiusMm) => radiusMm.toFixed(1)).join(' and ') : 'no two',
	arm ? overhang(arm) : 'none',
];
