import {type BiasProblem, leftoverAt, ownPullAt} from '../../measures/bias-fit.js';
import {wallForce, wallShares} from '../../measures/groove-walls.js';
import {skatingFraction, wantedReadingPct} from '../../measures/skating.js';
import {leanDegrees, leanMicrometres} from '../../measures/stylus-lean.js';
import type {Document} from '../../results/document-schema.js';
import {plainNumber} from '../../words/wording.js';
import {line, type Shown} from '../shown-lines.js';

const shares = (forcePct: number): string => {
	const {inner, outer} = wallShares(forcePct);
	return `${(100 * inner).toFixed(0)} / ${(100 * outer).toFixed(0)}`;
};

/** The drag that is assumed leaves several µm open, and with a usual cantilever a twentieth of a degree. */
function lean(forcePct: number, {cartridge = {}, trackingForce}: Document): string {
	const {staticComplianceUmPerMn, cantileverMm} = cartridge;
	if (staticComplianceUmPerMn === undefined) return '';
	const micrometres = leanMicrometres(forcePct, trackingForce.playingMn, staticComplianceUmPerMn);
	const degrees = cantileverMm === undefined ? '' : ` ${leanDegrees(micrometres, cantileverMm).toFixed(1)}°`;
	return `; ${micrometres.toFixed(0)} µm${degrees}`;
}

/** What bias means in the groove: load on the inner and the outer wall, and the lean of the stylus, before and after. */
export function grooveLines(problem: BiasProblem, document: Document, bestFactor: number): Shown[] {
	const {arm, drag, own, bias} = problem;
	const cell = (radiusMm: number, pct: number): string => {
		const forcePct = wallForce(pct, skatingFraction(arm, radiusMm));
		return `${shares(forcePct)}${lean(forcePct, document)}`;
	};
	const rows = bias.map(({radiusMm}) => [
		`${plainNumber(radiusMm)} mm`,
		cell(radiusMm, ownPullAt(arm, own, radiusMm) - wantedReadingPct(arm, drag, radiusMm)),
		cell(radiusMm, leftoverAt(problem, radiusMm, 1)),
		cell(radiusMm, leftoverAt(problem, radiusMm, bestFactor)),
	]);
	const isLeaning = document.cartridge?.staticComplianceUmPerMn !== undefined;
	const head = ['', 'no bias', 'as set', 'at best'];
	return [
		line(`In the groove: load on inner / outer wall in %${isLeaning ? '; lean of the stylus' : ''}.`, 'strong'),
		{
			kind: 'table',
			head,
			rows,
			caption: rows
				.map(
					([name, ...cells]) =>
						`${name}: ${cells.map((text, index) => `${head[index + 1] ?? ''} ${text}`).join(', ')}.`,
				)
				.join(' '),
		},
	];
}
