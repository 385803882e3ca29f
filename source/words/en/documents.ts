/** What is wrong with a document of figures, and what is wanted there. */
export const documents = {};
