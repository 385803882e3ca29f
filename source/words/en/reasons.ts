/** Why someone went on, or struck a round out, by id. */
export const reasons = {};
