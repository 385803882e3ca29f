/** What each step says: its title, what to do, why, and the usual mistake. */
export const steps = {};
