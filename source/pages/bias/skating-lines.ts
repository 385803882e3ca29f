import {isAbove} from '../../measures/compare.js';
import {gaugeShows} from '../../measures/hold-band.js';
import {wantedReadingPct} from '../../measures/skating.js';
import {hasBias} from '../../procedure/bias-devices.js';
import {onRadii} from '../../procedure/bias-on.js';
import type {Facts} from '../../procedure/facts.js';
import {dragOf} from '../../results/bias/figures.js';
import {partialDocument} from '../../results/document-of-check.js';
import type {Document} from '../../results/document-schema.js';
import {type Figures, figuresOf, isMeasured} from '../../results/figures.js';
import {words} from '../../words/index.js';
import {aimAt, type OnGauge, onGauge, readingWithWay, scaleLine, showsMiddle} from '../on-gauge.js';
import {line, type Shown} from '../shown-lines.js';
import {curveOf, dragTaken} from './curve.js';

/** An arm that sticks is told first that bias cannot be set finer than half its hold band. */
export function frictionFirst({probe}: Figures): Shown[] {
	const wide = probe.filter(isMeasured).filter(({bandVerdict}) => bandVerdict === 'beyond');
	if (wide.length === 0) return [];
	return [line(words.bias.setting.frictionFirst({bandPct: Math.max(...wide.map(({bandPct}) => bandPct))}), 'bad')];
}

/** A wanted reading that the gauge cannot show. */
function overTheTop({arm, bias}: Document, {probe}: Figures, gauge: OnGauge): Shown[] {
	const drag = bias?.effectiveDrag;
	if (drag === undefined) return [];
	const over = probe
		.filter(isMeasured)
		.map(({radiusMm, bandPct}) => ({
			radiusMm,
			outer: gaugeShows(wantedReadingPct(arm, drag, radiusMm) + bandPct / 2, gauge.scale),
		}))
		.filter(({outer}) => isAbove(outer, gauge.topOfScale));
	if (over.length === 0) return [];
	const outers = over.map(({radiusMm, outer}) => ({radiusMm, shown: readingWithWay(outer, gauge)}));
	return [line(words.bias.setting.outerBeyondTop({...gauge, outers}), 'warn')];
}

/** What the gauge is to show at each radius, as far as it can. */
function wantedOnGauge(document: Document, facts: Facts, gauge: OnGauge): Shown[] {
	const {arm} = document;
	const drag = dragOf(document);
	const middles = onRadii(facts)
		.map(({radiusMm}) => aimAt(radiusMm, wantedReadingPct(arm, drag, radiusMm), gauge))
		.filter((aim) => showsMiddle(aim, gauge))
		.map(({radiusMm, middle}) => ({radiusMm, shown: readingWithWay(middle, gauge)}));
	return middles.length === 0 ? [] : [line(words.bias.setting.wantedOnGauge({middles}), 'strong')];
}

/** What the gauge is to show with the bias on, and the drag that this is worked out with. */
export function wantedLines(facts: Facts): Shown[] {
	const document = partialDocument(facts);
	if (!document) return [];
	return [
		...wantedOnGauge(document, facts, onGauge(document, facts)),
		line(words.bias.setting.drag(dragTaken(document))),
	];
}

/** Before any bias reading: what skating asks of this arm, beside the arm's own pull. */
export function skatingLines(facts: Facts): Shown[] {
	const document = partialDocument(facts);
	if (!document) return [];
	const figures = figuresOf(document);
	const gauge = onGauge(document, facts);
	return [
		...frictionFirst(figures),
		...overTheTop(document, figures, gauge),
		...(hasBias(facts) ? wantedOnGauge(document, facts, gauge) : []),
		line(words.bias.setting.drag(dragTaken(document))),
		curveOf({document, probe: figures.probe, rows: []}),
		...scaleLine(gauge),
		line(words.bias.setting.torque, 'aside'),
		...(hasBias(facts) ? [] : [line(words.bias.setting.noDevice)]),
	];
}
