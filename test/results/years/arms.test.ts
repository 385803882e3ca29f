import {describe, expect, it} from 'vitest';
import type {PastCheck} from '../../../source/check/past-check.js';
import {yearsOf} from '../../../source/pages/years/years-lines.js';
import type {Profile} from '../../../source/procedure/facts.js';
import {renamed} from '../../../source/results/profile-changes.js';
import {profilesWith} from '../../../source/results/profiles.js';
import {summaryOf} from '../../../source/results/record.js';
import {checksOfArm, historyOf, namesOf} from '../../../source/results/years/arms.js';
import {driftingArm, playedInTurn} from '../../helpers/invented-checks.js';
import {words} from '../../helpers/said.js';

const years = playedInTurn(driftingArm).map(({record}) => record);
const rows: readonly PastCheck[] = years.map(summaryOf).reverse();
const last = years.at(-1);
if (!last) throw new Error('there are no years');
const kept = profilesWith([], last.check, last.finishedAt);
const rename = (profiles: readonly Profile[], kind: string, typed: string): readonly Profile[] => {
	const id = profiles.find((one) => one.kind === kind)?.id ?? '';
	const done = renamed(profiles, {id, typed, checkedArms: ['north deck'], at: '2026-07-01T09:00:00Z'});
	if (!done.ok) throw new Error(done.refusal.id);
	return done.profiles;
};

describe('The checks of an arm', () => {
	it('are found under its name of today, and under each that it had', () => {
		const profiles = rename(rename(kept, 'arm', 'upper deck'), 'arm', 'high deck');
		expect(namesOf('upper deck', profiles)).toEqual(['high deck', 'north deck', 'upper deck']);
		for (const name of ['north deck', 'upper deck', 'high deck'])
			expect(checksOfArm(rows, name, profiles)).toEqual(rows);
		expect(historyOf(last.check, rows, profiles)).toEqual(rows.slice(1));
	});

	it('leave out those that are void', () => {
		const voided = rows.map((row, index) => (index === 2 ? {...row, voidBecause: 'the deck was disturbed'} : row));
		expect(checksOfArm(voided, 'north deck', kept)).toEqual(rows.filter((_, index) => index !== 2));
		expect(historyOf(last.check, voided, kept)).toHaveLength(rows.length - 2);
	});

	it('made with the same gauge under another name are no checks with another gauge', () => {
		const said = (profiles: readonly Profile[], tools: string) => {
			const answers = {...last.check.answers};
			const name = answers['tools-name'];
			if (name) answers['tools-name'] = {...name, typed: tools, value: tools};
			const check = {...last.check, answers};
			const {changes = []} = yearsOf(check, historyOf(check, rows, profiles)) ?? {};
			return changes.map((one) => (one.kind === 'line' ? one.text : ''));
		};
		const other = words.results.notes['other-tools']({before: 'bench set', today: 'new set'});
		expect(said(kept, 'new set')).toContain(other);
		expect(said(rename(kept, 'tools', 'new set'), 'new set')).toEqual(said(kept, 'bench set'));
		// And back: an old check seen after its tools were renamed.
		expect(said(rename(kept, 'tools', 'new set'), 'bench set')).toEqual(said(kept, 'bench set'));
	});
});
