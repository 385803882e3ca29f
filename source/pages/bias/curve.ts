import limits from '../../../shared/limits.json' with {type: 'json'};
import {recordRadiiMm} from '../../measures/bias-fit.js';
import {leastSkatingRadiusMm, wantedReadingPct} from '../../measures/skating.js';
import {dragOf} from '../../results/bias/figures.js';
import type {Document} from '../../results/document-schema.js';
import {type BiasRow, isMeasured, type RadiusFigures} from '../../results/figures-types.js';
import {words} from '../../words/index.js';
import type {Shown, WantedAt} from '../shown-lines.js';

const band = limits.effectiveDragBand.value;
const everyMm = 2;

/** The drag that the wanted readings of a document are worked out with. */
export function dragTaken(document: Document) {
	const drag = dragOf(document);
	return {drag, band, isUsual: drag === limits.effectiveDrag.value};
}

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
		...(brief || own.length === 0 ? [] : [words.bias.curve.ownPull({own})]),
		...measured.map(words.bias.curve.readAt),
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
	if (innermost === undefined || outermost === undefined) return [words.bias.curve.offTheRecord];
	const isInside = leastRadiusMm !== null && leastRadiusMm > innermost && leastRadiusMm < outermost;
	const told = [outermost, ...(isInside ? [Math.round(leastRadiusMm)] : []), innermost];
	const {pct, highPct} = wantedAt(outermost);
	return [
		words.bias.curve.wantedOverRecord({wanted: told.map(wantedAt), drag}),
		words.bias.curve.dragMoves({drag: band, byPct: Math.abs(highPct - pct)}),
		...(isInside ? [words.bias.curve.leastSkating({radiusMm: leastRadiusMm})] : []),
	];
}
