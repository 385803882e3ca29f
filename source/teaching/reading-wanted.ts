import type {Check, Reading} from '../check/check.js';
import {type Dialogue, positionOf} from '../check/dialogue.js';
import {readingAt, type Slot} from '../check/rounds.js';
import {openSeries} from '../check/series.js';
import {onRadiusMm} from '../procedure/bias-on.js';
import type {Facts} from '../procedure/facts.js';
import {offRadiusMm} from '../procedure/geometry.js';
import {isOnPlace, type Place} from '../procedure/places.js';

/** A reading of the gauge that a question asks for: where the gauge stands, which limit, which round. */
export type Wanted = Pick<Slot, 'index' | 'which'> & {
	readonly step: string;
	readonly slot: Slot;
	readonly radiusMm: number;
	readonly isTurned: boolean;
};

const radiusOf = (place: Place, facts: Facts): number | undefined =>
	isOnPlace(place) ? onRadiusMm(facts, place) : offRadiusMm(facts, place);

/** The reading that is asked for now; undefined where something else is. */
export function readingWanted(dialogue: Dialogue): Wanted | undefined {
	const {step, slot, progress, stuck} = positionOf(dialogue);
	if (!step || !slot || stuck || (dialogue.mode.kind !== 'ask' && dialogue.mode.kind !== 'side')) return;
	const radiusMm = radiusOf(slot.place, progress.facts);
	if (radiusMm === undefined) return;
	const {index, which, gauge} = slot;
	return {step: step.id, index, which, radiusMm, isTurned: gauge === 'turned', slot};
}

/** What was typed for it, as it stands in a check; undefined while it is not there. */
export const readingIn = (check: Check, {slot}: Wanted): Pick<Reading, 'value' | 'at'> | undefined =>
	readingAt(openSeries(check), slot);
