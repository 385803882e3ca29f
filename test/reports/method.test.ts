import {describe, expect, it} from 'vitest';
import type {CheckSource} from '../../source/reports/check-source.js';
import {isMeasured} from '../../source/results/figures.js';
import {played} from '../helpers/invented-checks.js';
import {flat, words} from '../helpers/said.js';
import {northDeckWith} from '../helpers/sample-check.js';
import {textsOf} from './reading.js';
import {poorSource, storySource} from './support.js';

const {captions, method, ruledOut} = words.reports;
const {budget} = method;

/** What every report says, on one line. */
const said = (source: CheckSource): readonly string[] => Object.values(textsOf(source)).map(flat);

const {check} = storySource.record;
const stoodStill: CheckSource = {
	...storySource,
	record: {...storySource.record, check: {...check, setAnew: false}},
};
const firstForm = (source: CheckSource): CheckSource => {
	const {issued} = source.record;
	return {...source, record: {...source.record, issued: issued && {...issued, form: 1}}};
};
/** The gauge cannot be turned; read free, it shows half a percent before the first round and after the last. */
const readFree: CheckSource = {
	record: played({
		at: '2026-11-14T09:40:00+01:00',
		script: northDeckWith(
			{'gauge-turns': 'no', 'zero-free-before': '+0.5', 'zero-free-after': '+0.5'},
			{inner: [['3 out', '8.5 out']]},
		),
	}),
	history: [],
};
/** As figures stand that one round at each radius came to. */
const once: CheckSource = {
	...storySource,
	record: (() => {
		const {issued} = storySource.record;
		if (!issued) throw new Error('nothing was issued');
		const probe = issued.figures.probe.map((one) =>
			isMeasured(one) ? {...one, repeatability: 'assumed' as const} : one,
		);
		return {...storySource.record, issued: {...issued, figures: {...issued.figures, probe}}};
	})(),
};

describe(captions.budget, () => {
	it('names the zero by how it was found', () => {
		for (const text of said(storySource)) expect(text).toContain(budget.zeroTurned);
		for (const text of said(poorSource)) expect(text).toContain(budget.zeroUnchecked);
		// Two readings of a step of 0.5 %: 0.5/√(12 × 2) = 0.102 % (JCGM 100:2008 F.2.2.1).
		for (const text of said(readFree)) expect(text).toContain(budget.zeroStated({value: 0.102, unit: 'percent'}));
	});

	it('names what setting up makes: in the rounds where the gauge was set anew, else 0.3 %', () => {
		for (const text of said(storySource)) {
			expect(text).toContain(budget.setAnew);
			expect(text).not.toContain(budget.notSetAnew);
		}
		for (const text of said(stoodStill)) expect(text).toContain(budget.notSetAnew);
	});

	it('says that the scatter is assumed where rounds cannot show it', () => {
		for (const text of said(storySource)) expect(text).toContain(budget.repeatsPooled);
		for (const text of said(once)) expect(text).toContain(budget.repeatsAssumed);
	});

	it('is not told of figures that were issued before it was: they say what their ± leave out', () => {
		for (const text of said(firstForm(storySource))) {
			expect(text).toContain(method.issuedBefore);
			expect(text).not.toContain(captions.budget);
		}
		for (const text of said(storySource)) expect(text).not.toContain(method.issuedBefore);
	});
});

describe('A zero that was read free of the arm', () => {
	it('stands beside the verdict with its ±, and among what was ruled out', () => {
		const {html, markdown, maker} = textsOf(readFree);
		// Two standard uncertainties of 0.102 %, to 95 %.
		for (const text of [html, markdown, maker])
			expect(flat(text)).toContain(
				words.pages.gauge.zero({source: 'stated', size: 0.5, side: 'plus', uncertainty: 0.2, unit: 'percent'}),
			);
		expect(maker).toMatch(new RegExp(`\\n${ruledOut.causes.zero}\\n+${ruledOut.out.replaceAll('\u00a0', ' ')}\\n`));
	});
});
