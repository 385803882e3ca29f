/** What is answered to typed text, and the names of what can be chosen. */
export const entries = {};
