import {plural} from '../numbers.js';

const units = [
	{minutes: 1, one: '1 Minute', others: (count: number) => `${count} Minuten`},
	{minutes: 60, one: '1 Stunde', others: (count: number) => `${count} Stunden`},
	{minutes: 24 * 60, one: '1 Tag', others: (count: number) => `${count} Tagen`},
];

/** How long ago something was, in the largest unit of which one is full: 'vor 5 Minuten', 'vor 2 Tagen'. */
export function agoText(minutes: number): string {
	if (minutes < 0) return 'zu einer Zeit, die noch kommt (Uhr zurückgestellt?)';
	const unit = units.findLast((one) => minutes >= one.minutes);
	if (!unit) return 'gerade eben';
	const count = Math.round(minutes / unit.minutes);
	return `vor ${plural(count, {one: unit.one, other: unit.others(count)})}`;
}
