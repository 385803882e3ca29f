import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import type {Profile} from '../../source/procedure/facts.js';
import {summaryOf} from '../../source/results/record.js';
import {armStates} from '../../source/results/years/arm-states.js';
import {armsAtAGlance, latestOfNames} from '../../source/results/years/at-a-glance.js';
import {dueArms} from '../../source/results/years/due.js';
import {armProfile, filed} from '../helpers/filed-checks.js';

const row = summaryOf(filed({at: '2026-01-01T10:00:00Z'}));
const names = ['north', 'south', 'east', 'west'];
// The last one is no day of the Gregorian calendar.
const days = ['2026-11-28', '2026-11-29', '2026-11-30', '2027-01-01', '2026-02-30'];
const today = '2026-11-29T23:30:00+01:00';

const checks = fc
	.array(
		fc.record({
			arm: fc.constantFrom(...names),
			startedAt: fc.constantFrom('2026-01-01T10:00:00Z', '2026-05-01T10:00:00Z', '2026-09-01T10:00:00Z'),
			verdict: fc.constantFrom('beyond', 'good', null),
			nextDate: fc.constantFrom(...days, null),
			isVoid: fc.boolean(),
		}),
		{maxLength: 12},
	)
	.map((all) =>
		all
			.map(({isVoid, ...one}, index) => ({...row, ...one, id: `${index}`, ...(isVoid ? {voidBecause: 'twice'} : {})}))
			.toSorted((one, other) => (one.startedAt < other.startedAt ? 1 : -1)),
	);
const profiles = fc.constantFrom<readonly Profile[]>(
	[],
	[armProfile('north', {formerNames: ['south']})],
	[armProfile('new', {formerNames: ['east', 'west']}), armProfile('north', {setAside: true})],
);

describe('Arms at a glance', () => {
	it('are those that the page of arms counts', () => {
		fc.assert(
			fc.property(checks, profiles, (all, kept) => {
				const states = armStates(all, kept, today);
				const due = states.filter((one) => one.due !== undefined && one.due.inDays <= 0);
				const [first] = states.flatMap((one) => one.due ?? []);
				expect(armsAtAGlance(all, kept, today)).toEqual({arms: states.length, due: due.length, first});
			}),
		);
	});

	it('are the same by one check of each name as by all', () => {
		fc.assert(
			fc.property(checks, profiles, (all, kept) => {
				const latest = latestOfNames(all);
				expect(latest).toHaveLength(new Set(all.map(({arm}) => arm)).size);
				expect(armsAtAGlance(latest, kept, today)).toEqual(armsAtAGlance(all, kept, today));
			}),
		);
	});
});

describe('Days to the next check', () => {
	const inDays = (nextDate: string, from: string): number | undefined => {
		return dueArms([{...row, nextDate}], [], from)[0]?.inDays;
	};

	// Gregorian calendar: 2028 is a leap year, 2100 is none. In Europe clocks change on 29 March and 25 October 2026.
	it.each([
		['2026-11-29', '2026-11-29', 0],
		['2026-11-28', '2026-11-29', -1],
		['2026-03-30', '2026-03-28', 2],
		['2026-10-26', '2026-10-24', 2],
		['2028-03-01', '2028-02-28', 2],
		['2100-03-01', '2100-02-28', 1],
		['2027-01-01', '2026-01-01', 365],
	])('to %s from %s are %i', (day, from, days) => {
		expect(inDays(day, from)).toBe(days);
		expect(inDays(day, `${from}T23:59:00-11:00`)).toBe(days);
	});

	it.each(['2026-02-30', '2026-13-01', '2026-00-10', '2026-01-00', '', 'soon', '2026-1-1', '2026-11'])(
		'are not counted to %j, which is no day',
		(day) => {
			expect(dueArms([{...row, nextDate: day}], [], '2026-11-29')).toEqual([]);
		},
	);
});
