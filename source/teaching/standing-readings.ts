import type {Check} from '../check/check.js';
import type {ReadingNote} from '../check/practice-notes.js';
import {chosenTrial} from '../check/trials.js';
import {isOnPlace, places, stepOfRounds} from '../procedure/places.js';
import {seriesThatCounts} from '../results/document-of-check.js';

/** How the readings came about that still stand in the figures: the rounds of the series that counts. */
export function standingReadings(check: Check): readonly ReadingNote[] {
	const series = seriesThatCounts(check);
	const notes = check.practice?.readings ?? [];
	// With the bias on, the figures are those of the setting that was kept.
	const on = chosenTrial(check, series)?.trial ?? series;
	const probed = places.flatMap((place) =>
		(isOnPlace(place) ? on[place] : series[place]).flatMap((round, index) =>
			(['innerLimit', 'outerLimit'] as const).map((which) =>
				round[which] && !round.struck
					? notes.findLast(
							(note) =>
								note.step === stepOfRounds(place) &&
								note.index === index &&
								note.which === which &&
								note.at === round[which]?.at,
						)
					: undefined,
			),
		),
	);
	return probed.filter((note) => note !== undefined);
}
