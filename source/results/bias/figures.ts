import defaults from '../../../shared/limits.json' with {type: 'json'};
import {type BiasProblem, biasAt, biasFit, type ForceAt, ownPullAt} from '../../measures/bias-fit.js';
import {bandPct, roundCentresPct, roundWidthsPct} from '../../measures/hold-band.js';
import {clockDeg, leverShare} from '../../measures/lever.js';
import {leastSkatingRadiusMm, skatingFraction, wantedReadingPct} from '../../measures/skating.js';
import {mean} from '../../measures/statistics.js';
import type {Document} from '../document-schema.js';
import {type BiasFigures, type BiasFitFigures, type BiasRow, isMeasured, type RadiusFigures} from '../figures-types.js';
import {reachesScaleTop, type SeriesRead} from '../series-read.js';

type BiasReading = NonNullable<NonNullable<Document['bias']>['readings']>[number];

/** Readings with the bias on that have figures: nothing in them off scale. */
export const usableReadings = ({document: {bias}, conditions}: SeriesRead): BiasReading[] =>
	(bias?.readings ?? []).filter((reading) => !reachesScaleTop(reading, conditions));

/** The drag of a document; the usual assumption where none is given. */
export const dragOf = ({bias}: Document): number => bias?.effectiveDrag ?? defaults.effectiveDrag.value;

const ownPulls = (probe: readonly RadiusFigures[]): ForceAt[] =>
	probe.filter(isMeasured).map((one) => ({radiusMm: one.radiusMm, pct: one.pullPct}));

/** The question that the best setting answers; undefined where no probe radius has figures. */
export function biasProblem(series: SeriesRead, probe: readonly RadiusFigures[]): BiasProblem | undefined {
	const {document, conditions, zero} = series;
	const {arm} = document;
	const own = ownPulls(probe);
	if (own.length === 0) return;
	const bias = usableReadings(series).map(({radiusMm, rounds}) => ({
		radiusMm,
		pct: mean(roundCentresPct(rounds, conditions.factor)) - zero.pct - ownPullAt(arm, own, radiusMm),
	}));
	return {arm, drag: dragOf(document), own, bias};
}

function rowsOf({arm, drag, bias, own}: BiasProblem, radiiMm: readonly number[]): BiasRow[] {
	return radiiMm.map((radiusMm) => {
		const wantedPct = wantedReadingPct(arm, drag, radiusMm);
		const biasPct = bias.find((one) => one.radiusMm === radiusMm)?.pct ?? null;
		const pullOnPct = biasPct === null ? null : biasPct + ownPullAt(arm, own, radiusMm);
		return {
			radiusMm,
			fraction: skatingFraction(arm, radiusMm),
			wantedPct,
			pullOnPct,
			biasPct,
			leftoverPct: pullOnPct === null ? null : pullOnPct - wantedPct,
		};
	});
}

function fitOf(problem: BiasProblem, widestBandPct: number): BiasFitFigures | null {
	const fit = biasFit(problem);
	if (!fit) return null;
	const {arm, own, bias} = problem;
	return {
		...fit,
		frictionFloorPct: widestBandPct / 2,
		targets: bias.map(({radiusMm}) => ({
			radiusMm,
			targetPct: ownPullAt(arm, own, radiusMm) + fit.factor * biasAt(bias, radiusMm),
		})),
	};
}

function leverOf(readings: readonly BiasReading[]): BiasFigures['lever'] {
	const rows = readings.flatMap(({radiusMm, leverClock}) => {
		const deg = leverClock === undefined ? undefined : clockDeg(leverClock);
		return leverClock === undefined || deg === undefined ? [] : [{radiusMm, clock: leverClock, share: leverShare(deg)}];
	});
	return rows.length === 0 ? null : rows;
}

/** Hold bands with the bias on, in percent. */
export const biasBandsPct = (series: SeriesRead): number[] =>
	usableReadings(series).map(({rounds}) =>
		bandPct(roundWidthsPct(rounds, series.conditions.factor), series.conditions),
	);

/** Skating, the bias measured against it, and the best setting; null without a bias part or without any own pull. */
export function biasFigures(series: SeriesRead, probe: readonly RadiusFigures[]): BiasFigures | null {
	const {document} = series;
	const problem = document.bias && biasProblem(series, probe);
	if (!problem) return null;
	const {readings = []} = document.bias ?? {};
	const bandsPct = [...probe.filter(isMeasured).map((one) => one.bandPct), ...biasBandsPct(series)];
	return {
		effectiveDrag: problem.drag,
		leastRadiusMm: leastSkatingRadiusMm(document.arm),
		rows: rowsOf(
			problem,
			(readings.length > 0 ? readings : document.probe).map(({radiusMm}) => radiusMm),
		),
		fit: fitOf(problem, Math.max(...bandsPct)),
		lever: leverOf(readings),
	};
}
