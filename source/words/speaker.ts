import type {Said, Sentences} from '../said.js';

/** Turns what is to be told into its sentence. */
export const speaker =
	<Values>(sentences: Sentences<Values>) =>
	({id, values}: Said<Values>): string =>
		// The table has for each id a sentence of just its values; the compiler cannot follow that through a look-up.
		(sentences[id] as (values: unknown) => string)(values);

/** Of a table by id what an id stands for; it may come from a file, and be none of the table. */
export const found = <Value>(table: Readonly<Record<string, Value>>, id: string): Value | undefined =>
	Object.hasOwn(table, id) ? table[id] : undefined;
