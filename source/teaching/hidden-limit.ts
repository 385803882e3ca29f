import type {ReadingNote} from '../check/practice-notes.js';
import type {ArmSpec} from '../practice/arm-spec.js';
import {carriedMn} from '../practice/torques.js';
import {truthOf} from '../practice/truth.js';

/**
 * What the gauge would show, without trembling, at the hold limit that a reading was to find, or at the end of its scale; in its
 * own sign, in percent.
 */
export function limitShownPct(
	spec: ArmSpec,
	{radiusMm, isTurned, which}: Pick<ReadingNote, 'radiusMm' | 'isTurned' | 'which'>,
): number {
	const {pullPct, bandPct} = truthOf(spec, radiusMm);
	const limitPct = pullPct + (which === 'outerLimit' ? 0.5 : -0.5) * bandPct;
	const {gainPct, zeroPct, topPct} = spec.gauge;
	const carriedPct = (limitPct * spec.playingMn) / carriedMn(spec);
	const shownPct = (isTurned ? -1 : 1) * carriedPct * (1 + gainPct / 100) + zeroPct;
	return Math.min(topPct, Math.max(-topPct, shownPct));
}
