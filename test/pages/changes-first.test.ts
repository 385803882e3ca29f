import {expect, it} from 'vitest';
import {verdictLines} from '../../source/pages/verdict-lines.js';
import {driftingArm, playedInTurn} from '../helpers/invented-checks.js';
import {words} from '../helpers/said.js';

it('Right under its word the verdict of a repeated check says whether anything changed', () => {
	const {summary} = words.years.comparison;
	const told = playedInTurn(driftingArm).map(({record, history}) => {
		const second = verdictLines(record.check, record.issued, history)[1];
		return second?.kind === 'line' ? Object.values(summary).includes(second.text) : false;
	});
	// The first check of an arm has nothing to be held against.
	expect(told).toEqual([false, true, true, true, true]);
});
