import type {StepId} from '../procedure/step-ids.js';
import type {StepValues} from '../procedure/step-values.js';

/** Words that are the same always, or that tell of the values of their step. */
type Text<Id> = Id extends keyof StepValues ? string | ((values: StepValues[Id]) => string) : string;

/** What a person reads of one step. */
type StepWords<Id> = {
	readonly title: string;
	/** What to do: one or two lines. */
	readonly ask: Text<Id>;
	/** What to do, for one who knows the way; where it is left out, as for everybody. */
	readonly short?: string;
	/** Why, for the one who is tempted to skip. */
	readonly why: Text<Id>;
	/** The usual mistake. */
	readonly mistake: Text<Id>;
	/** What may hurt someone or something here; always on the screen. */
	readonly caution?: string;
};

/** The words of every step, by its id. */
export type StepSentences = {readonly [Id in StepId]: StepWords<Id>};
