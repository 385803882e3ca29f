import type {VerdictLimits} from '../procedure/facts.js';
import {type Figures, isMeasured, type MeasuredRadius, type RadiusFigures} from '../results/figures.js';
import {fixed} from '../units.js';
import {placeLabel} from '../words/step-text.js';
import {forceWithWay, plainNumber, sideForce, span, withUncertainty} from '../words/wording.js';
import {line, type Shown} from './shown-lines.js';

/** A verdict on one figure in a word or two, what is sure first. */
const judged = (verdict: MeasuredRadius['pullVerdict'], atWorst: MeasuredRadius['pullAtWorst']): string =>
	verdict === 'undecided' ? `${atWorst} at worst` : verdict;

const nameOf = ({place, radiusMm}: RadiusFigures): string => `${placeLabel(place)} ${plainNumber(radiusMm)} mm`;

/** Pull and hold band at each radius with their uncertainty, their limits and the verdict on each. */
export function radiusTable(probe: readonly RadiusFigures[], limits: VerdictLimits): Shown {
	const rows = probe.map((one) =>
		isMeasured(one)
			? [
					nameOf(one),
					`${sideForce(one.pullPct, one.pullUncertaintyPct)}: ${judged(one.pullVerdict, one.pullAtWorst)}`,
					`${span(one.bandPct, one.bandUncertaintyPct)}: ${judged(one.bandVerdict, one.bandAtWorst)}`,
				]
			: [nameOf(one), 'off scale', 'off scale'],
	);
	const allowed = [
		'limits',
		`good to ${plainNumber(limits.pullGoodPct)}, usable to ${plainNumber(limits.pullUsablePct)} %`,
		`good to ${plainNumber(limits.bandGoodPct)}, usable to ${plainNumber(limits.bandUsablePct)} %`,
	];
	return {
		kind: 'table',
		head: ['', 'side pull', 'hold band'],
		rows: [...rows, allowed],
		caption: [...rows, allowed].map(([name, pull, band]) => `${name}: side pull ${pull}; hold band ${band}.`).join(' '),
	};
}

/** What a maker or a curious owner wants beside the verdict. */
export function detailLines({betweenRadii, probe}: Figures): Shown[] {
	return [...probe.filter(isMeasured).flatMap(detailsOf), ...(betweenRadii ? [line(between(betweenRadii))] : [])];
}

function detailsOf(one: MeasuredRadius): Shown[] {
	const {inner, outer} = one.wallShare;
	const tilt =
		one.tiltSharePct === null
			? ''
			: `; tilt's share of the pull ${sideForce(one.tiltSharePct, one.tiltShareUncertaintyPct ?? 0)}`;
	return [
		line(
			`${nameOf(one)}: breakaway ±${one.breakawayPct.toFixed(1)} %, torque ${forceWithWay(one.torqueMicroNm, 'µN·m', 0)}${tilt}; load on inner and outer groove wall by this pull alone ${(100 * inner).toFixed(1)} and ${(100 * outer).toFixed(1)} %${leanOf(one)}.`,
			'dim',
		),
	];
}

/** The lean as finely as the pull lets it be known; the compliance is taken as it was stated. */
function leanOf({lean, pullPct, pullUncertaintyPct}: MeasuredRadius): string {
	if (!lean) return '';
	if (pullPct === 0) return '; stylus does not lean';
	const share = pullUncertaintyPct / Math.abs(pullPct);
	const size = (value: number) => withUncertainty(value, value * share);
	const degrees = lean.degrees === null ? '' : ` (${size(lean.degrees)}°)`;
	return `; stylus leans ${size(lean.micrometres)} µm${degrees}`;
}

function between({
	en,
	differs,
	torqueSlopeMicroNmPerDeg,
	neutralRadiusMm,
}: NonNullable<Figures['betweenRadii']>): string {
	const neutral = neutralRadiusMm === null ? '' : `; neutral at ${neutralRadiusMm.toFixed(0)} mm`;
	return `Between the radii: ${differs ? 'the pulls differ' : 'no difference shown'} (E_n ${en.toFixed(2)}; above 1 they differ); the torque changes by ${fixed(torqueSlopeMicroNmPerDeg, 2)} µN·m per degree of swing${neutral}.`;
}
