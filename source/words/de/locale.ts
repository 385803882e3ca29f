import type {locale as english} from '../en/locale.js';

const months = ['Jan.', 'Feb.', 'März', 'Apr.', 'Mai', 'Juni', 'Juli', 'Aug.', 'Sept.', 'Okt.', 'Nov.', 'Dez.'];

const twoDigits = (number: number): string => String(number).padStart(2, '0');

export const locale: typeof english = {
	name: 'de-DE',
	decimalMark: ',',
	day: (year, month, day) => `${twoDigits(day)}.${twoDigits(month)}.${year}`,
	month: (year, month) => `${months[month - 1] ?? ''} ${year}`,
	/** Of units without a sign of their own. */
	unitNames: {ofForce: 'der Auflagekraft'},
	list: {between: ', ', last: ' und '},
};
