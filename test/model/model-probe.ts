import {mean} from './model-compare.js';
import {fraction, levelPasses, scaleFactor, tiltShare, tiltShareUncertainty} from './model-geometry.js';
import {asUsed, centreOf, isOffScale, type Pool, poolOf, turned, widthOf} from './model-pool.js';
import type {ModelDocument, ModelProbe, ModelRound, ProbeOutput} from './model-types.js';
import {asItIs, bandUncertainty, type Counted, pullUncertainty, type Setting} from './model-uncertainty.js';
import {bandLimits, type Judged, judge, pullLimits, worstOf, wouldDecide} from './model-verdict.js';

export interface Workings {
	setting: Setting;
	/** The gauge's zero, in percent of the playing force. */
	zero: number;
	zeroSource: 'turned' | 'stated' | 'unchecked';
}

const count = ({radiusMm, rounds}: ModelProbe): Counted => ({
	radiusMm,
	used: asUsed(rounds).length,
	turned: turned(rounds).length,
});

const meanCentre = (f: number, rounds: ModelRound[]): number => mean(rounds.map((round) => centreOf(f, round)));

export const workingsOf = (document: ModelDocument): Workings => {
	const f = scaleFactor(document);
	const pool: Pool = poolOf(document);
	const turnedProbe = document.probe.find(({rounds}) => turned(rounds).length > 0 && !isOffScale(document, rounds));
	const setting = {document, f, pool, turnedAt: turnedProbe === undefined ? null : count(turnedProbe)};
	if (turnedProbe !== undefined) {
		const {rounds} = turnedProbe;
		return {setting, zero: (meanCentre(f, asUsed(rounds)) + meanCentre(f, turned(rounds))) / 2, zeroSource: 'turned'};
	}
	const stated = document.gauge.zero;
	return stated === undefined
		? {setting, zero: 0, zeroSource: 'unchecked'}
		: {setting, zero: f * stated, zeroSource: 'stated'};
};

const offScaleRow = (document: ModelDocument, {place, radiusMm}: ModelProbe): ProbeOutput => ({
	place,
	radiusMm,
	tiltSharePct: tiltShare(document, radiusMm),
	tiltShareUncertaintyPct: tiltShareUncertainty(document),
	pullPct: null,
	pullUncertaintyPct: null,
	bandPct: null,
	bandUncertaintyPct: null,
	breakawayPct: null,
	torqueMicroNm: null,
	effectiveDegreesOfFreedom: null,
	repeatability: null,
	pullVerdict: 'off-scale',
	pullAtWorst: 'off-scale',
	bandVerdict: 'off-scale',
	bandAtWorst: 'off-scale',
	ownPullPct: null,
	pullWouldDecide: null,
	bandWouldDecide: null,
	wallShare: null,
	lean: null,
});

const judgePull = (document: ModelDocument, pull: number, expanded: number, radiusMm: number): Judged => {
	const limits = pullLimits(document);
	const asItStands = judge(pull, expanded, limits);
	const share = tiltShare(document, radiusMm);
	const shareUncertainty = tiltShareUncertainty(document);
	if (share === null || shareUncertainty === null || levelPasses(document, limits.good)) {
		return asItStands;
	}
	return worstOf([asItStands, judge(pull - share, Math.hypot(expanded, shareUncertainty), limits)]);
};

const leanOf = (document: ModelDocument, wallPull: number): ProbeOutput['lean'] => {
	const {staticComplianceUmPerMn: compliance, cantileverMm} = document.cartridge ?? {};
	if (compliance === undefined) {
		return null;
	}
	const micrometres = (Math.abs(wallPull) / 100) * document.trackingForce.playingMn * compliance;
	const degrees = cantileverMm === undefined ? null : (Math.atan(micrometres / (1000 * cantileverMm)) * 180) / Math.PI;
	return {micrometres, degrees};
};

const pullOf = ({setting, zero}: Workings, {rounds}: ModelProbe): number => {
	const used = meanCentre(setting.f, asUsed(rounds));
	const back = turned(rounds);
	return back.length > 0 ? (used - meanCentre(setting.f, back)) / 2 : used - zero;
};

export const probeRow = (workings: Workings, probe: ModelProbe): ProbeOutput => {
	const {setting} = workings;
	const {document, f, pool} = setting;
	const {place, radiusMm, rounds} = probe;
	if (isOffScale(document, rounds)) {
		return offScaleRow(document, probe);
	}
	const at = count(probe);
	const pull = pullOf(workings, probe);
	const band = mean(rounds.map((round) => widthOf(f, round))) + f * (document.gauge.nudge ?? 0);
	const pullU = pullUncertainty(setting, at, pull, asItIs);
	const bandU = bandUncertainty(setting, at, band, asItIs);
	const pullJudged = judgePull(document, pull, pullU.expanded, radiusMm);
	const bandJudged = judge(band, bandU.expanded, bandLimits(document));
	const share = tiltShare(document, radiusMm);
	const wallPull = pull / Math.sqrt(1 - fraction(document.arm, radiusMm) ** 2);
	return {
		place,
		radiusMm,
		tiltSharePct: share,
		tiltShareUncertaintyPct: tiltShareUncertainty(document),
		pullPct: pull,
		pullUncertaintyPct: pullU.expanded,
		bandPct: band,
		bandUncertaintyPct: bandU.expanded,
		breakawayPct: band / 2,
		torqueMicroNm: (pull / 100) * document.trackingForce.playingMn * document.arm.effectiveLengthMm,
		effectiveDegreesOfFreedom: Number.isFinite(pullU.freedom) ? pullU.freedom : null,
		repeatability: pool.centre.assumed ? 'assumed' : 'pooled',
		pullVerdict: pullJudged.verdict,
		pullAtWorst: pullJudged.atWorst,
		bandVerdict: bandJudged.verdict,
		bandAtWorst: bandJudged.atWorst,
		ownPullPct: share === null ? null : pull - share,
		pullWouldDecide:
			pullJudged.verdict !== 'undecided'
				? null
				: wouldDecide({
						figure: pull,
						expanded: pullU.expanded,
						limits: pullLimits(document),
						used: at.used,
						assumed: pool.centre.assumed,
						expandedWith: (more, fineStep) => pullUncertainty(setting, at, pull, {more, fineStep}).expanded,
					}),
		bandWouldDecide:
			bandJudged.verdict !== 'undecided'
				? null
				: wouldDecide({
						figure: band,
						expanded: bandU.expanded,
						limits: bandLimits(document),
						used: at.used,
						assumed: pool.width.assumed,
						expandedWith: (more, fineStep) => bandUncertainty(setting, at, band, {more, fineStep}).expanded,
					}),
		wallShare: {inner: (1 - wallPull / 100) / 2, outer: (1 + wallPull / 100) / 2},
		lean: leanOf(document, wallPull),
	};
};
