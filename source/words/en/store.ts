/** What can go wrong on the disk. */
export const store = {};
