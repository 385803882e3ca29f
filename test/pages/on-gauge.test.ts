import {describe, expect, it} from 'vitest';
import {aimAt, aimText, beyondTop, type OnGauge, scaleLine, showsMiddle} from '../../source/pages/on-gauge.js';
import {inWords, line, type Shown} from '../../source/pages/shown-lines.js';
import {viewOf} from '../../source/pages/view.js';
import {words} from '../helpers/said.js';
import {biasAnswers, northDeckWith} from '../helpers/sample-check.js';
import {choose, follow, freshDialogue, type Script, say, text, waysOut} from '../helpers/script.js';

// Invented gauges. What they show is worked out by hand beside each check, from reading × factor = percent of the
// playing force once the zero is off, turned round: reading = percent / factor + zero.

const read = (shown: readonly Shown[]): string => shown.map(inWords).join('\n');
const {gauge} = words.pages;

/** Carries 23.94 mN where 21 mN play: 1.14 times as much. */
const heavy: OnGauge = {
	scale: {factor: 1.14, zero: 0.3, nudge: 0.1},
	unit: 'percent',
	step: 0.1,
	topOfScale: 20,
	isHandForce: false,
};

describe('What the gauge shows', () => {
	it('is the wanted percent over what it carries, with its zero: at both limits and in the middle', () => {
		// 15.39 / 1.14 = 13.5, and 0.3 more is 13.8. The rounds read span 4 and 3.6: half of their mean, 1.9, to either side.
		const rounds = [
			{innerLimit: 7, outerLimit: 11},
			{innerLimit: 7.2, outerLimit: 10.8},
		];
		expect(aimText(aimAt(136, 15.39, heavy, rounds), heavy)).toBe(
			gauge.aim({unit: 'percent', step: 0.1, middle: 13.8, limits: {inner: 11.9, outer: 15.7}}),
		);
	});

	const middleOf = (middle: number, {unit, step} = heavy) => gauge.aim({unit, step, middle, limits: undefined});

	it('is the middle alone where no band is known', () => {
		expect(aimText(aimAt(98, 15.39, heavy), heavy)).toBe(middleOf(13.8));
	});

	it('is rounded to the step that the gauge has', () => {
		// 13.8 lies nearer to 14 than to 13.5.
		for (const step of [0.5, 1]) {
			const coarse = {...heavy, step};
			expect(aimText(aimAt(98, 15.39, heavy), coarse)).toBe(middleOf(14, coarse));
		}
	});

	it('is said as the arm pushes, also where it pushes in or not at all', () => {
		// −3.42 / 1.14 = −3, and 0.3 more is −2.7; −0.342 / 1.14 = −0.3, and 0.3 more is nothing.
		expect(aimText(aimAt(98, -3.42, heavy), heavy)).toBe(middleOf(-2.7));
		expect(aimText(aimAt(98, -0.342, heavy), heavy)).toBe(middleOf(0));
	});

	it('is a force on a gauge in mN or in grams', () => {
		// 21 mN play: 1 mN is 100/21 %, so 12.6 % are 2.646 mN; with a zero of −0.05 mN the gauge shows 2.596.
		const inMn: OnGauge = {
			scale: {factor: 100 / 21, zero: -0.05, nudge: 0},
			unit: 'mN',
			step: 0.05,
			topOfScale: 4,
			isHandForce: false,
		};
		expect(aimText(aimAt(136, 12.6, inMn), inMn)).toBe(middleOf(2.6, inMn));
		// 21 mN are 21 / 9.80665 = 2.1414 g (NIST SP 811 app. B.8); 12.6 % of them 0.2698 g.
		const inGrams: OnGauge = {...inMn, scale: {factor: 980.665 / 21, zero: 0, nudge: 0}, unit: 'gf', step: 0.01};
		expect(aimText(aimAt(136, 12.6, inGrams), inGrams)).toBe(middleOf(0.27, inGrams));
	});
});

describe('Beyond the end of the gauge', () => {
	const end = {unit: 'percent', step: 0.1, topOfScale: 20} as const;

	it('stands that it cannot show the middle', () => {
		// 22.8 / 1.14 = 20, and 0.3 more is 20.3; at 20 nothing is shown any more either.
		expect(read(beyondTop(aimAt(136, 22.8, heavy), heavy))).toBe(
			gauge.middleBeyond({...end, radiusMm: 136, middle: 20.3}),
		);
		expect(showsMiddle(aimAt(136, 1.14 * 19.7, heavy), heavy)).toBe(false);
		expect(showsMiddle(aimAt(136, 1.14 * 19.6, heavy), heavy)).toBe(true);
	});

	it('stands which limit it cannot show, and which one to go by', () => {
		// 19.95 % show 17.8 in the middle; with 2.5 to either side the outer limit is 20.3 and the inner one 15.3.
		const aim = aimAt(136, 19.95, heavy, [{innerLimit: 6, outerLimit: 11}]);
		expect(read(beyondTop(aim, heavy))).toBe(
			gauge.limitBeyond({...end, radiusMm: 136, limit: 'outer', beyond: 20.3, other: 15.3}),
		);
	});

	it('stands nothing where both limits can be shown', () => {
		expect(beyondTop(aimAt(136, 15.39, heavy, [{innerLimit: 7, outerLimit: 11}]), heavy)).toEqual([]);
	});
});

describe('Why figures are not what was typed', () => {
	const told = (values: Partial<Parameters<typeof gauge.scale>[0]>) =>
		gauge.scale({
			unit: 'percent',
			playing: undefined,
			times: undefined,
			zero: undefined,
			isHandForce: false,
			...values,
		});

	it('is said in one faint line: what the gauge carries, and what it shows at nothing', () => {
		expect(scaleLine(heavy)).toEqual([line(told({times: 1.14, zero: 0.3}), 'aside')]);
	});

	it('names only what makes a difference: more than 1 % of the force, or a zero', () => {
		const scaled = (factor: number, zero: number) => read(scaleLine({...heavy, scale: {factor, zero, nudge: 0}}));
		expect(scaled(1.009, 0)).toBe('');
		expect(scaled(1.011, 0)).toBe(told({times: 1.011}));
		expect(scaled(0.9, 0)).toBe(told({times: 0.9}));
		expect(scaled(1, -0.25)).toBe(told({zero: -0.25}));
	});

	it('names the playing force where the gauge shows a force, and whose push is meant where it shows that of a hand', () => {
		expect(read(scaleLine({...heavy, unit: 'mN', scale: {factor: 100 / 21, zero: 0, nudge: 0}}))).toBe(
			told({unit: 'mN', playing: 21}),
		);
		expect(read(scaleLine({...heavy, isHandForce: true}))).toBe(told({times: 1.14, zero: 0.3, isHandForce: true}));
	});
});

describe('A gauge that carries more than the playing force', () => {
	const narrow: Script['rounds'] = {
		// With the gauge turned, in its own sign: it shows 0.25 % more than there is, either way.
		inner: [
			['0.5 in', '1 out'],
			['+1', '-0.5'],
			['0.5 in', '1 out'],
		],
		outer: [['0.5 in', '1 out']],
		closing: [['0.5 in', '1 out']],
	};
	// Weighed without its guard: 21 mN and 0.3 g × 9.80665 mN/g = 2.94 mN (NIST SP 811 app. B.8) are 1.14 times the
	// 21 mN that play. Zero +0.25 %, step 0.5 %.
	const script = northDeckWith(
		{
			...biasAnswers,
			weighed: 'without',
			'guard-account': 'add',
			'guard-mass': '0.3 g',
			'force-reading': '21 mN',
			'force-high': '25 mN',
		},
		narrow,
	);
	const note = gauge.scale({unit: 'percent', playing: undefined, times: 1.14, zero: 0.25, isHandForce: false});
	// More than a tenth over the playing force is gone past with a reason.
	const weighed = say(follow(freshDialogue(), script, {until: 'force-reading'}), [
		text('21 mN'),
		waysOut,
		choose('override'),
		choose('guard-only'),
	]);
	const at = (step: string) => viewOf(follow(weighed, script, {until: step})).shown;

	it('is told of on the probe screen once there is a figure, and not before', () => {
		expect(read(at('probe-outer'))).not.toContain(note);
		let isTold = false;
		follow(weighed, script, {
			until: 'probe-closing',
			seen: (dialogue) => {
				isTold ||= read(viewOf(dialogue).shown).includes(note);
			},
		});
		expect(isTold).toBe(true);
	});

	it('is told what it shows once the bias is as skating wants it', () => {
		// Skating wants 12.4911 % at 136 mm: 12.4911 / 1.14 + 0.25 = 11.21; the limits read off the bias, 1.5 apart, lie
		// 0.75 to either side: 10.46 and 11.96. To the step of 0.5: 11, 10.5 and 12.
		expect(read(at('probe-bias-outer'))).toContain(
			words.bias.setting.aimShown({
				of: 'wanted',
				shows: gauge.aim({unit: 'percent', step: 0.5, middle: 11, limits: {inner: 10.5, outer: 12}}),
			}),
		);
	});

	it('is told of once beside what the bias came to', () => {
		expect(read(at('bias-result')).split(note)).toHaveLength(2);
	});
});
