import {describe, expect, it} from 'vitest';
import {type Dialogue, positionOf, startDialogue} from '../../source/check/dialogue.js';
import {promptOf} from '../../source/check/prompt.js';
import {reduce} from '../../source/check/reduce.js';
import type {Entry} from '../../source/check/respond.js';
import {finishedCheck} from '../../source/desk/filing.js';
import {recheckAction} from '../../source/desk/starting-answers.js';
import {issuedOf} from '../../source/pages/issued.js';
import {detailLines} from '../../source/pages/radius-lines.js';
import {inWords} from '../../source/pages/shown-lines.js';
import {viewOf} from '../../source/pages/view.js';
import {corrected} from '../../source/results/profile-changes.js';
import {profilesWith} from '../../source/results/profiles.js';
import {summaryOf} from '../../source/results/record.js';
import {actionOfCheck} from '../../source/results/tried.js';
import {briefly} from '../../source/words/finding-text.js';
import {beginning, broken, words} from '../helpers/said.js';
import {northDeckWith} from '../helpers/sample-check.js';
import {choose, follow, freshDialogue, goTo, no, refusalOf, type Script, say, text} from '../helpers/script.js';
import {stored} from '../helpers/wandering.js';

/** An invented arm with all that costs a key: damping, a bias device, a gauge that is turned for one round. */
const script = northDeckWith({'arm-damping': 'yes', 'arm-bearing': 'unipivot', 'bias-setting': 'third notch'});
const last = follow(freshDialogue(), script).check;
const profiles = profilesWith([], last, '2026-03-02T12:00:00Z');
const history = [summaryOf(finishedCheck(last, '2026-03-02T12:00:00Z'))];

const later = '2026-09-01T09:00:00Z';
function recheckOf(known = profiles, of = last, past = history): Dialogue {
	const {check} = freshDialogue([], 'sample-2');
	const empty = {...check, startedAt: later, touchedAt: later};
	return startDialogue(reduce(empty, recheckAction(of, known, later)), known, past);
}
const nothing = choose('nothing');

/** The script with the same round all over, and what the turned gauge shows at the inner radius. */
const bandsAt = (round: readonly [string, string], turned: readonly [string, string]): Script =>
	northDeckWith(script.answers, {
		inner: [round, turned, round],
		outer: [['0.5 in', '0.5 out']],
		closing: [round],
	});

/** The profiles with some answers of the arm corrected. */
const correctedTo = (changes: Readonly<Record<string, string>>): typeof profiles =>
	Object.entries(changes).reduce((list, [step, typed]) => {
		const done = corrected(list, {id: list.find(({kind}) => kind === 'arm')?.id ?? '', step, typed, at: later});
		if (!done.ok) throw new Error(done.refusal.id);
		return done.profiles;
	}, profiles);

/** Key presses that are no reading: one for each list, confirmation and offer that is only accepted. */
function presses(dialogue: Dialogue, entry: Entry, {answers}: Script): number {
	const prompt = promptOf(dialogue);
	const {step, slot} = positionOf(dialogue);
	if (prompt.kind !== 'field') return 1;
	const isReading =
		slot !== undefined || (step !== undefined && answers[step.id] !== undefined && answers[step.id] !== '');
	return isReading && entry.kind === 'text' && entry.text !== prompt.initial ? 0 : 1;
}

describe('A check that repeats the last one', () => {
	it('needs at most 20 keys beyond the readings and their Enter, and one each for what hands do, to the verdict', () => {
		// Each of them decides something at the bench, so nobody takes it over from last time.
		const byHand = ['safe-record', 'guard-on', 'mat', 'lifter-clear', 'first-swing', 'probe-end'];
		let count = 0;
		const seen: string[] = [];
		const end = follow(recheckOf(), script, {
			until: 'verdict',
			seen: (dialogue, entry) => {
				const one = presses(dialogue, entry, script);
				count += one;
				if (one > 0) seen.push(promptOf(dialogue).key);
			},
		});
		expect(positionOf(end).step?.id).toBe('verdict');
		// And one for starting it from the first screen.
		expect(1 + count - byHand.length, seen.join(' ')).toBeLessThanOrEqual(20);
		expect(seen.filter((key) => byHand.includes(key))).toEqual(byHand);
	});

	it('asks anew all that can have changed unseen, and nothing else', () => {
		const asked = new Set<string>();
		follow(recheckOf(), script, {until: 'verdict', seen: (dialogue) => asked.add(positionOf(dialogue).step?.id ?? '')});
		for (const id of ['done-since', 'safe', 'level-lr-1', 'damping-off', 'bias-off', 'wires', 'force-reading'])
			expect(asked).toContain(id);
		for (const id of ['guard-on', 'mat', 'guard-gap', 'lifter-clear', 'first-swing', 'probe-inner', 'probe-end'])
			expect(asked).toContain(id);
		for (const id of [
			'arm-name',
			'arm-length',
			'guard-mass',
			'radius-inner',
			'gauge-unit',
			'gauge-turns',
			'playing-force',
			'arm-damping',
			'room-note',
		])
			expect(asked).not.toContain(id);
	});

	it('asks whether the rest is as last time, and offers again what is not', () => {
		const start = say(recheckOf(), [nothing]);
		expect(positionOf(start).step?.id).toBe('still-last-time');
		const guard = say(start, [{kind: 'number', number: 2}]);
		expect(positionOf(guard).step?.id).toBe('still-last-time');
		const others = say(guard, [{kind: 'yes'}]);
		const atMass = follow(others, script, {until: 'guard-mass'});
		expect(promptOf(atMass)).toMatchObject({kind: 'field', initial: '0.4 g', given: true});
		// What hands did last time is no answer of today.
		const atMat = follow(atMass, script, {until: 'mat'});
		expect(promptOf(atMat)).toMatchObject({kind: 'choice', initial: 'on'});
		expect(() => say(start, [no])).toThrow();
	});

	it('takes a profile that was corrected since, and what was answered then where there is none', () => {
		const corrected = profiles.map((one) =>
			one.kind === 'arm' ? {...one, answers: {...one.answers, 'guard-mass': {typed: '0.6 g', value: 0.6}}} : one,
		);
		expect(recheckOf(corrected).check.answers['guard-mass']?.value).toBe(0.6);
		expect(recheckOf([]).check.answers['guard-mass']?.value).toBe(0.4);
	});

	it('names what was corrected in a profile since, and does not say that it came from the last check', () => {
		const shownWith = (known: typeof profiles) =>
			viewOf(say(recheckOf(known), [nothing])).shown.flatMap((one) => (one.kind === 'line' ? [one.text] : []));
		const same = shownWith(profiles);
		const {answer, corrected: correctedSaid} = words.pages.consequences;
		const pivot = words.steps['arm-pivot-distance'].title;
		expect(same.join('\n').replaceAll('\u00a0', ' ')).toContain(answer({title: pivot, typed: '215.4 mm'}));
		const mended = correctedSaid({title: '', typed: '1', since: '2'});
		expect(same.join('\n')).not.toContain(mended.slice(mended.indexOf('1') + 1, mended.indexOf('2')));
		const corrections = correctedTo({'arm-pivot-distance': '216.4', 'arm-serial': 'N 7'});
		const shown = shownWith(corrections);
		expect(shown).toContain(correctedSaid({title: pivot, typed: '216.4 mm', since: '215.4 mm'}));
		// Also where it is not among what is shown else.
		expect(shown).toContain(correctedSaid({title: words.steps['arm-serial'].title, typed: 'N 7', since: ''}));
		const {lookAgain, unusual: unusualSaid} = words.pages.geometry;
		const usual = beginning(lookAgain);
		expect(shown.join('\n')).not.toContain(usual);
		// As it is said where lengths are typed.
		const unusual = correctedTo({'arm-pivot-distance': '240'});
		const short = unusualSaid({effectiveLengthMm: 233, pivotDistanceMm: 240});
		expect(shownWith(unusual)[0]).toBe(short);
		expect(short).toContain('7.0 mm');
		expect(short).toContain(usual);
		expect(viewOf(say(recheckOf(corrections), [nothing])).ask).toBe(words.steps['still-last-time'].ask);
	});

	it('shows the band of last time beside that of today while rounds are taken', () => {
		const atProbe = follow(recheckOf(), script, {until: 'probe-outer'});
		const bands = viewOf(atProbe).shown.find((one) => one.kind === 'bands');
		expect(bands?.kind === 'bands' && bands.rows.map(({label}) => label)).toContain(
			words.pages.verdict.bands.last({place: words.places.outer}),
		);
	});

	it('says in the end what changed, and the disk gives it back whole', () => {
		const {check} = follow(recheckOf(), script, {until: 'verdict'});
		expect(stored(check)).toEqual(check);
		const shown = viewOf(startDialogue(check, profiles, history)).shown;
		const text = shown.map((one) => (one.kind === 'line' ? one.text : one.caption)).join('\n');
		const {summary, unchanged} = words.years.comparison;
		expect(text).toContain(summary.unchanged);
		const figure = {figure: 'pull', place: words.places.inner, radiusMm: 68, movedPct: 0, uncertaintyPct: 7.7} as const;
		const told = unchanged({date: '2026-03-02', figures: [figure]});
		expect(told).toContain('0.0 % ± 7.7 %');
		expect(text).toMatch(new RegExp(`${broken(told.slice(0, told.indexOf('7.7 %'))).source} \\d\\.\\d %;`));
	});

	it('says first whether anything changed, then what was found and what comes next, and the smallest figures last', () => {
		const {check} = follow(recheckOf(), script, {until: 'verdict'});
		const view = viewOf(startDialogue(check, profiles, history));
		const shown = view.shown.map((one) => (one.kind === 'line' ? one.text : `<${one.kind}>`));
		const {told, doNow, likely, overYears} = words.pages.verdict;
		const issued = issuedOf(check);
		const [first] = issued?.findings ?? [];
		if (!issued || !first) throw new Error('the check has findings');
		const smallest = detailLines(issued.figures).map(inWords);
		const action = actionOfCheck(check);
		if (!action) throw new Error('there is something to do');
		const order = [
			words.years.comparison.summary.unchanged,
			doNow({what: words.actions.what(action)}),
			'<figure>',
			'<bands>',
			'<table>',
			likely(first),
			overYears,
			...smallest,
		];
		const places = order.map((wanted) => shown.indexOf(wanted));
		expect(places).not.toContain(-1);
		expect(places).toEqual(places.toSorted((one, other) => one - other));
		expect(places.slice(0, 2)).toEqual([0, 1]);
		const {verdict, atWorst} = issued.figures;
		expect(view.ask).toBe(told({verdict, atWorst, does: briefly(first)}));
		expect(shown.at(-1)).toMatch(/E_n/);
	});

	it('is due in a month where something changed', () => {
		// Nothing beyond or undecided either time: pull 0 % and then 3 % at the inner radius; the hold band is
		// 1 % between the readings and 1.5 % with a nudge of 0.5 %.
		const still = bandsAt(['0.5 in', '0.5 out'], ['+0.5', '-0.5']);
		const moved = bandsAt(['2.5 out', '3.5 out'], ['-2.5', '-3.5']);
		const before = follow(freshDialogue(), still).check;
		const known = profilesWith([], before, '2026-03-02T12:00:00Z');
		const dueAfter = (today: Script) => {
			const past = [summaryOf(finishedCheck(before, '2026-03-02T12:00:00Z'))];
			const {check} = follow(recheckOf(known, before, past), today);
			return finishedCheck(check, later, past).nextCheck;
		};
		const {soon} = words.results.nextCheck;
		expect(dueAfter(still)).toMatchObject({date: '2027-03-01'});
		expect(dueAfter(moved)).toMatchObject({date: '2026-10-01', because: soon({isUndecided: false, change: 'changed'})});
	});
});

describe('What was done since the last check', () => {
	const doneAt = (dialogue: Dialogue) => summaryOf(finishedCheck(dialogue.check, later, history));
	const shownAt = (dialogue: Dialogue) =>
		viewOf(follow(dialogue, script, {until: 'verdict'}))
			.shown.map((one) => (one.kind === 'line' ? one.text : one.caption))
			.join('\n');

	it('is asked first where a check is repeated, and never in a first one', () => {
		expect(positionOf(recheckOf()).step?.id).toBe('done-since');
		const asked = new Set<string | undefined>();
		follow(freshDialogue(), script, {seen: (dialogue) => asked.add(positionOf(dialogue).step?.id)});
		expect([...asked].filter((id) => id?.startsWith('done-since'))).toEqual([]);
	});

	it.each(['levelled', 'leads', 'bearing', 'cartridge', 'moved'])('is kept with the check: %s', (id) => {
		const after = say(recheckOf(), [choose(id)]);
		expect(positionOf(after).step?.id).toBe('still-last-time');
		expect(doneAt(after)).toMatchObject({doneSince: [id], doneNote: null});
	});

	it('is nothing where nothing was done, or nobody was asked', () => {
		expect(doneAt(say(recheckOf(), [nothing])).doneSince).toEqual([]);
		expect(history[0]?.doneSince).toEqual([]);
	});

	it('is asked for in words where it is something else', () => {
		const other = say(recheckOf(), [choose('other')]);
		expect(positionOf(other).step?.id).toBe('done-since-note');
		const noted = say(other, [text('a new belt')]);
		expect(noted.check.answers['done-since-note']?.value).toBe('a new belt');
		expect(positionOf(noted).step?.id).toBe('still-last-time');
		expect(doneAt(noted)).toMatchObject({doneSince: ['other'], doneNote: 'a new belt'});
	});

	it('may be more than one thing, in the order of the list; nothing stands alone', () => {
		const both = say(recheckOf(), [text('4, 2 7')]);
		expect(positionOf(both).step?.id).toBe('done-since-note');
		expect(doneAt(both).doneSince).toEqual(['levelled', 'bearing', 'other']);
		expect(both.check.answers['done-since']?.typed).toBe('levelled, bearing, other');
		for (const typed of ['1 4', '0', '8', '2.5', '', 'x'])
			expect(refusalOf(recheckOf(), text(typed)), typed).toBeDefined();
		expect(refusalOf(recheckOf(), text('1 4'))).toEqual({id: 'stands-alone', values: {name: 'nothing'}});
		// Asked again, what was chosen is marked.
		const again = say(both, [text('a new belt'), ...goTo('resume', 'done-since')]);
		expect(promptOf(again)).toMatchObject({several: {marked: ['levelled', 'bearing', 'other']}});
	});

	it('is asked of a new check of an arm that is on file, and of no other arm', () => {
		const arm = profiles.find(({kind}) => kind === 'arm');
		const begun = (past: typeof history) => {
			const empty = freshDialogue(profiles, 'sample-3');
			const picked = say(empty, [choose(arm?.id ?? '')]);
			return startDialogue(picked.check, profiles, past);
		};
		expect(positionOf(begun(history)).step?.id).toBe('done-since');
		expect(positionOf(begun([])).step?.id).toBe('tools-profile');
		expect(doneAt(say(begun(history), [choose('moved')])).doneSince).toEqual(['moved']);
		// A check that is reopened for its put-back list, or has readings, stays as it is.
		const probed = follow(freshDialogue(), script, {until: 'probe-outer'}).check;
		expect(startDialogue(probed, profiles, history).check).toBe(probed);
	});

	it('closes no series, and is told at the verdict', () => {
		const after = say(recheckOf(), [choose('leads')]);
		expect(after.check.series).toHaveLength(1);
		const {leads} = words.options['done-since'];
		expect(shownAt(after)).toContain(words.years.comparison.done({what: [leads]}));
		expect(shownAt(say(recheckOf(), [nothing]))).not.toContain(leads);
	});
});

describe('A check that is repeated with a gauge that cannot be turned', () => {
	it('reads its zero anew', () => {
		const turnless = northDeckWith(
			{...script.answers, 'gauge-turns': 'no', 'zero-free-before': '+0.5', 'zero-free-after': '+0.5'},
			{inner: [['3 out', '8.5 out']]},
		);
		const before = follow(freshDialogue(), turnless).check;
		const asked = new Set<string | undefined>();
		follow(recheckOf(profilesWith([], before, later), before), turnless, {
			until: 'verdict',
			seen: (dialogue) => asked.add(positionOf(dialogue).step?.id),
		});
		expect(asked).toContain('zero-free-before');
		expect(asked).toContain('zero-free-after');
		expect(asked).not.toContain('gauge-turns');
	});
});
