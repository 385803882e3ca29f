import type {Limits} from '../measures/verdict.js';
import {endsOf} from './between-radii-figures.js';
import {documentLimits} from './conditions.js';
import type {Document, PlaceName} from './document-schema.js';
import {type BetweenRadii, type Figures, isMeasured, type MeasuredRadius} from './figures-types.js';
import {type SeriesRead, seriesRead} from './series-read.js';

/** The inner and the outer radius side by side, where both have figures. */
export type EndFacts = {
	readonly inner: MeasuredRadius;
	readonly outer: MeasuredRadius;
	readonly both: readonly [MeasuredRadius, MeasuredRadius];
	readonly between: BetweenRadii;
	/** Size of the difference of the pulls that tilt does not explain, in percent. */
	readonly pullDifferencePct: number;
	readonly bandDifferencePct: number;
};

/** Everything that the rows of the findings look at. */
export type DiagnosisFacts = {
	readonly document: Document;
	readonly series: SeriesRead;
	readonly figures: Figures;
	readonly measured: readonly MeasuredRadius[];
	readonly ends: EndFacts | null;
	readonly pullLimits: Limits;
	readonly bandLimits: Limits;
};

const endFacts = ({probe, betweenRadii}: Figures): EndFacts | null => {
	const ends = endsOf(probe);
	if (ends === null || betweenRadii === null) return null;
	const {inner, outer} = ends;
	return {
		inner,
		outer,
		both: [inner, outer],
		between: betweenRadii,
		pullDifferencePct: Math.abs(betweenRadii.pullDifferencePct),
		bandDifferencePct: Math.abs(betweenRadii.bandDifferencePct),
	};
};

export const diagnosisFacts = (document: Document, figures: Figures): DiagnosisFacts => {
	const {pull, band} = documentLimits(document);
	return {
		document,
		series: seriesRead(document),
		figures,
		measured: figures.probe.filter(isMeasured),
		ends: endFacts(figures),
		pullLimits: pull,
		bandLimits: band,
	};
};

/** Names of the places of radii, each once, in the order of the document. */
export const placesOf = (radii: readonly {readonly place: PlaceName}[]): PlaceName[] => [
	...new Set(radii.map(({place}) => place)),
];
