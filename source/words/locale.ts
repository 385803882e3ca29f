/** The language in use, as Intl names it: numbers, lists, plurals and dates are printed by its habits. */
export const locale = 'en-GB';
/** Whose short names of months are printed: three letters each in plain English, while the English of Britain has 'Sept'. */
export const monthLocale = 'en';
