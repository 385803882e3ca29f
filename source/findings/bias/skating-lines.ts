import {isAbove} from '../../measures/compare.js';
import {wantedReadingPct} from '../../measures/skating.js';
import {hasBias} from '../../procedure/bias-devices.js';
import type {Facts} from '../../procedure/facts.js';
import {partialDocument} from '../document-of-check.js';
import type {Document} from '../document-schema.js';
import {type Figures, figuresOf, isMeasured} from '../figures.js';
import {line, type Shown} from '../shown-lines.js';
import {plainNumber} from '../wording.js';
import {curveOf} from './curve.js';
import {topOfScalePct} from './setting-read.js';

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
function overTheTop(document: Document, {probe}: Figures): Shown[] {
	const topPct = topOfScalePct(document);
	const drag = document.bias?.effectiveDrag;
	const over = probe
		.filter(isMeasured)
		.filter(
			({radiusMm, bandPct}) =>
				drag !== undefined && isAbove(wantedReadingPct(document.arm, drag, radiusMm) + bandPct / 2, topPct),
		);
	if (over.length === 0) return [];
	return [
		line(
			`The wanted reading and half the hold band together pass the top of the scale (${plainNumber(topPct)} %) at ${over.map(({radiusMm}) => `${plainNumber(radiusMm)} mm`).join(' and ')}: the outer limit may be off scale there.`,
			'warn',
		),
	];
}

/** Before any bias reading: what skating asks of this arm, beside the arm's own pull. */
export function skatingLines(facts: Facts): Shown[] {
	const document = partialDocument(facts);
	if (!document) return [];
	const figures = figuresOf(document);
	return [
		...frictionFirst(figures),
		...overTheTop(document, figures),
		curveOf({document, probe: figures.probe, rows: []}),
		line(
			'Wanted is the torque that bias must cancel: drag times the sine of the angle between groove tangent and the line stylus to pivot. The groove wall, without bias, gives a little more: drag times the tangent.',
			'dim',
		),
		...(hasBias(facts) ? [] : [line('This arm has no bias device: its own pull is all there is against skating.')]),
	];
}
