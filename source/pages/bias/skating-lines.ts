import {isAbove} from '../../measures/compare.js';
import {gaugeShows} from '../../measures/hold-band.js';
import {wantedReadingPct} from '../../measures/skating.js';
import {hasBias} from '../../procedure/bias-devices.js';
import type {Facts} from '../../procedure/facts.js';
import {partialDocument} from '../../results/document-of-check.js';
import type {Document} from '../../results/document-schema.js';
import {type Figures, figuresOf, isMeasured} from '../../results/figures.js';
import {words} from '../../words/index.js';
import {endText, type OnGauge, onGauge, readingWithWay, scaleLine} from '../on-gauge.js';
import {line, type Shown} from '../shown-lines.js';
import {curveOf} from './curve.js';

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
	return [line(words.bias.setting.outerBeyondTop({outers, end: endText(gauge)}), 'warn')];
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
		curveOf({document, probe: figures.probe, rows: []}),
		...scaleLine(gauge),
		line(words.bias.setting.torque, 'dim'),
		...(hasBias(facts) ? [] : [line(words.bias.setting.noDevice)]),
	];
}
