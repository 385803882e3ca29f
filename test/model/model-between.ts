import {above, atLeast, atMost} from './model-compare.js';
import {radiusAtSwing, swingAngle} from './model-geometry.js';
import {asUsed, turned} from './model-pool.js';
import type {BetweenRadiiOutput, ModelDocument, Place, ProbeOutput} from './model-types.js';
import {bandDifferenceUncertainty, type Counted, pullDifferenceUncertainty, type Setting} from './model-uncertainty.js';

interface End {
	counted: Counted;
	swing: number;
	pull: number;
	own: number;
	band: number;
}

const endAt = (document: ModelDocument, rows: ProbeOutput[], place: Place): End | null => {
	const row = rows.find((one) => one.place === place);
	const probe = document.probe.find((one) => one.place === place);
	if (row === undefined || probe === undefined || row.pullPct === null || row.bandPct === null) {
		return null;
	}
	return {
		counted: {radiusMm: row.radiusMm, used: asUsed(probe.rounds).length, turned: turned(probe.rounds).length},
		swing: swingAngle(document.arm, row.radiusMm),
		pull: row.pullPct,
		own: row.pullPct - (row.tiltSharePct ?? 0),
		band: row.bandPct,
	};
};

export const betweenRadii = (setting: Setting, rows: ProbeOutput[]): BetweenRadiiOutput | null => {
	const {document} = setting;
	const {effectiveLengthMm: l, pivotDistanceMm: d} = document.arm;
	const inner = endAt(document, rows, 'inner');
	const outer = endAt(document, rows, 'outer');
	if (inner === null || outer === null) {
		return null;
	}
	const pulls = outer.own - inner.own;
	const bands = outer.band - inner.band;
	const pullU = pullDifferenceUncertainty(setting, outer.counted, inner.counted, outer.pull - inner.pull);
	const bandU = bandDifferenceUncertainty(setting, outer.counted, inner.counted, bands);
	const en = Math.abs(pulls) / pullU;
	const bandEn = Math.abs(bands) / bandU;
	const slope = ((pulls / 100) * document.trackingForce.playingMn * l) / (outer.swing - inner.swing);
	const neutral = (): number | null => {
		if (!above(en, 1) || slope === 0) {
			return null;
		}
		// A swing angle lies between 0 and half a turn; a crossing outside is none.
		const swing = inner.swing - (inner.own * (outer.swing - inner.swing)) / pulls;
		if (!atLeast(swing, 0) || !atMost(swing, 180)) {
			return null;
		}
		const radius = radiusAtSwing(document.arm, swing);
		return atMost(Math.abs(l - d), radius) && atMost(radius, 150) ? radius : null;
	};
	return {
		pullDifferencePct: pulls,
		pullDifferenceUncertaintyPct: pullU,
		bandDifferencePct: bands,
		bandDifferenceUncertaintyPct: bandU,
		en,
		differs: above(en, 1),
		bandEn,
		bandDiffers: above(bandEn, 1),
		torqueSlopeMicroNmPerDeg: slope,
		neutralRadiusMm: neutral(),
	};
};
