/** Comparison, trend and due dates. */
export const years = {};
