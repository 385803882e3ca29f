/** The one door through which days are printed for a person. */
import {locale} from '#language/locale';

/** Year, month and day of a date such as '2026-05-04'. It belongs to no zone. */
function partsOf(date: string): readonly [year: number, month: number, day: number] {
	const [year = 0, month = 1, day = 1] = date.split('-').map(Number);
	return [year, month, day];
}

/** A date such as '2026-05-04': '4 May 2026'. */
export const dayText = (date: string): string => locale.day(...partsOf(date));

/** The month of a date such as '2026-05-04': 'May 2026'. */
export const monthText = (date: string): string => {
	const [year, month] = partsOf(date);
	return locale.month(year, month);
};
