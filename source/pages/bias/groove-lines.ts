import {type BiasProblem, leftoverAt, ownPullAt} from '../../measures/bias-fit.js';
import {
	leanDegrees,
	leanMicrometres,
	skatingFraction,
	wallForce,
	wallShares,
	wantedReadingPct,
} from '../../measures/skating.js';
import type {Document} from '../../results/document-schema.js';
import {words} from '../../words/index.js';
import {mm} from '../../words/numbers.js';
import {line, type Shown, table} from '../shown-lines.js';

/** The drag that is assumed leaves several µm open, and with a usual cantilever a twentieth of a degree. */
function leanOf(forcePct: number, {cartridge = {}, trackingForce}: Document) {
	const {staticComplianceUmPerMn, cantileverMm} = cartridge;
	if (staticComplianceUmPerMn === undefined) return {};
	const leanUm = leanMicrometres(forcePct, trackingForce.playingMn, staticComplianceUmPerMn);
	return cantileverMm === undefined ? {leanUm} : {leanUm, leanDeg: leanDegrees(leanUm, cantileverMm)};
}

/** What bias means in the groove: load on the inner and the outer wall, and the lean of the stylus, before and after. */
export function grooveLines(problem: BiasProblem, document: Document, bestFactor: number): Shown[] {
	const {arm, drag, own, bias} = problem;
	const {inGroove, wallLoads, columns} = words.bias.groove;
	const rows = bias.map(({radiusMm}) => {
		const leftPct = [
			ownPullAt(arm, own, radiusMm) - wantedReadingPct(arm, drag, radiusMm),
			leftoverAt(problem, radiusMm, 1),
			leftoverAt(problem, radiusMm, bestFactor),
		];
		const forces = leftPct.map((pct) => wallForce(pct, skatingFraction(arm, radiusMm)));
		return [mm(radiusMm), ...forces.map((pct) => wallLoads({...wallShares(pct), ...leanOf(pct, document)}))];
	});
	const isLeaning = document.cartridge?.staticComplianceUmPerMn !== undefined;
	return [line(inGroove({isLeaning}), 'strong'), table(['', ...columns], rows)];
}
