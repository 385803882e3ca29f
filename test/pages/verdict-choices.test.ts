import {describe, expect, it} from 'vitest';
import {type Dialogue, positionOf} from '../../source/check/dialogue.js';
import {openSeries} from '../../source/check/series.js';
import {issuedOf} from '../../source/pages/issued.js';
import {viewOf} from '../../source/pages/view.js';
import {documentOfCheck, seriesThatCounts} from '../../source/results/document-of-check.js';
import {figuresOf} from '../../source/results/figures.js';
import {actionOfCheck} from '../../source/results/tried.js';
import {at} from '../helpers/conversation.js';
import {says, words} from '../helpers/said.js';
import {northDeck, northDeckWith} from '../helpers/sample-check.js';
import {choose, follow, freshDialogue, type Script, say} from '../helpers/script.js';

const optionsOf = (dialogue: Dialogue) => {
	const {prompt} = viewOf(dialogue);
	return prompt.kind === 'choice' ? prompt.options : [];
};
const idsOf = (dialogue: Dialogue) => optionsOf(dialogue).map(({id}) => id);
const shownAt = (dialogue: Dialogue) => {
	const {ask, shown} = viewOf(dialogue);
	return [ask, ...shown.map((one) => (one.kind === 'line' ? one.text : one.caption))];
};

const calm: Script = northDeckWith(
	{'gauge-step': '0.1', 'gauge-nudge': '0.1'},
	{inner: [['0.5 in', '0.5 out']], outer: [['0.5 in', '0.5 out']], closing: [['0.5 in', '0.5 out']]},
);
const tryOut = (dialogue: Dialogue, id: string, script: Script = northDeck) =>
	follow(say(dialogue, [choose(`try:${id}`)]), script, {until: 'verdict'});

describe('At the verdict', () => {
	it('one digit does the next action, another puts the deck back, a third shows other ways', () => {
		expect(optionsOf(at('verdict'))).toEqual([
			{id: 'try:bias', label: words.remedies.bias.name},
			{id: 'go-on', label: says.label({id: 'put-back', values: {}})},
			{id: 'other-way', label: says.label({id: 'other-way', values: {}})},
		]);
	});

	it('a sound arm is left as it is, and its bias may be set', () => {
		const sound = follow(freshDialogue(), calm, {until: 'verdict'});
		expect(optionsOf(sound)).toEqual([
			{id: 'go-on', label: says.label({id: 'leave', values: {}})},
			{id: 'bias', label: says.label({id: 'set-bias', values: {}})},
			{id: 'other-way', label: says.label({id: 'other-way', values: {}})},
		]);
		expect(positionOf(say(sound, [choose('go-on')])).step?.id).toBe('back-lock');
	});

	it('the other ways are what is left: the bias, suspects that were not tried, rounds, and what may always be done', () => {
		const others = idsOf(say(tryOut(at('verdict'), 'bias'), [choose('other-way')]));
		expect(others.slice(0, 4)).toEqual(['bias', 'try:magnet', 'try:repeat', 'judge']);
		expect(others).toEqual(expect.arrayContaining(['judge', 'strike', 'try:level', 'try:again']));
		// The next action is one key nearer.
		expect(others).not.toContain('try:lead-loop');
		expect(new Set(others).size).toBe(others.length);
		expect(idsOf(tryOut(at('verdict'), 'bias'))[0]).toBe('try:lead-loop');
	});

	it('the arm goes to its maker when all was tried, and not before', () => {
		let here = at('verdict');
		for (const id of ['bias', 'lead-loop', 'magnet', 'repeat']) {
			expect(actionOfCheck(here.check)).toMatchObject({kind: 'suspect', remedy: id});
			here = tryOut(here, id);
		}
		expect(actionOfCheck(here.check)).toMatchObject({kind: 'maker', who: 'maker'});
		expect(optionsOf(here)[0]).toEqual({id: 'go-on', label: says.label({id: 'to-maker', values: {}})});
	});
});

describe('A suspect that was tried', () => {
	it('is told with what it should do and what it did', () => {
		const after = tryOut(at('verdict'), 'lead-loop');
		// Own pulls of 5.55 and 3.55 %: centred, each would move by their mean, 4.55 %.
		const told = words.actions.outcome({
			kind: 'no-cause',
			remedy: 'lead-loop',
			radiusMm: 68,
			// 5.375 % out before; the two rounds since, one of them turned, give (5.75 + 5.25)/2 = 5.5 % out.
			seenPct: 0.125,
			foretoldPct: -4.55194,
		});
		expect(shownAt(after)).toContain(told);
	});

	it('that leaves the deck otherwise than it is used has it put back with the next one, and before all else when sound', () => {
		const halved = tryOut(at('verdict'), 'half-force');
		const next = say(halved, [choose('try:magnet')]);
		expect(positionOf(next).step?.id).toBe('guard-on');
		expect(next.check.answers['force-reading']).toBeUndefined();
		const sound = tryOut(at('verdict'), 'leads-off', calm);
		expect(actionOfCheck(sound.check)).toMatchObject({kind: 'suspect', remedy: 'leads'});
		expect(idsOf(sound).slice(0, 2)).toEqual(['try:leads', 'go-on']);
		expect(shownAt(sound)).toContain(words.remedies['leads-off'].left);
		expect(shownAt(tryOut(sound, 'leads', calm))).not.toContain(words.remedies['leads-off'].left);
	});
});

describe('Rounds after a suspect', () => {
	const placesOf = (dialogue: Dialogue) => {
		const {inner, outer, closing} = openSeries(dialogue.check);
		return [inner.length, outer.length, closing.length];
	};

	it('are two at each radius, and where one radius shows it, two there; the arm is not judged by them', () => {
		const both = tryOut(at('verdict'), 'lead-loop');
		expect(placesOf(both)).toEqual([2, 2, 0]);
		const one = tryOut(at('verdict'), 'half-force');
		expect(placesOf(one)).toEqual([2, 0, 0]);
		// What was found before still says what comes next.
		for (const here of [both, one]) {
			expect(actionOfCheck(here.check)).toMatchObject({kind: 'suspect', code: 'spring-pull', remedy: 'bias'});
			expect(shownAt(here)).not.toContain(words.pages.verdict.headline({verdict: 'undecided', atWorst: 'beyond'}));
		}
	});

	it('go on to a whole series where the suspect was the cause, and only then', () => {
		const cured = tryOut(at('verdict'), 'lead-loop', calm);
		expect(idsOf(cured)[0]).toBe('judge');
		const judged = follow(say(cured, [choose('judge')]), calm, {until: 'verdict'});
		expect(placesOf(judged)).toEqual([3, 3, 1]);
		expect(actionOfCheck(judged.check)).toMatchObject({kind: 'leave', code: 'sound'});
	});

	it('are a whole series where only the closing round can show it', () => {
		expect(placesOf(tryOut(at('verdict'), 'platter'))).toEqual([3, 3, 1]);
	});

	it('are what is issued where somebody has enough of them, as they are worked out from the check itself', () => {
		const cured = tryOut(at('verdict'), 'lead-loop', calm);
		for (const enough of [
			say(cured, [choose('go-on')]),
			say(cured, [{kind: 'steps'}, choose('stop'), {kind: 'yes'}]),
		]) {
			const found = documentOfCheck(enough.check);
			if (!found.ok) throw new Error('both radii were read');
			const [inner] = found.document.probe;
			expect(inner?.rounds).toHaveLength(2);
			expect(issuedOf(enough.check)?.figures).toEqual(figuresOf(found.document));
		}
	});

	it('that are gone past leave the figures of the last whole series to file, where they show one radius alone', () => {
		const stopped = say(tryOut(at('verdict'), 'half-force'), [choose('go-on')]);
		expect(seriesThatCounts(stopped.check)).toBe(stopped.check.series[0]);
	});
});
