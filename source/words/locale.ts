/** The language in use, as Intl names it: numbers, lists, plurals and dates are printed by its habits. */
export const locale = 'en-GB';
/** Whether its numbers are written with plain digits and a point, so that they need no Intl; a test asks Intl. */
export const hasPlainNumbers = true;
/** Whose short names of months are printed: three letters each in plain English, while the English of Britain has 'Sept'. */
export const monthLocale = 'en';
