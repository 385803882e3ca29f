/** What was found, its likely cause and what to do next, by code. */
export const findings = {};
