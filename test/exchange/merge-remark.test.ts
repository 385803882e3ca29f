import {describe, expect, it} from 'vitest';
import type {Remark} from '../../source/desk/stored-forms.js';
import {mergedRemark} from '../../source/exchange/merging.js';

describe('What is noted later beside a check on both sides', () => {
	const at = '2026-06-01T08:00:00+02:00';
	const mark = {reason: 'tried out', at};
	const taken = {...mark, takenBackAt: '2026-06-05T08:00:00+02:00'};
	const step = {'back-lock': {typed: 'yes', value: true, at}};
	const begun: Remark = {putBack: {}, overrides: []};
	const ended: Remark = {putBack: step, overrides: [], putBackAt: at};
	const voided: Remark = {void: mark};
	const again: Remark = {formerVoids: [taken]};
	const anew: Remark = {formerVoids: [taken], void: {reason: 'another arm', at: '2026-07-01T08:00:00+02:00'}};

	it.each<[string, Remark, Remark, Remark]>([
		['a putting back that came to its end, over one that did not', begun, ended, ended],
		['a void mark beside a putting back', ended, voided, {...ended, ...voided}],
		['that a void mark was taken back', voided, again, again],
		['that it was marked void anew', again, anew, anew],
		['what this program does not know', voided, {extra: [1]}, {...voided, extra: [1]}],
	])('comes to the later state of the two: %s', (_, earlier, later, merged) => {
		for (const [ours, theirs] of [
			[earlier, later],
			[later, earlier],
			[merged, earlier],
			[merged, later],
		] as const)
			expect(mergedRemark(ours, theirs)).toEqual({remark: merged, clashes: false});
	});

	it.each<[string, Remark, Remark]>([
		['two void marks', voided, {void: {...mark, reason: 'another one'}}],
		['a void mark that was taken back at two times', again, {formerVoids: [{...taken, takenBackAt: at}]}],
		['two put-backs', ended, {...ended, putBackAt: '2026-06-09T08:00:00+02:00'}],
		['two beginnings of one', begun, {putBack: step, overrides: []}],
		['two values of something unknown', {extra: 1}, {extra: 2}],
	])('stays as it is here where neither is the later: %s', (_, ours, theirs) => {
		expect(mergedRemark(ours, theirs)).toEqual({remark: ours, clashes: true});
		expect(mergedRemark(ours, {...theirs, other: 1})).toEqual({remark: {...ours, other: 1}, clashes: true});
	});
});
