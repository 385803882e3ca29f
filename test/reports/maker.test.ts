import {describe, expect, it} from 'vitest';
import {textsOf} from './reading.js';
import {poorSource, storySource} from './support.js';

const story = textsOf(storySource);

describe('A page for the maker', () => {
	it('has arm, serial number, readings, figures as percent, force and torque, and says that it blames nobody', () => {
		expect(story.maker).toContain('N 0042');
		// The worked example: 5.375 ± 0.391683 % of 21 mN is 1.129 ± 0.082 mN, times 233 mm 263.0 ± 19.2 µN·m.
		expect(story.maker).toMatch(/the same as a force\n+1\.13 mN out ± 0\.08 mN/);
		expect(story.maker).toMatch(/the same as a torque\n+263 µN·m out ± 19 µN·m/);
		expect(story.maker).toContain('does not judge who or what is to blame');
		expect(story.maker).not.toContain('Verdict: ');
	});

	it.each([
		['tilt of the deck', /ruled out\n+its share of the pull: 0\.17 % in ± 0\.03 % at the inner radius/],
		['bias device', /ruled out\n+confirmed out of action \(weighted lever with pulley\)/],
		['damping', /not fitted/],
		['leads that pull or rub', /ruled out/],
		['zero of the gauge', /ruled out\n+Zero of the gauge, found by turning it: 0\.13 % plus ± 0\.4 %/],
		['a guard that touches', /not ruled out\n+stylus 3 mm above the surface, window 5 to 6 mm/],
		[
			'something that moved during the probe',
			/ruled out\n+the closing round lay 0\.38 % from the inner rounds, allowed 0\.89 %/,
		],
	])('says of %s whether it was ruled out, and by what', (name, wanted) => {
		expect(afterCause(story.maker, name)).toMatch(wanted);
	});

	it.each([
		['tilt of the deck', /^not ruled out\n+its share of the pull: 1\.\d\d % in/],
		['bias device', /^not ruled out\n+weighted lever with pulley: still acting, or not confirmed/],
		['damping', /^not ruled out\n+the damper was not confirmed free of the arm/],
		['leads that pull or rub', /^not ruled out\n+Leads lie as always, nothing touches the arm: not so/],
		['lifter touching the arm', /^ruled out/],
		['zero of the gauge', /^not ruled out\n+Zero of the gauge not checked: it may be half a percent off, or a step/],
	])('says so where %s was not ruled out', (name, wanted) => {
		expect(afterCause(textsOf(poorSource).maker, name)).toMatch(wanted);
	});
});

/** What stands in the row of a cause. */
const afterCause = (page: string, name: string): string => {
	const [, after = ''] = page.replaceAll('\u00A0', ' ').split(`\n${name}\n`);
	return after.trimStart().slice(0, 200);
};
