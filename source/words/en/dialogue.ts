/** What the dialogue of a check says beside its steps. */
export const dialogue = {};
