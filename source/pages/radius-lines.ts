import type {VerdictLimits} from '../procedure/facts.js';
import {type Figures, isMeasured, type MeasuredRadius, type RadiusFigures} from '../results/figures.js';
import {words} from '../words/index.js';
import {line, type Shown} from './shown-lines.js';

const {verdict} = words.pages;

/** Pull and hold band at each radius with their uncertainty, their limits and the verdict on each. */
export function radiusTable(probe: readonly RadiusFigures[], limits: VerdictLimits): Shown {
	const {columns, offScale, radius, judgedPull, judgedBand, allowed, row} = verdict.radii;
	const rows = [
		...probe.map((one) =>
			isMeasured(one)
				? {name: radius(one), pull: judgedPull(one), band: judgedBand(one)}
				: {name: radius(one), pull: offScale, band: offScale},
		),
		{
			name: verdict.radii.limits,
			pull: allowed({goodPct: limits.pullGoodPct, usablePct: limits.pullUsablePct}),
			band: allowed({goodPct: limits.bandGoodPct, usablePct: limits.bandUsablePct}),
		},
	];
	return {
		kind: 'table',
		head: ['', columns.pull, columns.band],
		rows: rows.map(({name, pull, band}) => [name, pull, band]),
		caption: rows.map(row).join(' '),
	};
}

/** What a maker or a curious owner wants beside the verdict. */
export const detailLines = ({betweenRadii, probe}: Figures): Shown[] => [
	...probe.filter(isMeasured).map((one) => line(verdict.details({figures: one, leans: leanOf(one)}), 'aside')),
	...(betweenRadii ? [line(verdict.between(betweenRadii))] : []),
];

/** The lean as finely as the pull lets it be known; the compliance is taken as it was stated. */
function leanOf({lean, pullPct, pullUncertaintyPct}: MeasuredRadius) {
	if (!lean) return;
	if (pullPct === 0) return 'none';
	const sized = (value: number) => [value, (value * pullUncertaintyPct) / Math.abs(pullPct)] as const;
	return {micrometres: sized(lean.micrometres), degrees: lean.degrees === null ? null : sized(lean.degrees)};
}
