import type {Check, Reading} from '../check/check.js';
import {type Dialogue, positionOf} from '../check/dialogue.js';
import {readingAt, type Slot} from '../check/rounds.js';
import {openSeries} from '../check/series.js';
import {onRadiusMm} from '../procedure/bias-on.js';
import type {Facts} from '../procedure/facts.js';
import {offRadiusMm} from '../procedure/geometry.js';
import {isOnPlace} from '../procedure/places.js';
import type {Place} from '../procedure/step.js';

/** A reading of the gauge that a question asks for: where the gauge stands, which limit, which round. */
export type Wanted = Pick<Slot, 'index' | 'which'> & {
	readonly step: string;
	/** Undefined for the zero of the gauge. */
	readonly slot?: Slot;
	readonly radiusMm: number;
	readonly isTurned: boolean;
};

const zeroStep = /^zero-(first|turned)-(inner|outer)$/;

const radiusOf = (place: Place, facts: Facts): number | undefined =>
	isOnPlace(place) ? onRadiusMm(facts, place) : offRadiusMm(facts, place);

/** The reading that is asked for now; undefined where something else is. */
export function readingWanted(dialogue: Dialogue): Wanted | undefined {
	const {step, slot, progress, stuck} = positionOf(dialogue);
	if (!step || stuck || (dialogue.mode.kind !== 'ask' && dialogue.mode.kind !== 'side')) return;
	const [, round, limit] = zeroStep.exec(step.id) ?? [];
	const which = slot?.which ?? (limit === 'inner' ? 'innerLimit' : 'outerLimit');
	const radiusMm = slot ? radiusOf(slot.place, progress.facts) : progress.facts.number('radius-inner');
	if (radiusMm === undefined || (!slot && round === undefined)) return;
	return {
		step: step.id,
		index: slot?.index ?? 0,
		which,
		radiusMm,
		isTurned: round === 'turned',
		...(slot ? {slot} : {}),
	};
}

/** What was typed for it, as it stands in a check; undefined while it is not there. */
export function readingIn(check: Check, {slot, step}: Wanted): Pick<Reading, 'value' | 'at'> | undefined {
	if (slot) return readingAt(openSeries(check), slot);
	const answer = check.answers[step];
	return typeof answer?.value === 'number' ? {value: answer.value, at: answer.at} : undefined;
}
