import {describe, expect, it} from 'vitest';
import type {Dialogue} from '../../source/check/dialogue.js';
import {respond} from '../../source/check/respond.js';
import {inWords, type Shown} from '../../source/pages/shown-lines.js';
import {viewOf} from '../../source/pages/view.js';
import {northDeck, northDeckWith} from '../helpers/sample-check.js';
import {words} from '../helpers/said.js';
import {choose, clockOf, follow, freshDialogue, type Script, say, text, waysOut} from '../helpers/script.js';

const at = (until: string, answers: Script['answers'] = {}, rounds: Script['rounds'] = {}) =>
	follow(freshDialogue(), northDeckWith(answers, rounds), {until});
/** A gauge that cannot be turned, so that every round is one as used. */
const notTurned = {'gauge-turns': 'no', 'zero-free-before': '-', 'zero-free-after': '-'};
const asUsed: Script['rounds'] = {inner: [['3 out', '8.5 out']]};
const {consequences, gauge, level, rounds, verdict: said, view} = words.pages;
const wordsOf = (shown: readonly Shown[]) => shown.map(inWords).join('\n');
const shownAt = (dialogue: Dialogue, typed = '') => wordsOf(viewOf(dialogue, typed).shown);
const refused = (dialogue: Dialogue, typed: string) => {
	const next = respond(dialogue, text(typed), clockOf(dialogue)());
	if (!next) throw new Error('left for home');
	return next;
};

describe('A screen', () => {
	it('says which arm, which stage of how many, and that the deck is not ready', () => {
		expect(viewOf(freshDialogue())).toMatchObject({
			arm: view.arm({name: undefined, isPractice: false}),
			stage: expect.stringMatching(/ \(1\/\d+\)$/),
			progress: view.notReadyToPlay,
			title: words.steps.safe.title,
		});
		expect(viewOf(freshDialogue()).stage).toContain(words.stages.safe);
		expect(viewOf(at('clearance')).arm).toBe('north deck');
	});

	it('counts its stages without those that do not apply', () => {
		const stages = (answers: Readonly<Record<string, string>>) =>
			Number(/\/(\d+)\)/.exec(viewOf(at('clearance', answers)).stage)?.[1]);
		expect(stages({'arm-damping': 'yes'})).toBe(stages({}) + 1);
		expect(stages({'arm-bias-device': 'none'})).toBe(stages({}) - 1);
	});

	it('names the unit in which a bare number is taken', () => {
		expect(viewOf(at('clearance')).unit).toBe('mm');
		expect(viewOf(at('playing-force')).unit).toBe('g');
		expect(viewOf(at('gauge-step', {'gauge-unit': 'mN'})).unit).toBe('mN');
		expect(viewOf(at('probe-inner')).unit).toBe('%');
		expect(viewOf(at('wires')).unit).toBe('');
	});

	it('has a reason and the usual mistake for every question', () => {
		follow(freshDialogue(), northDeck, {
			seen: (dialogue) => {
				const {why, mistake, title, ask, prompt} = viewOf(dialogue);
				for (const text of [why, mistake, title]) expect(text.length).toBeGreaterThan(2);
				// The rounds that were taken, and the verdict, ask by what can be chosen.
				if (!(prompt.kind === 'choice' && ask === '')) expect(ask).toMatch(/[.?]$/);
			},
		});
	});

	it('says why an entry was not taken, until the next one', () => {
		const here = refused(at('clearance'), 'about four');
		expect(viewOf(here).refusal).toMatch(/is not a number/);
		expect(viewOf(say(here, [text('5.6')])).refusal).toBeUndefined();
	});
});

describe('What is typed', () => {
	it('shows at once what it would lead to', () => {
		expect(shownAt(at('clearance'))).toContain(consequences.stylus({lowMm: 5, highMm: 6, nowMm: undefined}));
		expect(shownAt(at('clearance'), '5.6')).toContain(consequences.stylus({lowMm: 5, highMm: 6, nowMm: 5.6}));
		// 5.6 mm less the guard's 1.3 mm.
		expect(shownAt(at('clearance'), '5.6')).toContain(consequences.guard({lowMm: 3.7, highMm: 4.7, nowMm: 4.3}));
	});

	it('shows a force in both units', () => {
		// 2 g × 9.80665 mN/g (NIST SP 811 app. B.8), to the two decimals that are shown.
		expect(shownAt(at('playing-force'), '2')).toBe(consequences.bothForces({forceMn: 19.6133}));
	});

	it('shows tilt, the level’s own error and the side force of this tilt at both radii', () => {
		const shown = shownAt(at('level-fb-2'), '0.1 front');
		const lines = shown.split('\n');
		expect(lines).toContain(level.tilt({axis: 'leftRight', tiltDeg: 0.1, zeroErrorDeg: 0.05}));
		// −0.025° and 0.075°, to two decimals.
		const tilts = [-0.02, -0.03].flatMap((tiltDeg) =>
			[0.07, 0.08].map((zeroErrorDeg) => level.tilt({axis: 'frontBack', tiltDeg, zeroErrorDeg})),
		);
		expect(tilts.filter((one) => lines.includes(one))).toHaveLength(1);
		// The worked example prints −0.174481 and −0.179451 %; ± 0.03 %, and an eighth of the good pull of 2 % is allowed.
		const share = {uncertaintyPct: 0.03, allowedPct: 0.25};
		expect(lines).toContain(level.share({...share, place: 'inner', sharePct: -0.174481}));
		expect(lines).toContain(level.share({...share, place: 'outer', sharePct: -0.179451}));
		expect(lines).toContain(level.fine);
	});

	it('shows the force that the gauge will carry', () => {
		const left = at('force-reading', {weighed: 'without', 'guard-account': 'add'});
		// 17 mN and 0.4 g × 9.80665 = 3.923 mN are 20.923 mN, 99.6 % of 21 mN.
		expect(shownAt(left, '17 mN')).toContain(consequences.carried({carriedMn: 20.923, playingMn: 21}));
	});

	it('shows the zero of a gauge that was read free of the arm', () => {
		const reading = (before: string) => at('zero-free-after', {...notTurned, 'zero-free-before': before}, asUsed);
		const zero = (size: number, side: 'plus' | 'minus') =>
			gauge.zero({source: 'stated', size, side, uncertainty: null, unit: 'percent'});
		expect(shownAt(reading('+0.5'))).not.toContain(zero(0.5, 'plus'));
		expect(shownAt(reading('+0.5'), '0')).toContain(zero(0.25, 'plus'));
		expect(shownAt(reading('-'), '-0.5')).toContain(zero(0.5, 'minus'));
	});

	it('shows nothing new while it could not be taken', () => {
		for (const typed of ['', '4.', 'four', '99999', '\u0007'])
			expect(shownAt(at('arm-pivot-distance'), typed === '4.' ? '' : typed)).toBe(shownAt(at('arm-pivot-distance')));
	});

	it('never changes what is asked', () => {
		const here = at('clearance');
		expect(viewOf(here, '1').prompt).toEqual(viewOf(here).prompt);
		expect(viewOf(here, '1').title).toBe(words.steps.clearance.title);
	});
});

describe('A condition that is looked at again', () => {
	it('asks for n first where rounds hang on it, for they were taken with it as it was', () => {
		const seen = viewOf({...at('verdict'), visiting: {step: 'bias-off'}});
		expect(wordsOf(seen.shown)).toContain(consequences.wasItNotSo);
	});

	it('asks for nothing before there are rounds', () => {
		const seen = viewOf({...at('probe-inner'), visiting: {step: 'bias-off'}});
		expect(wordsOf(seen.shown)).not.toContain(consequences.wasItNotSo);
	});
});

describe('A probe screen', () => {
	const two = say(at('probe-outer'), [text('3 out'), text('7.5 out'), text('3 out'), text('7 out')]);

	it('names the limit by the place of the arm, not by its sign', () => {
		const limit = (which: 'innerLimit' | 'outerLimit') =>
			words.rounds.limit({which, isTurned: false, showsHand: false});
		expect(viewOf(at('probe-inner')).ask).toContain(limit('innerLimit'));
		expect(viewOf(say(at('probe-inner'), [text('4 out')])).ask).toContain(limit('outerLimit'));
	});

	it('asks in the words of a gauge that shows the force of the hand', () => {
		const {ask} = viewOf(at('probe-inner', {'gauge-sign': 'hand-out', ...notTurned}));
		expect(ask).toContain(words.rounds.limit({which: 'innerLimit', isTurned: false, showsHand: true}));
	});

	it('shows pull, band and their uncertainty after each round, and the rounds so far', () => {
		const shown = shownAt(two);
		const found = documentOfCheck(two.check);
		const outer = found.ok && figuresOf(found.document).probe.find(({place}) => place === 'outer');
		if (!outer || !isMeasured(outer)) throw new Error('the outer radius has figures');
		const judged = {figures: outer, limits: two.check.limits};
		expect(shown.split('\n')).toEqual(expect.arrayContaining([rounds.pull(judged), rounds.band(judged)]));
		const last = [
			{number: 1, innerLimit: '3 % out', outerLimit: '7.5 % out', isTurned: false, isStruck: false},
			{number: 2, innerLimit: '3 % out', outerLimit: '7 % out', isTurned: false, isStruck: false},
		];
		const round = {number: 3, usual: 3, isTurned: false};
		expect(shown).toContain(rounds.soFar({round, count: 2, isOffScale: false, last}));
	});

	it('wants the arm to settle before a reading', () => {
		expect(viewOf(at('probe-inner')).prompt).toMatchObject({kind: 'field', settle: true});
	});

	it('catches a reading off the scale at once', () => {
		const shown = shownAt(say(at('probe-inner'), [text('4 out'), text('20 out')]));
		expect(shown).toContain(rounds.offScale({top: 20, unit: 'percent', isBiasOn: false}));
	});

	it('says of the closing round whether something moved', () => {
		const closing = (limits: [string, string]) => shownAt(say(at('probe-closing'), limits.map(text)));
		expect(closing(['2.5 out', '8 out'])).toMatch(/nothing moved/);
		expect(closing(['5 out', '10.5 out'])).toMatch(/something moved/i);
	});
});

describe('The verdict', () => {
	it('gives every figure with its uncertainty and its limits', () => {
		const shown = shownAt(at('verdict'));
		expect(shown).toContain('Verdict: BEYOND LIMITS');
		expect(shown).toMatch(/5\.4 % out ± 0\.4 %/);
		expect(shown).toMatch(/good to 2, usable to 4 %/);
		expect(shown).toMatch(/good to 3, usable to 6 %/);
	});

	it('tells the zero of the gauge with its uncertainty, or that nobody looked at it', () => {
		// The worked example: 0.125 ± 0.40 %.
		expect(shownAt(at('verdict'))).toMatch(/Zero of the gauge, found by turning it: 0\.1[23] % plus ± 0\.4 %;/);
		const unchecked = 'Zero of the gauge not checked: it may be half a percent off, or a step';
		expect(shownAt(at('verdict', notTurned, asUsed))).toContain(unchecked);
		expect(shownAt(at('verdict', {...notTurned, 'zero-free-before': '0'}, asUsed))).toContain(
			'Zero of the gauge, read free of the arm: 0 % ± 0.28 %;',
		);
		expect(shownAt(at('verdict'))).not.toContain('not checked');
	});

	it('tells what it costs that the gauge was not set anew for each round', () => {
		// By hand, 0.3 % for setting up: u² at the inner radius 0.02083 + 0.09/2 + 0.00289, k = 2.02; at the outer one
		// 0.04167 + 0.09·3/2 + 0.00114, k = 1.99: U = 0.53 and 0.84 %, for the 0.39 and 0.56 % of the worked example.
		const here = at('verdict');
		const said =
			'The gauge was not set anew for each round: that costs the pull ± 0.5 instead of ± 0.4 % at 68 mm and ± 0.8 instead of ± 0.6 % at 136 mm.';
		expect(shownAt({...here, check: {...here.check, setAnew: false}})).toContain(said);
		expect(shownAt(here)).not.toContain('set anew');
	});

	it('has one thing to do now, from the gravest finding; the others are also seen, without an action', () => {
		const shown = shownAt(at('verdict')).split('\n');
		const starting = (word: string) => shown.filter((one) => one.startsWith(word));
		expect(starting('Next: ')).toEqual([expect.stringContaining('dresses the leads')]);
		expect(starting('Likely: ')).toEqual(['Likely: the wire acts as a spring.']);
		expect(starting('Also seen: ')).toEqual([
			expect.stringContaining('The hold band is 5.9 % ± 0.4 % at 68 mm and 4.2 % ± 0.4 % at 136 mm'),
			expect.stringContaining('Not decided: hold band 5.9 % ± 0.4 % at 68 mm'),
		]);
	});

	it('tells that something moved while the rounds were taken, before all else', () => {
		// The middle of the closing round lies 2 % above the mean of the two others; it is kept all the same.
		const closing = say(at('probe-closing'), [text('5 out'), text('10.5 out'), choose('go-on'), choose('override')]);
		const verdict = follow(closing, northDeck, {until: 'verdict'});
		expect(shownAt(verdict)).toMatch(/^The closing round reads /m);
		expect(shownAt(verdict)).toMatch(/^Next: the technician finds what moved, then probes again\.$/m);
	});

	it('sets before and after side by side once a remedy was tried', () => {
		const better = northDeckWith(
			{},
			{inner: [['1 in', '1.5 out']], outer: [['1 in', '1.5 out']], closing: [['1 in', '1.5 out']]},
		);
		const after = follow(say(at('verdict'), [choose('remedy'), choose('again')]), better, {until: 'verdict'});
		expect(shownAt(after)).toMatch(/inner pull: before 5\.4 % out ± .*, now 0\.\d+ %/);
		expect(shownAt(after)).toMatch(/remedy: touch nothing, only probe again/);
	});

	it('has separate words for what was not measured', () => {
		const off = northDeckWith({}, {inner: [['4 out', '20 out']]});
		const atOff = follow(freshDialogue(), off, {until: 'verdict'});
		expect(shownAt(atOff)).toMatch(/OFF SCALE/);
	});
});

describe('Detours', () => {
	it('are titled by what they ask', () => {
		const stuck = say(at('clearance'), [text('3')]);
		const verdict = at('verdict');
		const titles = [
			say(at('probe-inner'), [text('4')]),
			say(stuck, [waysOut, choose('override')]),
			say(stuck, [waysOut, choose('override'), choose('other')]),
			say(verdict, [choose('strike')]),
			say(verdict, [choose('strike'), choose('inner:0')]),
			say(verdict, [choose('strike'), choose('inner:0'), choose('other')]),
			say(verdict, [choose('remedy')]),
			say(verdict, [{kind: 'steps'}]),
			say(verdict, [{kind: 'stop'}]),
		].map((one) => viewOf(one).title);
		expect(titles).toEqual([
			'Probe at the inner radius: which side?',
			'Why go on?',
			'Why go on?',
			'Which round is struck out?',
			'Why is it struck out?',
			'Why is it struck out?',
			'Which remedy?',
			'All steps',
			'Stop here?',
		]);
	});
});
