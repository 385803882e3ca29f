/** Nothing to tell beside the id. */
export type Nothing = Readonly<Record<never, never>>;

/** Something to be told: its id, and the values that tell of it. `words/` has the sentence. */
export type Said<Values> = {
	[Id in keyof Values]: {readonly id: Id; readonly values: Values[Id]};
}[keyof Values];

/** For each id the sentence of its values. */
export type Sentences<Values> = {readonly [Id in keyof Values]: (values: Values[Id]) => string};
