import type {PastCheck, PastProbe} from '../../../check/past-check.js';
import {mm, plainNumber, rounded, span} from '../../numbers.js';
import {forceWithWay, sideForce} from '../figures.js';

/** The list of past checks. */
export const past = {
	heading: 'Date, arm, verdict; then radius in mm: pull / hold band in %.',
	/** The verdict; a check that did not come to its end, or does not count, says so in its place. */
	state: ({voidBecause, outcome, verdict}: Pick<PastCheck, 'voidBecause' | 'outcome' | 'verdict'>) => {
		if (voidBecause !== undefined) return 'void';
		return outcome === 'complete' ? (verdict ?? 'no verdict') : outcome;
	},
	figures: ({radiusMm, pullPct, bandPct}: PastProbe) =>
		pullPct === null || bandPct === null
			? `${plainNumber(radiusMm)}: off scale`
			: `${plainNumber(radiusMm)}: ${forceWithWay(pullPct, '', 1).replace('  ', ' ').trim()}/${rounded(bandPct, 1)}`,
	/** With every ±. */
	wholeFigures: ({radiusMm, pullPct, pullUncertaintyPct, bandPct, bandUncertaintyPct}: PastProbe) =>
		pullPct === null || pullUncertaintyPct === null || bandPct === null || bandUncertaintyPct === null
			? `${mm(radiusMm)} off scale`
			: `${mm(radiusMm)} ${sideForce(pullPct, pullUncertaintyPct)}, band ${span(bandPct, bandUncertaintyPct)}`,
};
