import type {Check, Series} from '../check/check.js';
import type {ReadingNote} from '../check/practice-notes.js';
import {isComplete} from '../check/series.js';
import {chosenTrial} from '../check/trials.js';
import {isOnPlace, places} from '../procedure/places.js';

const hasBothRadii = (series: Series): boolean => series.inner.some(isComplete) && series.outer.some(isComplete);

/** The series whose figures a practice check came to: the last one that was probed at both radii, else the last. */
function measuredSeries({series}: Check): Series | undefined {
	return series.findLast(hasBothRadii) ?? series.at(-1);
}

/** How the readings came about that still stand in the figures: the zero of the gauge, and the rounds of the last series. */
export function standingReadings(check: Check): readonly ReadingNote[] {
	const series = measuredSeries(check);
	const notes = check.practice?.readings ?? [];
	if (!series) return [];
	const zero = ['zero-first', 'zero-turned'].flatMap((round) =>
		['inner', 'outer'].map((limit) => notes.findLast(({step}) => step === `${round}-${limit}`)),
	);
	// With the bias on, the figures are those of the setting that was kept.
	const on = chosenTrial(check, series)?.trial ?? series;
	const probed = places.flatMap((place) =>
		(isOnPlace(place) ? on[place] : series[place]).flatMap((round, index) =>
			(['innerLimit', 'outerLimit'] as const).map((which) =>
				round[which] && !round.struck
					? notes.findLast(
							(note) =>
								note.step === `probe-${place}` &&
								note.index === index &&
								note.which === which &&
								note.at === round[which]?.at,
						)
					: undefined,
			),
		),
	);
	return [...zero, ...probed].filter((note) => note !== undefined);
}
