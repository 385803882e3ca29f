import {describe, expect, it} from 'vitest';
import {finishedCheck} from '../../source/desk/filing.js';
import {besidePages} from '../../source/pages/beside/beside-pages.js';
import type {BesidePlace} from '../../source/pages/beside/places.js';
import {inWords} from '../../source/pages/shown-lines.js';
import {type FinishedCheck, summaryOf} from '../../source/results/record.js';
import {armStates} from '../../source/results/years/arm-states.js';
import type {PastFilter} from '../../source/results/years/past-filter.js';
import {memoryWorkbench} from '../helpers/memory-workbench.js';
import {words} from '../helpers/said.js';
import {northDeckWith} from '../helpers/sample-check.js';
import {follow, freshDialogue} from '../helpers/script.js';

/** An invented check of an arm on a day, with the day of the next one. */
function checkOf(arm: string, id: string, day: string, next: string): FinishedCheck {
	const {check} = follow(freshDialogue([], id), northDeckWith({'arm-name': arm}));
	const record = finishedCheck({...check, startedAt: `${day}T10:00:00Z`}, `${day}T12:00:00Z`);
	return {...record, nextCheck: {date: next, because: 'invented'}};
}

const records = [
	checkOf('Öhrchen', 'one', '2024-05-01', '2024-06-01'),
	checkOf('cedar nine', 'two', '2025-05-01', '2025-06-01'),
	checkOf('cedar twelve', 'three', '2026-01-10', '2026-03-10'),
	checkOf('cedar nine', 'four', '2026-02-01', '2026-04-01'),
];

const bench = memoryWorkbench({records: [...records]});
const at = (place: BesidePlace, listRows = 9) => besidePages(bench, {listRows, columns: 80, hasKeys: true}).at(place);
const optionsAt = (place: BesidePlace, listRows?: number) => {
	const {prompt} = at(place, listRows).page;
	return prompt.kind === 'choice' ? prompt.options : [];
};
const {arms, past} = words.beside;

describe('Arms', () => {
	it('are reached from the first screen: few in a list, of many one by part of its name', () => {
		expect(optionsAt({at: 'home'}).map(({label}) => label)).toContain(arms.onFile({arms: 3, due: 1}));
		expect(at({at: 'home'}, 9).turn('arms')).toEqual({kind: 'go', to: {at: 'arms', offset: 0}});
		expect(at({at: 'home'}, 2).turn('arms')).toEqual({kind: 'go', to: {at: 'find-arm'}});
	});

	it('are found by part of a name, whatever its case and accents; several are listed', () => {
		const {turn} = at({at: 'find-arm'});
		expect(turn('OHR')).toEqual({kind: 'go', to: {at: 'arm', arm: 'Öhrchen'}});
		expect(turn('Cedar')).toEqual({kind: 'go', to: {at: 'arms', offset: 0, part: 'Cedar'}});
		expect(optionsAt({at: 'arms', offset: 0, part: 'Cedar'}).map(({id}) => id)).toEqual([
			'arm:cedar twelve',
			'arm:cedar nine',
		]);
		expect(turn('birch')).toEqual({kind: 'refused', sentence: arms.noneWith({typed: 'birch'})});
		expect(turn('')).toEqual({kind: 'go', to: {at: 'arms', offset: 0}});
	});

	it('stand in the order in which they are due, those set aside last', () => {
		const rows = records.map(summaryOf).toReversed();
		const order = (aside: {readonly setAside?: true}) =>
			armStates(
				rows,
				[{id: 'p', kind: 'arm', name: 'Öhrchen', answers: {}, usedAt: '2024-05-01T12:00:00Z', ...aside}],
				'2026-03-02',
			).map(({name}) => name);
		expect(order({})[0]).toBe('Öhrchen');
		expect(order({setAside: true}).at(-1)).toBe('Öhrchen');
	});

	it('have a page each: what state it is in, and all that can be done', () => {
		const place = {at: 'arm', arm: 'cedar nine'} as const;
		const shown = at(place).page.shown.map(inWords);
		expect(shown[0]).toBe(
			arms.one.last({verdict: past.state({outcome: 'complete', verdict: 'beyond'}), date: '2026-02-01'}),
		);
		expect(at(place).page.shown.some(({kind}) => kind === 'history')).toBe(true);
		expect(optionsAt(place).map(({id}) => id)).toEqual(['recheck', 'start', 'past', 'back']);
		expect(at(place).turn('past')).toEqual({kind: 'go', to: {at: 'past', offset: 0, only: {armNames: ['cedar nine']}}});
	});
});

describe('Past checks', () => {
	it('are filtered by arm, year and verdict', () => {
		const ids = (only?: PastFilter) =>
			optionsAt({at: 'past', offset: 0, ...(only && {only})})
				.map(({id}) => id)
				.filter((id) => id !== 'filter');
		expect(ids()).toHaveLength(4);
		expect(ids({armNames: ['cedar nine']}).toSorted()).toEqual(['four', 'two']);
		expect(ids({year: '2026'}).toSorted()).toEqual(['four', 'three']);
		expect(ids({year: '2026', armNames: ['cedar nine']})).toEqual(['four']);
		expect(ids({verdict: 'good'})).toEqual([]);
		const filter = at({at: 'past-filter', offset: 0});
		expect(filter.turn('year')).toMatchObject({kind: 'go', to: {at: 'filter-year'}});
		expect(at({at: 'filter-year', offset: 0}).turn('2025')).toEqual({
			kind: 'go',
			to: {at: 'past', offset: 0, only: {year: '2025'}},
		});
		expect(at({at: 'filter-arm', offset: 0}).turn('ohr')).toEqual({
			kind: 'go',
			to: {at: 'past', offset: 0, only: {armNames: ['Öhrchen']}},
		});
	});

	it('stand beside another one of the same arm that was chosen, the earlier one to the left', () => {
		const check = at({at: 'past-check', id: 'four', offset: 0});
		expect(check.page.title).toBe(past.check.titleOf({arm: 'cedar nine', date: '2026-02-01'}));
		expect(check.turn('compare')).toMatchObject({kind: 'go', to: {at: 'compare-with', id: 'four'}});
		expect(optionsAt({at: 'compare-with', id: 'four', offset: 0, from: 0}).map(({id}) => id)).toEqual(['two']);
		const {shown} = at({at: 'compared', id: 'four', other: 'two', offset: 0, from: 0}).page;
		const [word, table] = shown;
		expect(word && inWords(word)).toBe(words.years.comparison.between.unchanged);
		if (table?.kind !== 'table') throw new Error('the two stand in a table');
		expect(table.head).toEqual(past.compared.columns({before: '2025-05-01', now: '2026-02-01'}));
		expect(optionsAt({at: 'past-check', id: 'three', offset: 0}).map(({id}) => id)).not.toContain('compare');
	});
});
