import type {Said, Sentences} from '../said.js';

/** Turns what is to be told into its sentence. */
export const speaker =
	<Values>(sentences: Sentences<Values>) =>
	({id, values}: Said<Values>): string =>
		// The table has for each id a sentence of just its values; the compiler cannot follow that through a look-up.
		(sentences[id] as (values: unknown) => string)(values);
