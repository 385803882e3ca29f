import {expect, it} from 'vitest';
import type {Shown} from '../../source/pages/shown-lines.js';
import {practised, wordsOf} from '../helpers/practised.js';
import {numbersIn, words} from '../helpers/said.js';

const {truth} = words.practice;
const sentence = truth.oneRound({held: 77, of: 99});

const heldSaid = (shown: readonly Shown[]) => numbersIn(wordsOf(shown), sentence, 77, 99);

it.each([1, 2, 3, 4, 5, 6])('after one round at a radius says first how many figures the ± held, seed %i', (seed) => {
	const {truth: shown} = practised({arm: 'sticky-bearing', seed, isPrepared: true, roundsEach: 1});
	const table = shown.findIndex(({kind}) => kind === 'table');
	const rows = shown.flatMap((one) => (one.kind === 'table' ? one.rows : []));
	const [yes, no] = [true, false].map((isWithin) => truth.isWithin({isWithin}));
	const count = (answer: string | undefined) => rows.filter((row) => row.at(-1) === answer).length;
	expect(heldSaid(shown.slice(0, table))).toEqual([count(yes), count(yes) + count(no)]);
	expect(rows).toHaveLength(4);
	expect(shown[1]).toMatchObject({kind: 'line', tone: 'warn'});
});

it('says nothing of it where each radius had its rounds', () => {
	expect(heldSaid(practised({arm: 'sticky-bearing', seed: 1, isPrepared: true}).truth)).toEqual([]);
});
