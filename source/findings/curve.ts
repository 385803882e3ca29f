import limits from '../../shared/limits.json' with {type: 'json'};
import {recordRadiiMm} from '../measures/bias-fit.js';
import {leastSkatingRadiusMm, wantedReadingPct} from '../measures/skating.js';
import {dragOf} from './bias-figures.js';
import type {Document} from './document-schema.js';
import {type BiasRow, isMeasured, type RadiusFigures} from './figures-types.js';
import type {PullAt, Shown} from './shown-lines.js';
import {forceWithWay, listed, plainNumber} from './wording.js';

const band = limits.effectiveDragBand.value;
const everyMm = 2;

/** A force at a radius in words: '12.8 % out at 140 mm'. */
const at = ({radiusMm, pct}: PullAt): string => `${forceWithWay(pct, '%', 1)} at ${plainNumber(radiusMm)} mm`;

/** What is left of a reading: too little or too much bias. */
export const leftWord = (leftoverPct: number): string => {
	const size = Math.abs(leftoverPct).toFixed(1);
	if (Number(size) === 0) return 'nothing left over';
	return `${size} % ${leftoverPct < 0 ? 'too little' : 'too much'}`;
};

type CurveOf = {
	readonly document: Document;
	readonly probe: readonly RadiusFigures[];
	readonly rows: readonly BiasRow[];
	readonly drag?: number;
};

/** The wanted reading over the record, with the arm's own pull and what was read with the bias on. */
export function curveOf({document, probe, rows, drag = dragOf(document)}: CurveOf): Shown {
	const {arm} = document;
	const wantedAt = (radiusMm: number) => ({
		radiusMm,
		pct: wantedReadingPct(arm, drag, radiusMm),
		lowPct: wantedReadingPct(arm, drag - band, radiusMm),
		highPct: wantedReadingPct(arm, drag + band, radiusMm),
	});
	const wanted = recordRadiiMm(arm)
		.filter((radiusMm) => radiusMm % everyMm === 0)
		.map(wantedAt);
	const own = probe.filter(isMeasured).map(({radiusMm, pullPct}) => ({radiusMm, pct: pullPct}));
	const measured = rows.flatMap(({radiusMm, pullOnPct, leftoverPct}) =>
		pullOnPct === null ? [] : [{radiusMm, pct: pullOnPct, leftoverPct: leftoverPct ?? 0}],
	);
	const leastRadiusMm = leastSkatingRadiusMm(arm);
	const ends = [wanted.at(-1), leastRadiusMm === null ? undefined : wantedAt(leastRadiusMm), wanted[0]];
	const outermost = wanted.at(-1);
	const caption = [
		`With bias on the gauge should show ${listed(ends.flatMap((one) => (one ? [at({...one, radiusMm: Math.round(one.radiusMm)})] : [])))}, at an assumed drag of ${drag.toFixed(2)}.`,
		...(outermost
			? [
					`A drag of ${band} more or less moves that by ${Math.abs(outermost.highPct - outermost.pct).toFixed(1)} % at the outside.`,
				]
			: []),
		...(leastRadiusMm === null ? [] : [`Skating is least at ${Math.round(leastRadiusMm)} mm.`]),
		...(own.length === 0 ? [] : [`The arm's own pull without bias: ${listed(own.map(at))}.`]),
		...measured.map((one) => `With the bias on it read ${at(one)}: ${leftWord(one.leftoverPct)}.`),
	].join(' ');
	return {kind: 'curve', wanted, leastRadiusMm, own, measured, caption};
}
