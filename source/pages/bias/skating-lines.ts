import {isAbove} from '../../measures/compare.js';
import {gaugeShows} from '../../measures/gauge-shows.js';
import {wantedReadingPct} from '../../measures/skating.js';
import {hasBias} from '../../procedure/bias-devices.js';
import type {Facts} from '../../procedure/facts.js';
import {partialDocument} from '../../results/document-of-check.js';
import type {Document} from '../../results/document-schema.js';
import {type Figures, figuresOf, isMeasured} from '../../results/figures.js';
import {listed, plainNumber} from '../../words/wording.js';
import {endText, type OnGauge, onGauge, readingWithWay, scaleLine} from '../on-gauge.js';
import {line, type Shown} from '../shown-lines.js';
import {curveOf} from './curve.js';

/** An arm that sticks is told first that bias cannot be set finer than half its hold band. */
export function frictionFirst({probe}: Figures): Shown[] {
	const wide = probe.filter(isMeasured).filter(({bandVerdict}) => bandVerdict === 'beyond');
	if (wide.length === 0) return [];
	const widestPct = Math.max(...wide.map(({bandPct}) => bandPct));
	return [
		line(
			`First: the hold band of ${widestPct.toFixed(1)} % is beyond limits, and bias can be set no finer than half of it, ±${(widestPct / 2).toFixed(1)} %.`,
			'bad',
		),
	];
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
	const each = over.map(({radiusMm, outer}) => `${readingWithWay(outer, gauge)} at ${plainNumber(radiusMm)} mm`);
	return [line(`With the bias as wanted the outer limit may come to ${listed(each)}: ${endText(gauge)}.`, 'warn')];
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
		line(
			'Wanted is the torque that bias must cancel: drag times the sine of the angle between groove tangent and the line stylus to pivot. The groove wall, without bias, gives a little more: drag times the tangent.',
			'dim',
		),
		...(hasBias(facts) ? [] : [line('This arm has no bias device: its own pull is all there is against skating.')]),
	];
}
