import {plural} from '../numbers.js';

const units = [
	{minutes: 1, one: '1 minute', others: (count: number) => `${count} minutes`},
	{minutes: 60, one: '1 hour', others: (count: number) => `${count} hours`},
	{minutes: 24 * 60, one: '1 day', others: (count: number) => `${count} days`},
];

/** How long ago something was, in the largest unit of which one is full: '5 minutes ago', '2 days ago'. */
export function agoText(minutes: number): string {
	if (minutes < 0) return 'at a time still to come (was the clock set back?)';
	const unit = units.findLast((one) => minutes >= one.minutes);
	if (!unit) return 'just now';
	const count = Math.round(minutes / unit.minutes);
	return `${plural(count, {one: unit.one, other: unit.others(count)})} ago`;
}
