/** The invented arms and their bench. */
export const practice = {};
