import {describe, expect, it} from 'vitest';
import type {Dialogue} from '../../source/check/dialogue.js';
import {respond} from '../../source/check/respond.js';
import type {Shown} from '../../source/findings/shown-lines.js';
import {viewOf} from '../../source/findings/view.js';
import {northDeck, northDeckWith} from '../helpers/sample-check.js';
import {choose, clockOf, follow, freshDialogue, say, text, waysOut} from '../helpers/script.js';

const at = (until: string, answers: Readonly<Record<string, string>> = {}) =>
	follow(freshDialogue(), northDeckWith(answers), {until});
const wordsOf = (shown: readonly Shown[]) =>
	shown.map((one) => (one.kind === 'line' ? one.text : one.caption)).join('\n');
const shownAt = (dialogue: Dialogue, typed = '') => wordsOf(viewOf(dialogue, typed).shown);
const refused = (dialogue: Dialogue, typed: string) => {
	const next = respond(dialogue, text(typed), clockOf(dialogue)());
	if (!next) throw new Error('left for home');
	return next;
};

describe('A screen', () => {
	it('says which arm, which stage of how many, and that the deck is not ready', () => {
		expect(viewOf(freshDialogue())).toMatchObject({
			arm: 'new arm',
			stage: expect.stringMatching(/^Make safe \(1\/\d+\)$/),
			progress: 'deck not ready to play',
			title: 'Make safe',
		});
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
				for (const words of [why, mistake, title]) expect(words.length).toBeGreaterThan(2);
				// The rounds that were taken, and the verdict, ask by what can be chosen.
				if (!(prompt.kind === 'choice' && ask === '')) expect(ask).toMatch(/[.?]$/);
			},
		});
	});

	it('says why an entry was not taken, until the next one', () => {
		const here = refused(at('clearance'), 'about four');
		expect(viewOf(here).refusal).toMatch(/is not a number/);
		expect(viewOf(say(here, [text('4.5')])).refusal).toBeUndefined();
	});
});

describe('What is typed', () => {
	it.skip('shows at once what it would lead to', () => {
		expect(shownAt(at('clearance'))).not.toContain('now');
		expect(shownAt(at('clearance'), '4.5')).toContain('stylus: 4 to 5 mm, now 4.5 mm');
		// 4.5 mm less the guard's 1 mm.
		expect(shownAt(at('clearance'), '4.5')).toContain('guard: 3 to 4 mm, now 3.5 mm');
	});

	it('shows a force in both units', () => {
		// 2 g × 9.80665 mN/g (NIST SP 811 app. B.8), to the two decimals that are shown.
		expect(shownAt(at('playing-force'), '2')).toBe('= 2 g = 19.61 mN');
	});

	it.skip('shows tilt, the level’s own error and the side force of this tilt at both radii', () => {
		const shown = shownAt(at('level-fb-2'), '0.05 front');
		expect(shown).toContain("Left to right: 0.08° right high; the level's own error 0.03°");
		expect(shown).toMatch(/Front to back: .*level; the level's own error 0\.05°/);
		// The worked example prints −0.114869 and −0.129562 %.
		expect(shown).toMatch(/inner radius: 0\.11 % in ± 0\.03 %/);
		expect(shown).toMatch(/outer radius: 0\.13 % in ± 0\.03 %/);
		expect(shown).toContain('Level: fine.');
	});

	it.skip('shows the force that the gauge will carry', () => {
		const left = at('force-reading', {weighed: 'without', 'guard-account': 'add'});
		// 14 mN and 0.5 g × 9.80665 = 4.903 mN are 18.903 mN, 105 % of 18 mN.
		expect(shownAt(left, '14 mN')).toMatch(/18\.9 mN \(105\.0 % of the playing force\)/);
	});

	it.skip('shows the zero of the gauge', () => {
		expect(shownAt(at('zero-turned-outer'), '-9.5')).toMatch(/Zero of the gauge: 0\.25 %/);
	});

	it.skip('shows no zero of a round whose limits lie the wrong way round, until it passes', () => {
		const crossed = at('zero-turned-outer', {'zero-turned-inner': '-9.5'});
		expect(shownAt(crossed, '-3.5')).not.toMatch(/Zero of the gauge/);
		const stuck = say(crossed, [text('-3.5')]);
		expect(shownAt(stuck)).toMatch(/wrong way round/);
		expect(shownAt(stuck)).not.toMatch(/Zero of the gauge/);
		expect(shownAt(crossed, '-12')).toMatch(/Zero of the gauge/);
	});

	it('shows nothing new while it could not be taken', () => {
		for (const typed of ['', '4.', 'four', '99999', '\u0007'])
			expect(shownAt(at('arm-pivot-distance'), typed === '4.' ? '' : typed)).toBe(shownAt(at('arm-pivot-distance')));
	});

	it('never changes what is asked', () => {
		const here = at('clearance');
		expect(viewOf(here, '1').prompt).toEqual(viewOf(here).prompt);
		expect(viewOf(here, '1').title).toBe('Clearance');
	});
});

describe('A condition that is looked at again', () => {
	const words = /Was it not so while the rounds were taken\? Then answer n first/;

	it('asks for n first where rounds hang on it, for they were taken with it as it was', () => {
		const seen = viewOf({...at('verdict'), visiting: {step: 'bias-off'}});
		expect(wordsOf(seen.shown)).toMatch(words);
	});

	it('asks for nothing before there are rounds', () => {
		expect(wordsOf(viewOf({...at('probe-inner'), visiting: {step: 'bias-off'}}).shown)).not.toMatch(words);
	});
});

describe('A probe screen', () => {
	const two = say(at('probe-outer'), [text('3 out'), text('7.5 out'), text('3 out'), text('7 out')]);

	it('names the limit by the place of the arm, not by its sign', () => {
		expect(wordsOf(viewOf(at('probe-inner')).shown) + viewOf(at('probe-inner')).ask).toMatch(/INNERMOST/);
		const outer = viewOf(say(at('probe-inner'), [text('4 out')]));
		expect(wordsOf(outer.shown) + outer.ask).toMatch(/OUTERMOST/);
	});

	it('asks in the words of a gauge that shows the force of the hand', () => {
		const view = viewOf(at('probe-inner', {'gauge-sign': 'hand-out', 'zero-way': 'cannot'}));
		expect(wordsOf(view.shown) + view.ask).toMatch(/Push the arm gently toward the RIM/);
	});

	it('shows pull, band and their uncertainty after each round, and the rounds so far', () => {
		const shown = shownAt(two);
		expect(shown).toMatch(/[Pp]ull .* ± .*%/);
		expect(shown).toMatch(/[Bb]and .* ± .*%/);
		expect(shown).toMatch(/3\s%\sout\s\/\s7\.5\s%\sout/);
	});

	it('wants the arm to settle before a reading', () => {
		expect(viewOf(at('probe-inner')).prompt).toMatchObject({kind: 'field', settle: true});
	});

	it.skip('catches a reading off the scale at once', () => {
		expect(shownAt(say(at('probe-inner'), [text('4 out'), text('16 out')]))).toMatch(/Off scale/);
	});

	it.skip('says of the closing round whether something moved', () => {
		const closing = (limits: [string, string]) => shownAt(say(at('probe-closing'), limits.map(text)));
		expect(closing(['4 out', '10 out'])).toMatch(/nothing moved/);
		expect(closing(['6 out', '12 out'])).toMatch(/something moved/i);
	});
});

describe('The verdict', () => {
	it.skip('gives every figure with its uncertainty and its limits', () => {
		const shown = shownAt(at('verdict'));
		expect(shown).toContain('Verdict: BEYOND LIMITS');
		expect(shown).toMatch(/6\.8 % out ± 0\.\d %/);
		expect(shown).toMatch(/good to 2, usable to 4 %/);
		expect(shown).toMatch(/good to 3, usable to 6 %/);
	});

	it.skip('says beside the pull when the zero was not checked', () => {
		expect(shownAt(at('verdict', {'zero-way': 'cannot'}))).toMatch(/Zero not checked/);
		expect(shownAt(at('verdict'))).not.toMatch(/Zero not checked/);
	});

	it.skip('sets before and after side by side once a remedy was tried', () => {
		const better = northDeckWith(
			{},
			{inner: [['1 in', '1.5 out']], outer: [['1 in', '1.5 out']], closing: [['1 in', '1.5 out']]},
		);
		const after = follow(say(at('verdict'), [choose('remedy'), choose('again')]), better, {until: 'verdict'});
		expect(shownAt(after)).toMatch(/inner pull: before 6\.8 % out ± .*, now 0\.\d+ %/);
		expect(shownAt(after)).toMatch(/remedy: touch nothing, only probe again/);
	});

	it.skip('has separate words for what was not measured', () => {
		const off = northDeckWith({}, {inner: [['4 out', '16 out']]});
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
