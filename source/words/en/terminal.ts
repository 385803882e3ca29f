/** What is said about the terminal and the keys. */
export const terminal = {};
