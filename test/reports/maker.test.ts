import {describe, expect, it} from 'vitest';
import {optionLabel, tickText, titleOf} from '../../source/words/step-text.js';
import {flat, words} from '../helpers/said.js';
import {textsOf} from './reading.js';
import {poorSource, storySource} from './support.js';

const story = textsOf(storySource);
const {maker, ruledOut} = words.reports;
const {causes} = ruledOut;
const {gauge} = words.pages;
const weightedLever = optionLabel('arm-bias-device', 'weighted-lever');
const zeroFound = gauge.zero({source: 'turned', size: 0.13, side: 'plus', uncertainty: 0.4, unit: 'percent'});

describe('A page for the maker', () => {
	it('has arm, serial number, readings, figures as percent, force and torque, and says that it blames nobody', () => {
		expect(story.maker).toContain('N 0042');
		// The worked example: 5.375 ± 0.391683 % of 21 mN is 1.129 ± 0.082 mN, times 233 mm 263.0 ± 19.2 µN·m.
		expect(afterCause(story.maker, maker.figures.force)).toMatch(/^1\.13 mN out ± 0\.08 mN/);
		expect(afterCause(story.maker, maker.figures.torque)).toMatch(/^263 µN·m out ± 19 µN·m/);
		expect(story.maker).toContain(maker.purpose);
		expect(story.maker).not.toContain(words.pages.verdict.headline({verdict: 'beyond', atWorst: 'beyond'}));
	});

	it.each([
		[
			causes.tilt,
			ruledOut.out,
			// Of two shares only the first is known from outside.
			ruledOut.levelShares({shares: [{place: words.places.inner, pct: -0.17, uncertaintyPct: 0.03}], isPaired: true}),
		],
		[causes.bias, ruledOut.out, ruledOut.biasOff({device: weightedLever, mistake: ''})],
		[causes.damping, ruledOut.notFitted, ruledOut.noDamper],
		[ruledOut.lines.leads ?? '', ruledOut.out, ''],
		[causes.zero, ruledOut.out, zeroFound],
		[causes.clearance, ruledOut.open, ruledOut.clearance({stylusMm: 3, lowMm: 5, highMm: 6})],
		[causes.moved, ruledOut.out, ruledOut.closing({movedPct: 0.38, allowedPct: 0.89, tells: true})],
	])('says of %s whether it was ruled out, and by what', (name, state, by) => {
		expect(flat(afterCause(story.maker, name))).toMatch(beginning(state, by));
	});

	it.each([
		[causes.tilt, ruledOut.open, ruledOut.levelShares({shares: [], isPaired: true})],
		[causes.bias, ruledOut.open, ruledOut.biasOn({device: weightedLever})],
		[causes.damping, ruledOut.open, ruledOut.damperOn],
		[ruledOut.lines.leads ?? '', ruledOut.open, ruledOut.lineNo({line: tickText('wires', 'leads')})],
		[causes.lifter, ruledOut.out, ruledOut.lineYes({line: titleOf('lifter-clear')})],
		[causes.zero, ruledOut.open, gauge.zeroUnchecked],
	])('says so where %s was not ruled out', (name, state, by) => {
		expect(flat(afterCause(poor, name))).toMatch(beginning(state, by));
	});

	it('gives the share of a tilt that was not ruled out as it was measured', () => {
		expect(afterCause(poor, causes.tilt)).toMatch(/1\.\d\d % in/);
	});
});

const poor = textsOf(poorSource).maker;

/** What a row begins with: the state, and by what it is known. */
const beginning = (state: string, by: string): RegExp =>
	new RegExp(`^${flat(`${state} ${by}`).replace(/[$()*+.?[\\\]^{|}]/g, '\\$&')}`);

/** What stands in the row of a cause. */
const afterCause = (page: string, name: string): string => {
	const [, after = ''] = page.split(`\n${name}\n`);
	return after.trimStart().slice(0, 200);
};
