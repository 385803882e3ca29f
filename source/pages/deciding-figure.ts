import type {VerdictLimits} from '../procedure/facts.js';
import {isMeasured, type MeasuredRadius, type RadiusFigures} from '../results/figures-types.js';
import {words} from '../words/index.js';
import {decimalsFor, rounded} from '../words/numbers.js';
import {judgedTone} from './band-rows.js';
import type {BigFigure} from './instruments/figure.js';

type Judged = {
	readonly of: MeasuredRadius;
	readonly what: 'pull' | 'band';
	readonly value: number;
	readonly uncertainty: number;
	readonly atWorst: MeasuredRadius['pullAtWorst'];
	readonly verdict: MeasuredRadius['pullVerdict'];
	/** How far it reaches toward the end of what is usable. */
	readonly share: number;
};

const rank = {good: 0, usable: 1, beyond: 2};

function judgedOf(of: MeasuredRadius, limits: VerdictLimits): readonly Judged[] {
	const {pullPct, pullUncertaintyPct, bandPct, bandUncertaintyPct} = of;
	return [
		{
			of,
			what: 'pull',
			value: pullPct,
			uncertainty: pullUncertaintyPct,
			atWorst: of.pullAtWorst,
			verdict: of.pullVerdict,
			share: Math.abs(pullPct) / limits.pullUsablePct,
		},
		{
			of,
			what: 'band',
			value: bandPct,
			uncertainty: bandUncertaintyPct,
			atWorst: of.bandAtWorst,
			verdict: of.bandVerdict,
			share: bandPct / limits.bandUsablePct,
		},
	];
}

/** The figure that the verdict hangs on, to be read across the bench: the pull or the friction that is worst. */
export function decidingFigure(probe: readonly RadiusFigures[], limits: VerdictLimits): readonly BigFigure[] {
	const [worst] = probe
		.filter(isMeasured)
		.flatMap((one) => judgedOf(one, limits))
		.toSorted((one, other) => rank[other.atWorst] - rank[one.atWorst] || other.share - one.share);
	if (!worst) return [];
	const {of, what, value, uncertainty} = worst;
	const decimals = decimalsFor(uncertainty);
	return [
		{
			kind: 'figure',
			text: rounded(Math.abs(value), decimals),
			unit: '%',
			side: what === 'pull' ? words.figures.wayOf(value) : undefined,
			note: words.instruments.deciding[what]({place: of.place, uncertainty: rounded(uncertainty, decimals)}),
			tone: judgedTone(worst.verdict, worst.atWorst),
			isSpare: true,
			caption: '',
		},
	];
}
