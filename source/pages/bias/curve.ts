import limits from '../../../shared/limits.json' with {type: 'json'};
import {recordRadiiMm} from '../../measures/bias-fit.js';
import {leastSkatingRadiusMm, wantedReadingPct} from '../../measures/skating.js';
import {dragOf} from '../../results/bias/figures.js';
import type {Document} from '../../results/document-schema.js';
import {type BiasRow, isMeasured, type RadiusFigures} from '../../results/figures-types.js';
import {forceWithWay, listed, plainNumber} from '../../words/wording.js';
import type {PullAt, Shown, WantedAt} from '../shown-lines.js';

const band = limits.effectiveDragBand.value;
const everyMm = 2;

/** A force at a radius in words: '12.5 % out at 136 mm'. */
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
	/** In words only what was read: the rest was said before. */
	readonly brief?: boolean;
};

/** The wanted reading over the record, with the arm's own pull and what was read with the bias on. */
export function curveOf({document, probe, rows, brief = false}: CurveOf): Shown {
	const {arm} = document;
	const drag = dragOf(document);
	const wantedAt = (radiusMm: number): WantedAt => ({
		radiusMm,
		pct: wantedReadingPct(arm, drag, radiusMm),
		lowPct: wantedReadingPct(arm, drag - band, radiusMm),
		highPct: wantedReadingPct(arm, drag + band, radiusMm),
	});
	const radii = recordRadiiMm(arm).filter((radiusMm) => radiusMm % everyMm === 0);
	const own = probe.filter(isMeasured).map(({radiusMm, pullPct}) => ({radiusMm, pct: pullPct}));
	const measured = rows.flatMap(({radiusMm, pullOnPct, leftoverPct}) =>
		pullOnPct === null ? [] : [{radiusMm, pct: pullOnPct, leftoverPct: leftoverPct ?? 0}],
	);
	const leastRadiusMm = leastSkatingRadiusMm(arm);
	const sentences = [
		...(brief ? [] : wantedInWords(radii, leastRadiusMm, drag, wantedAt)),
		...(brief || own.length === 0 ? [] : [`The arm's own pull without bias: ${listed(own.map(at))}.`]),
		...measured.map((one) => `Read with the bias on: ${at(one)}, ${leftWord(one.leftoverPct)}.`),
	];
	return {kind: 'curve', wanted: radii.map(wantedAt), leastRadiusMm, own, measured, caption: sentences.join(' ')};
}

/** The curve in sentences: outside, least and inside, and what another drag would make of it. */
function wantedInWords(
	radii: readonly number[],
	leastRadiusMm: number | null,
	drag: number,
	wantedAt: (radiusMm: number) => WantedAt,
): string[] {
	const [innermost, outermost] = [radii[0], radii.at(-1)];
	if (innermost === undefined || outermost === undefined) return ['The arm reaches no part of the record.'];
	const isInside = leastRadiusMm !== null && leastRadiusMm > innermost && leastRadiusMm < outermost;
	const said = [outermost, ...(isInside ? [Math.round(leastRadiusMm)] : []), innermost].map((radiusMm) =>
		at(wantedAt(radiusMm)),
	);
	const {pct, highPct} = wantedAt(outermost);
	return [
		`Wanted with bias, in percent of the playing force: ${listed(said)}, if the drag is ${drag.toFixed(2)}, which is assumed.`,
		`A drag of ${band} more or less moves that by ${Math.abs(highPct - pct).toFixed(1)} % at the outside.`,
		...(isInside ? [`Skating is least at ${Math.round(leastRadiusMm)} mm.`] : []),
	];
}
