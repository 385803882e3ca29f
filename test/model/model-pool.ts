import {above, atLeast, mean, sum} from './model-compare.js';
import {scaleFactor} from './model-geometry.js';
import {studentQuantile} from './model-student-t.js';
import type {ClosingOutput, ModelBiasRound, ModelDocument, ModelProbe, ModelRound} from './model-types.js';

export const isOffScale = (document: ModelDocument, rounds: ModelBiasRound[]): boolean =>
	rounds.some(({innerLimit, outerLimit}) =>
		[innerLimit, outerLimit].some((reading) => atLeast(Math.abs(reading), document.gauge.topOfScale)),
	);

export const centreOf = (f: number, round: ModelBiasRound): number => (f * (round.innerLimit + round.outerLimit)) / 2;
export const widthOf = (f: number, round: ModelBiasRound): number => f * Math.abs(round.outerLimit - round.innerLimit);

export const asUsed = (rounds: ModelRound[]): ModelRound[] => rounds.filter(({gauge}) => gauge !== 'turned');
export const turned = (rounds: ModelRound[]): ModelRound[] => rounds.filter(({gauge}) => gauge === 'turned');

export interface Variance {
	square: number;
	freedom: number;
	assumed: boolean;
}

const pooled = (groups: number[][], assumed: number): Variance => {
	const filled = groups.filter((group) => group.length > 0);
	const freedom = sum(filled.map((group) => group.length - 1));
	if (freedom === 0) {
		return {square: assumed ** 2, freedom, assumed: true};
	}
	const deviations = filled.flatMap((group) => group.map((value) => (value - mean(group)) ** 2));
	const square = sum(deviations) / freedom;
	return {square: square < 1e-18 ? 0 : square, freedom, assumed: false};
};

export interface Pool {
	centre: Variance;
	width: Variance;
	/** Step and nudge in a centre and in a width, whole (r²) and what the scatter does not show (r′²). */
	stepCentre: number;
	hiddenStepCentre: number;
	hiddenStepWidth: number;
	/** Setting up, squared. */
	settingUp: number;
}

const centreGroups = (f: number, probes: ModelProbe[], without?: ModelRound): number[][] =>
	probes.flatMap(({rounds}) => {
		const kept = rounds.filter((round) => round !== without);
		return [asUsed(kept), turned(kept)].map((group) => group.map((round) => centreOf(f, round)));
	});

const onScale = (document: ModelDocument): ModelProbe[] =>
	document.probe.filter(({rounds}) => !isOffScale(document, rounds));

const hidden = (step: number, {square, assumed}: Variance): number => (assumed ? step : Math.max(0, step - square));

export const poolOf = (document: ModelDocument): Pool => {
	const f = scaleFactor(document);
	const {step, nudge = 0, setAnew = false} = document.gauge;
	const probes = onScale(document);
	const centre = pooled(centreGroups(f, probes), 0.3);
	const width = pooled(
		probes.map(({rounds}) => rounds.map((round) => widthOf(f, round))),
		0.6,
	);
	const squares = f ** 2 * (step ** 2 + nudge ** 2);
	return {
		centre,
		width,
		stepCentre: squares / 24,
		hiddenStepCentre: hidden(squares / 24, centre),
		hiddenStepWidth: hidden(squares / 6, width),
		settingUp: setAnew ? 0 : 0.3 ** 2,
	};
};

export const closingOf = (document: ModelDocument, pool: Pool): ClosingOutput | null => {
	const f = scaleFactor(document);
	const probe = onScale(document).find(({rounds}) => rounds.some(({closing}) => closing === true));
	const closing = probe?.rounds.find((round) => round.closing === true);
	if (probe === undefined || closing === undefined) {
		return null;
	}
	const others = asUsed(probe.rounds).filter((round) => round !== closing);
	const movedPct = centreOf(f, closing) - mean(others.map((round) => centreOf(f, round)));
	const {square, freedom, assumed} = pooled(centreGroups(f, onScale(document), closing), 0.3);
	const t = assumed ? 1.959964 : studentQuantile(freedom);
	const spread = assumed ? square + pool.stepCentre : Math.max(square, pool.stepCentre);
	const allowedPct = Math.max(0.5, t * Math.sqrt(spread * (1 + 1 / others.length) + 2 * pool.settingUp));
	return {movedPct, allowedPct, moved: above(Math.abs(movedPct), allowedPct)};
};
