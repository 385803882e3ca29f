import {steps} from '#language/steps/index';
import type {ArmEvent} from '../procedure/arm-event.js';
import type {Facts} from '../procedure/facts.js';
import type {Names} from '../procedure/names.js';
import type {TypedRefusal} from '../procedure/refusal.js';
import type {Step} from '../procedure/step.js';
import type {IdOf, StepId} from '../procedure/step-ids.js';
import {words} from './index.js';
import {found, speaker} from './speaker.js';

/** The title of a step; an id that this procedure does not know stands for itself. */
export const titleOf = (id: string): string => found(steps, id)?.title ?? id;

const textOf = (part: 'ask' | 'why' | 'mistake', {id, values}: Step, facts: Facts): string => {
	const text: string | ((values: never) => string) = steps[id][part];
	// A step has just the values that its words tell of; the compiler cannot follow that through a look-up.
	return typeof text === 'function' ? text(values?.(facts) as never) : text;
};

/** What to do at a step. */
export const askOf = (step: Step, facts: Facts): string => textOf('ask', step, facts);

/** The same in short words, for one who knows the way. */
export const shortAskOf = (step: Step, facts: Facts): string => steps[step.id].short ?? askOf(step, facts);

/** Why a step is there. */
export const whyOf = (step: Step, facts: Facts): string => textOf('why', step, facts);

/** The usual mistake at a step. */
export const mistakeOf = (step: Step, facts: Facts): string => textOf('mistake', step, facts);

/** What may hurt someone or something at a step. */
export const cautionOf = ({id}: Step): string | undefined => steps[id].caution;

/** What an option of a choice is called; one that is not offered any more stands for itself. */
export const optionLabel = (step: StepId, option: string): string =>
	found<Readonly<Record<string, string>>>(words.options, step)?.[option] ?? option;

/** How what is kept as typed is written. */
export const names: Names = {options: words.options, ...words.written};

/** The options of a choice, each with what it is called. */
export const optionsOf = (step: StepId, options: readonly string[]) =>
	options.map((id) => ({id, label: optionLabel(step, id)}));

/** A line of a list that is ticked. */
export const tickText = (step: IdOf<'ticks'>, line: string): string => found(words.ticks[step], line) ?? line;

/** Something that was done to an arm; a kind that is not known here stands for itself. */
export const eventText = ({kind, note}: Pick<ArmEvent, 'kind' | 'note'>): string =>
	words.years.event({what: found(words.options['done-since'], kind) ?? kind, note, isOther: kind === 'other'});

/** A place as it is called on screen. */
export {placeName as placeLabel} from '#language/entries';

/** Why typed text was not taken. */
export const refusalText: (refusal: TypedRefusal) => string = speaker(words.refusals);
