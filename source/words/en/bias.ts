/** The bias setting. */
export const bias = {};
