import {describe, expect, it} from 'vitest';
import {type Dialogue, positionOf} from '../../source/check/dialogue.js';
import {respond} from '../../source/check/respond.js';
import {issuedOf} from '../../source/pages/issued.js';
import {inWords, type Shown} from '../../source/pages/shown-lines.js';
import {viewOf} from '../../source/pages/view.js';
import {closingOf} from '../../source/procedure/hold-limits.js';
import {documentOfCheck} from '../../source/results/document-of-check.js';
import {figuresOf, isMeasured} from '../../source/results/figures.js';
import {actionOfCheck} from '../../source/results/tried.js';
import {becauseText} from '../../source/words/says.js';
import {inOrder, words} from '../helpers/said.js';
import {northDeck, northDeckWith} from '../helpers/sample-check.js';
import {choose, clockOf, follow, freshDialogue, goTo, type Script, say, text, waysOut} from '../helpers/script.js';

const at = (until: string, answers: Script['answers'] = {}, rounds: Script['rounds'] = {}) =>
	follow(freshDialogue(), northDeckWith(answers, rounds), {until});
/** A gauge that cannot be turned, so that every round is one as used. */
const notTurned = {'gauge-turns': 'no', 'zero-free-before': '-', 'zero-free-after': '-'};
const asUsed: Script['rounds'] = {inner: [['3 out', '8.5 out']]};
const {consequences, gauge, level, rounds, verdict: said, view} = words.pages;
const wordsOf = (shown: readonly Shown[]) => shown.map(inWords).join('\n');
const shownAt = (dialogue: Dialogue, typed = '') => wordsOf(viewOf(dialogue, typed).shown);
/** What a verdict tells, its first words in the place of the task. */
const toldAt = (dialogue: Dialogue) => `${viewOf(dialogue).ask}\n${shownAt(dialogue)}`;
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
			title: words.steps['arm-name'].title,
		});
		expect(viewOf(freshDialogue()).stage).toContain(words.stages.arm);
		expect(viewOf(at('guard-gap')).arm).toBe('north deck');
	});

	it('has its place in a whole that does not change on the way, whatever applies to the arm', () => {
		const places = (answers: Readonly<Record<string, string>>) => viewOf(at('guard-gap', answers)).place;
		expect(places({'arm-damping': 'yes'})).toBe(places({}));
		expect(places({'arm-bias-device': 'none'})).toBe(places({}));
		const wholes = new Set<string>();
		follow(freshDialogue(), northDeck, {seen: (dialogue) => wholes.add(viewOf(dialogue).place.split('/')[1] ?? '')});
		expect(wholes).toEqual(new Set(['15']));
	});

	it('tells how many minutes are left, and they get fewer from stage to stage', () => {
		const minutes: number[] = [];
		follow(freshDialogue(), northDeck, {
			seen: (dialogue) => {
				const {minutes: left} = viewOf(dialogue);
				if (left !== null) minutes.push(left);
			},
		});
		expect(minutes[0]).toBeGreaterThan(15);
		expect(minutes[0]).toBeLessThan(60);
		expect(minutes.at(-1)).toBeLessThanOrEqual(1);
	});

	it('names the unit in which a bare number is taken', () => {
		expect(viewOf(at('guard-gap')).unit).toBe('mm');
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
		const here = refused(at('guard-gap'), 'about four');
		expect(viewOf(here).refusal).toContain("'about four'");
		expect(viewOf(here).refusal).toBe(words.refusals['not-a-number']({typed: 'about four', unit: 'mm'}));
		expect(viewOf(say(here, [text('4.3')])).refusal).toBeUndefined();
	});
});

describe('What is typed', () => {
	it('shows at once what it would lead to', () => {
		expect(shownAt(at('guard-gap'))).toContain(consequences.stylus({lowMm: 5, highMm: 6, nowMm: undefined}));
		expect(shownAt(at('guard-gap'), '4.3')).toContain(consequences.stylus({lowMm: 5, highMm: 6, nowMm: 5.6}));
		// Under a guard of 1.3 mm the stylus stands 5.6 mm high.
		expect(shownAt(at('guard-gap'), '4.3')).toContain(consequences.guard({lowMm: 3.7, highMm: 4.7, nowMm: 4.3}));
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
		// The worked example prints −0.174481 and −0.179451 %; ± 0.03 %, and a quarter of the good pull of 2 % is allowed.
		const share = {uncertaintyPct: 0.03, allowedPct: 0.5};
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
		const here = at('guard-gap');
		expect(viewOf(here, '1').prompt).toEqual(viewOf(here).prompt);
		expect(viewOf(here, '1').title).toBe(words.steps['guard-gap'].title);
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
		expect(shown).toContain(rounds.soFar({isAsked: true, count: 2, isOffScale: false, last}));
	});

	it('wants the arm to settle before a reading', () => {
		expect(viewOf(at('probe-inner')).prompt).toMatchObject({kind: 'field', settle: true});
	});

	it('catches a reading off the scale at once', () => {
		const shown = shownAt(say(at('probe-inner'), [text('4 out'), text('20 out')]));
		expect(shown).toContain(rounds.offScale({top: 20, unit: 'percent', isBiasOn: false}));
	});

	it('says of the closing round whether something moved', () => {
		const closing = (inner: string, outer: string) => {
			const here = say(at('probe-closing'), [text(inner), text(outer)]);
			const found = closingOf(positionOf(here).progress.facts);
			if (!found) throw new Error('the closing round has figures');
			return {found, shown: shownAt(here)};
		};
		// Middles by hand: 5.25 and 7.75 % less the mean of 5.75 and 5.5 %, as read.
		const same = closing('2.5 out', '8 out');
		expect(same.found.movedPct).toBeCloseTo(-0.375, 9);
		expect(same.shown).toContain(rounds.nothingMoved(same.found));
		const moved = closing('5 out', '10.5 out');
		expect(moved.found.movedPct).toBeCloseTo(2.125, 9);
		expect(moved.shown).toContain(rounds.somethingMoved(moved.found));
	});
});

describe('The verdict', () => {
	it('gives every figure with its uncertainty and its limits', () => {
		const shown = toldAt(at('verdict'));
		expect(shown).toContain(said.headline({verdict: 'beyond', atWorst: 'beyond'}));
		// The worked example.
		expect(shown).toContain(words.figures.sideForce(5.375, 0.391683));
		expect(shown).toContain(said.radii.allowed({goodPct: 2, usablePct: 4}));
		expect(shown).toContain(said.radii.allowed({goodPct: 3, usablePct: 6}));
	});

	it('tells the zero of the gauge with its uncertainty, or that nobody looked at it', () => {
		const zero = (size: number, uncertainty: number, source: 'turned' | 'stated', side?: 'plus') =>
			gauge.zero({source, size, side, uncertainty, unit: 'percent'});
		// The worked example: 0.125 ± 0.40 %.
		expect(shownAt(at('verdict'))).toContain(zero(0.125, 0.4, 'turned', 'plus'));
		expect(shownAt(at('verdict', notTurned, asUsed))).toContain(gauge.zeroUnchecked);
		expect(shownAt(at('verdict', {...notTurned, 'zero-free-before': '0'}, asUsed))).toContain(zero(0, 0.28, 'stated'));
		expect(shownAt(at('verdict'))).not.toContain(gauge.zeroUnchecked);
	});

	it('tells what it costs that the gauge was not set anew for each round', () => {
		// By hand, 0.3 % for setting up: u² at the inner radius 0.02083 + 0.09/2 + 0.00289, k = 2.02; at the outer one
		// 0.04167 + 0.09·3/2 + 0.00114, k = 1.99: U = 0.53 and 0.84 %, for the 0.39 and 0.56 % of the worked example.
		const here = at('verdict');
		const costs = [
			{radiusMm: 68, isPct: 0.53, couldBePct: 0.39},
			{radiusMm: 136, isPct: 0.84, couldBePct: 0.56},
		];
		const cost = said.notSetAnew({costs});
		expect(shownAt({...here, check: {...here.check, setAnew: false}})).toContain(cost);
		expect(shownAt(here)).not.toContain(cost.slice(0, cost.indexOf('0')));
	});

	it('has one thing to do now, from the gravest finding; the others are also seen, without an action', () => {
		const here = at('verdict');
		const shown = shownAt(here).split('\n');
		const [first, ...others] = issuedOf(here.check)?.findings ?? [];
		if (!first) throw new Error('the sample has findings');
		// Those of the worked example.
		expect([first, ...others].map(({code}) => code)).toEqual(['spring-pull', 'friction-local', 'undecided']);
		// The pull is outward, so the first suspect is a bias that still acts.
		const action = actionOfCheck(here.check);
		if (action?.kind !== 'suspect') throw new Error('a suspect is looked at first');
		expect(action).toMatchObject({code: 'spring-pull', remedy: 'bias', who: 'technician'});
		const what = said.doNow({what: words.actions.what(action)});
		expect(viewOf(here).ask).toContain(words.findings['spring-pull'].brief);
		const does = shown.indexOf(what);
		expect(shown.slice(does, does + 2)).toEqual([what, words.actions.delicate.locked]);
		expect(first.next).toContain(words.actions.what(action));
		const told = [first.found, said.likely(first), ...others.map(said.alsoSeen)];
		const from = shown.indexOf(first.found);
		expect(from).toBeGreaterThan(does);
		expect(shown.slice(from, from + told.length)).toEqual(told);
		expect(shown.filter((one) => one.startsWith(said.doNow({what: ''}).slice(0, -1)))).toEqual([what]);
		expect(shown.filter((one) => one.startsWith(said.next({next: ''}).slice(0, -1)))).toEqual([]);
		for (const other of others) expect(other.next).toBe('');
	});

	it('tells that something moved while the rounds were taken, before all else', () => {
		// The middle of the closing round lies 2 % above the mean of the two others; it is kept all the same.
		const closing = say(at('probe-closing'), [text('5 out'), text('10.5 out'), choose('go-on'), choose('override')]);
		const here = follow(closing, northDeck, {until: 'verdict'});
		const [first] = issuedOf(here.check)?.findings ?? [];
		if (first?.code !== 'moved') throw new Error('it is the first finding that something moved');
		expect(shownAt(here).split('\n')).toContain(first.found);
		expect(viewOf(here).ask).toContain(words.findings.moved.brief);
	});

	it('sets before and after side by side once a remedy was tried', () => {
		const better = northDeckWith(
			{},
			{inner: [['1 in', '1.5 out']], outer: [['1 in', '1.5 out']], closing: [['1 in', '1.5 out']]},
		);
		const after = follow(say(at('verdict'), [choose('other-way'), choose('try:again')]), better, {until: 'verdict'});
		const shown = shownAt(after);
		// The worked example before, and the middle of −1 and 1.5 % less the zero after.
		const name = said.series.pull({place: 'inner'});
		const {before, now} = said.series.columns;
		expect(shown).toContain(`${name}: ${before} ${words.figures.sideForce(5.375, 0.391683)}, ${now} 0.`);
		const [first] = after.check.series;
		if (first?.closed?.because.id !== 'remedy') throw new Error('a remedy closed the first series');
		const because = becauseText(first.closed.because);
		expect(shown).toContain(said.series.closed({number: 1, because, hasFigures: true}));
	});

	it('has separate words for what was not measured', () => {
		const off = northDeckWith({}, {inner: [['4 out', '20 out']]});
		const atOff = follow(freshDialogue(), off, {until: 'verdict'});
		expect(toldAt(atOff)).toContain(said.headline({verdict: 'off-scale', atWorst: 'off-scale'}));
	});
});

describe('Beside an entry that was not taken', () => {
	const asked = at('guard-gap');

	it('stand no figures of a number that does not pass: only what is wrong with it', () => {
		// 9 mm under a guard of 1.3 mm.
		const wrong = say(asked, [text('9')]);
		const [problem, ...others] = viewOf(wrong).shown;
		expect(problem && inWords(problem)).toMatch(inOrder('9 mm', '3.7', '4.7 mm'));
		expect(others).toEqual(viewOf(asked).shown);
	});

	it('stand no figures of it, nor of the answer before it, while it can be mended', () => {
		const again = say(at('bias-off'), [...goTo('level', 'level-lr-1')]);
		const unread = viewOf(at('level-lr-1')).shown;
		expect(viewOf(again).shown).not.toEqual(unread);
		for (const typed of ['5000 right', '0.2.2', 'x', '0.2'])
			expect(viewOf(refused(again, typed), typed).shown).not.toEqual(viewOf(again).shown);
		const wrong = say(asked, [text('9')]);
		expect(viewOf(refused(wrong, '5..5'), '5..5').shown).toEqual(viewOf(asked).shown);
		expect(viewOf(wrong, '4.3').shown).not.toEqual(viewOf(asked).shown);
	});
});

describe('Detours', () => {
	it('are titled by what they ask', () => {
		const stuck = say(at('guard-gap'), [text('1.7')]);
		const verdict = at('verdict');
		const titles = [
			say(at('probe-inner'), [text('4')]),
			say(stuck, [waysOut, choose('override')]),
			say(stuck, [waysOut, choose('override'), choose('other')]),
			say(verdict, [choose('strike')]),
			say(verdict, [choose('strike'), choose('inner:0')]),
			say(verdict, [choose('strike'), choose('inner:0'), choose('other')]),
			say(verdict, [choose('other-way')]),
			say(verdict, [{kind: 'steps'}]),
			say(verdict, [{kind: 'stop'}]),
		].map((one) => viewOf(one).title);
		expect(titles).toEqual([
			view.side.title({title: words.steps['probe-inner'].title}),
			view.reason.override.title,
			view.reason.override.title,
			view.titles.strike,
			view.reason.strike.title,
			view.reason.strike.title,
			view.titles['other-way'],
			view.titles.steps,
			view.titles.stop,
		]);
	});
});
