/** What the pages of a check say beside the question. */
export const pages = {};
