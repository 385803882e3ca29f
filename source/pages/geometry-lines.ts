import constants from '../../shared/constants.json' with {type: 'json'};
import {type ArmGeometry, nullRadiiMm, overhangMm, reachMm} from '../measures/geometry.js';
import {armFromNulls, layouts} from '../measures/layouts.js';
import type {Facts} from '../procedure/facts.js';
import {armOf, offsetOf, workedOutArm} from '../procedure/geometry.js';
import {fixed} from '../units.js';
import {words} from '../words/index.js';
import {line, type Shown} from './shown-lines.js';

const {geometry} = words.pages;
const grooves = {innermostMm: constants.innermostGroove.value, outermostMm: constants.outermostGroove.value};

/** What the lengths of an arm come to: where the stylus reaches, and its layout beside the published ones. */
export function geometryLines(facts: Facts): readonly Shown[] {
	const arm = armOf(facts);
	if (!arm) return [];
	const offsetDeg = offsetOf(facts);
	const [leastMm, mostMm] = reachMm(arm);
	return [
		...workedOutLines(facts),
		// With the offset known the table has the overhang, and this is the line that a small screen can spare.
		offsetDeg === undefined
			? line(geometry.reachesAndOverhangs({leastMm, mostMm, overhangMm: overhangMm(arm)}))
			: line(geometry.reaches({leastMm, mostMm}), 'aside'),
		...(isUnusual(arm) ? [line(geometry.lookAgain, 'warn')] : []),
		...(offsetDeg === undefined ? [] : besideLayouts(arm, offsetDeg)),
	];
}

const isUnusual = (arm: ArmGeometry): boolean => Math.abs(overhangMm(arm) - 15) > 15;

/** Lengths that an arm may have and few have, in one sentence with both of them; undefined where they are as usual. */
export function unusualLengths(facts: Facts): string | undefined {
	const arm = armOf(facts);
	return arm && isUnusual(arm) ? geometry.unusual(arm) : undefined;
}

/** The pivot distance that was worked out, and what goes with it; nothing where it was typed. */
export function workedOutLines(facts: Facts): readonly Shown[] {
	const arm = workedOutArm(facts);
	if (!arm) return [];
	const typedDeg = facts.number('arm-offset');
	const isOther = typedDeg !== undefined && fixed(typedDeg, 1) !== fixed(arm.offsetDeg, 1);
	const said = {...arm, overhangMm: overhangMm(arm), typedDeg: isOther ? typedDeg : undefined};
	return [line(geometry.workedOut(said), 'strong')];
}

/** The published layouts for this effective length, the arm's own first; nothing is worked out from them. */
function besideLayouts(arm: ArmGeometry, offsetDeg: number): readonly Shown[] {
	const {columns, cells} = geometry;
	const all = [
		{name: undefined, nulls: nullRadiiMm(arm, offsetDeg), overhangMm: overhangMm(arm)},
		...layouts.map(({name, nullsMm}) => {
			const nulls = nullsMm(grooves);
			const laidOut = armFromNulls(arm.effectiveLengthMm, nulls);
			return {name, nulls, overhangMm: laidOut ? overhangMm(laidOut) : null};
		}),
	];
	return [
		line(geometry.forInformation(grooves)),
		{
			kind: 'table',
			head: [columns.name, columns.nulls, columns.overhang],
			rows: all.map((one) => [cells.name(one), cells.nulls(one), cells.overhang(one)]),
			caption: all.map(geometry.layout).join(' '),
		},
	];
}
