import {type Deck, deckAsFound, type Finds, movesTo, obstacles} from '../procedure/deck.js';
import type {Facts} from '../procedure/facts.js';
import {isPutBack} from '../procedure/index.js';
import {offPlaces, onPlaces} from '../procedure/places.js';
import type {Step} from '../procedure/step.js';
import type {StepId} from '../procedure/step-ids.js';
import {whileProbing} from '../procedure/steps-probe.js';
import type {Check} from './check.js';
import {isPassed, type Progress} from './progress.js';
import type {BecauseValues} from './says.js';
import {openSeries} from './series.js';

/** How the deck stands, worked out from what was answered: each step that is done leaves it as it says. */
export function deckOf(check: Check, {facts, visible, stateOf}: Progress): Deck {
	const found: Deck = {
		...deckAsFound,
		damping: facts.is('arm-damping', 'yes') ? 'in' : 'none',
		bias: facts.answered('arm-bias-device') && !facts.is('arm-bias-device', 'none') ? 'as-found' : 'none',
	};
	const done = visible.filter((step) => isPassed(stateOf(step)));
	const isDone = (...ids: readonly StepId[]): boolean => done.some((step) => ids.includes(step.id));
	const leaving = (isBack: boolean) =>
		done.filter(({id}) => isPutBack(id) === isBack).map((step) => step.leaves?.(facts));
	// Put back is put back, also from the middle of a round.
	return Object.assign(found, ...leaving(false), biasOn(check), onGauge(check, facts, isDone), ...leaving(true));
}

/** Once it is on it stays on, whatever is asked anew, until it was switched off. */
const biasOn = ({answers}: Check): Partial<Deck> => (answers['bias-on']?.value === true ? {bias: 'on'} : {});

/**
 * While rounds are taken the arm lies on the gauge, which stands as it does for the last of them, or floats: until the arm is locked
 * again after the probe, and with the bias on until the deck is put back.
 */
function onGauge(check: Check, facts: Facts, isDone: (...ids: readonly StepId[]) => boolean): Partial<Deck> {
	const series = openSeries(check);
	const {gauge: _stands, ...armThere} = whileProbing(facts, 'as-used');
	const [off, on] = [offPlaces, onPlaces].map((some) => some.flatMap((place) => series[place]).at(-1));
	// Another setting of the bias is tried: the arm lies there until it is locked to hook the device.
	if (series.trials.length > 0 && !on && !isDone('bias-weight', 'bias-set', 'bias-on')) return armThere;
	// A check that was stopped in the midst of its rounds locks the arm by its put-back list.
	if (isDone('back-lock')) return {};
	// Between two series it is as the one before was left.
	const left = check.series.at(-2)?.closed?.because.id;
	if (!off && !on && left !== undefined && !isDone('first-swing')) {
		if (inTheMidst.some((one) => one === left)) return armThere;
		return left === atVerdict ? {arm: 'locked'} : {};
	}
	const last = on ?? (isDone('probe-end') ? undefined : off);
	return last ? whileProbing(facts, last.gauge ?? 'as-used') : {};
}

/** A remedy is chosen at the verdict, with the arm locked after its probe; a series may be closed in the midst of its rounds. */
const atVerdict = 'remedy' satisfies keyof BecauseValues;
const inTheMidst = ['left-overnight', 'closing-off'] as const satisfies readonly (keyof BecauseValues)[];

const findsOf = ({finds}: Step, {facts}: Progress): Finds =>
	typeof finds === 'function' ? finds(facts) : (finds ?? {});

/** What a hand does first, so that the deck stands as a step wants it. */
export const movesBefore = (deck: Deck, step: Step, progress: Progress) => movesTo(deck, findsOf(step, progress));

/** The parts of the deck that keep a step from being asked now. */
export const keptBy = (deck: Deck, step: Step, progress: Progress): readonly (keyof Deck)[] =>
	obstacles(deck, findsOf(step, progress));
