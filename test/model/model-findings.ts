// The table of findings, row by row, each a plain sentence.

import type {BiasWorkings} from './model-bias.js';
import {above, atLeast, atMost, below} from './model-compare.js';
import type {BetweenRadiiOutput, ClosingOutput, ModelDocument, ProbeOutput} from './model-types.js';
import {bandLimits, type Judged, pullLimits} from './model-verdict.js';

export interface Seen {
	document: ModelDocument;
	probe: ProbeOutput[];
	levelPasses: boolean | null;
	closing: ClosingOutput | null;
	between: BetweenRadiiOutput | null;
	bias: BiasWorkings | null;
	biasOffScale: boolean;
	overall: Judged;
}

interface End {
	pull: number;
	share: number | null;
	shareUncertainty: number;
	pullGood: boolean;
	bandBeyond: boolean;
}

const endAt = ({probe}: Seen, place: 'inner' | 'outer'): End | null => {
	const row = probe.find((one) => one.place === place);
	if (row === undefined || row.pullPct === null) {
		return null;
	}
	return {
		pull: row.pullPct,
		share: row.tiltSharePct,
		shareUncertainty: row.tiltShareUncertaintyPct ?? 0,
		pullGood: row.pullVerdict === 'good',
		bandBeyond: row.bandVerdict === 'beyond',
	};
};

const tiltExplains = (inner: End | null, outer: End | null, pullGood: number): boolean => {
	if (inner === null || outer === null) {
		return false;
	}
	const ends = [inner, outer].flatMap(({pull, share, shareUncertainty}) =>
		share === null ? [] : [{pull, share, shareUncertainty}],
	);
	const pulling = ends.filter(({pull}) => above(Math.abs(pull), pullGood));
	return (
		ends.length === 2 &&
		ends.every(({pull, share}) => atMost(Math.abs(pull - share), pullGood)) &&
		pulling.length > 0 &&
		pulling.every(
			({pull, share, shareUncertainty}) =>
				atLeast(Math.abs(share), Math.abs(pull) / 2) && above(Math.abs(share), shareUncertainty),
		)
	);
};

const sameSign = (one: number, other: number): boolean =>
	(above(one, 0) && above(other, 0)) || (below(one, 0) && below(other, 0));

const patternRows = (seen: Seen, tilted: boolean, inner: End | null, outer: End | null): string[] => {
	const {document, probe, between} = seen;
	const pull = pullLimits(document);
	const band = bandLimits(document);
	const codes: string[] = [];
	if (probe.some(({bandVerdict, pullAtWorst}) => bandVerdict === 'beyond' && pullAtWorst === 'beyond')) {
		codes.push('pull-and-friction');
	}
	if (inner !== null && outer !== null && between !== null) {
		const pulls = Math.abs(between.pullDifferencePct);
		const slope = between.torqueSlopeMicroNmPerDeg;
		const near = below(pulls, pull.good / 2);
		if (!tilted && !inner.pullGood && !outer.pullGood && sameSign(inner.pull, outer.pull) && near) {
			codes.push('constant-pull');
		}
		if (between.differs && !near && below(slope, 0)) {
			codes.push('spring-pull');
		}
		if (between.differs && !near && above(slope, 0)) {
			codes.push('runaway-pull');
		}
		if (inner.bandBeyond && outer.bandBeyond) {
			codes.push('friction');
		}
		if (between.bandDiffers && atLeast(Math.abs(between.bandDifferencePct), band.good / 2)) {
			codes.push('friction-local');
		}
	}
	const anyBeyond = probe.some((row) => row.pullVerdict === 'beyond' || row.bandVerdict === 'beyond');
	if (anyBeyond && codes.length === 0) {
		codes.push('no-pattern');
	}
	return codes;
};

const biasRows = (seen: Seen): string[] => {
	const {document, probe, bias, biasOffScale} = seen;
	const pull = pullLimits(document);
	const band = bandLimits(document);
	const codes: string[] = [];
	if (bias?.idle) {
		codes.push('bias-idle');
	}
	if (biasOffScale) {
		codes.push('bias-off-scale');
	}
	if (bias !== null && bias.usable.length > 0) {
		const on = Math.max(...bias.usable.map((one) => one.band));
		const off = Math.max(...probe.flatMap(({bandPct}) => bandPct ?? []));
		if (atLeast(on - off, band.good / 2)) {
			codes.push('bias-rubs');
		}
	}
	const fit = bias?.output.fit;
	if (fit && bias !== null) {
		const leftovers = bias.usable
			.map(({radiusMm, wanted}, index) => ({radiusMm, left: (fit.targets[index]?.targetPct ?? 0) - wanted}))
			.sort((a, b) => a.radiusMm - b.radiusMm);
		const allowed = Math.max(fit.frictionFloorPct, pull.good);
		if ([leftovers.at(0), leftovers.at(-1)].some((one) => above(Math.abs(one?.left ?? 0), allowed))) {
			codes.push('bias-uneven');
		}
		const carries = atMost(fit.worstAfterPct, pull.good) && atMost(fit.worstAfterDragPct, pull.usable);
		if (carries && probe.some(({pullVerdict}) => pullVerdict === 'beyond')) {
			codes.push('playable-with-bias');
		}
	}
	return codes;
};

export const findingCodes = (seen: Seen): string[] => {
	const {document, probe, levelPasses, closing, overall} = seen;
	const inner = endAt(seen, 'inner');
	const outer = endAt(seen, 'outer');
	const tilted = levelPasses !== null && tiltExplains(inner, outer, pullLimits(document).good);
	const faults: string[] = [];
	if (closing?.moved) {
		faults.push('moved');
	}
	if (tilted) {
		faults.push('tilt-explains');
	}
	if (levelPasses === false && !tilted) {
		faults.push('not-level');
	}
	faults.push(...patternRows(seen, tilted, inner, outer));
	const undecided = probe.some((row) => row.pullVerdict === 'undecided' || row.bandVerdict === 'undecided');
	const fine = overall.atWorst === 'good' || overall.atWorst === 'usable';
	return [
		...(probe.some(({pullVerdict}) => pullVerdict === 'off-scale') ? ['off-scale'] : []),
		...faults,
		...biasRows(seen),
		...(undecided ? ['undecided'] : []),
		...(fine && faults.length === 0 ? ['sound'] : []),
	];
};
