import {endsOf} from './between-radii-figures.js';
import type {Document, PlaceName} from './document-schema.js';
import {type Figures, isMeasured, type MeasuredRadius} from './figures-types.js';
import {seriesRead} from './series-read.js';

/** The inner and the outer radius side by side, where both have figures. */
function endFacts({probe, betweenRadii}: Figures) {
	const ends = endsOf(probe);
	if (ends === null || betweenRadii === null) return null;
	const both: readonly [MeasuredRadius, MeasuredRadius] = [ends.inner, ends.outer];
	return {
		...ends,
		both,
		between: betweenRadii,
		/** Size of the difference of the pulls that tilt does not explain, in percent. */
		pullDifferencePct: Math.abs(betweenRadii.pullDifferencePct),
		bandDifferencePct: Math.abs(betweenRadii.bandDifferencePct),
	};
}

export type DiagnosisFacts = ReturnType<typeof diagnosisFacts>;

/** Everything that the rows of the findings look at. */
export function diagnosisFacts(document: Document, figures: Figures) {
	const series = seriesRead(document);
	const {pullLimits, bandLimits} = series.conditions;
	const measured = figures.probe.filter(isMeasured);
	return {document, series, figures, measured, ends: endFacts(figures), pullLimits, bandLimits};
}

/** Names of the places of radii, each once, in the order of the document. */
export const placesOf = (radii: readonly {readonly place: PlaceName}[]): PlaceName[] => [
	...new Set(radii.map(({place}) => place)),
];
