/** What the full screens and the plain lines say by themselves. */
export const faces = {};
