import {describe, expect, it} from 'vitest';
import {deckOf} from '../../source/check/deck-state.js';
import {type Dialogue, positionOf} from '../../source/check/dialogue.js';
import {promptOf} from '../../source/check/prompt.js';
import {viewOf} from '../../source/pages/view.js';
import {gaugeMountOf} from '../../source/procedure/readings.js';
import {compute} from '../../source/results/compute.js';
import {documentOfCheck} from '../../source/results/document-of-check.js';
import {profilesWith} from '../../source/results/profiles.js';
import {words} from '../helpers/said.js';
import {biasAnswers, northDeckWith} from '../helpers/sample-check.js';
import {choose, follow, freshDialogue, type Script, say, text} from '../helpers/script.js';

const inHand = {
	'gauge-mount': 'hand',
	'gauge-unit': 'mN',
	'gauge-step': '0.1',
	'gauge-nudge': '0',
	'gauge-sign': 'hand-in',
} as const;
const byHand = (answers: Script['answers'] = {}): Script => northDeckWith({...inHand, ...answers});
const {'gauge-turns': _turns, ...notTurned} = northDeckWith({'zero-free-before': '-', 'zero-free-after': '-'}).answers;
const held = (mount: string): Script => ({
	...northDeckWith({}, {inner: [['3 out', '8.5 out']]}),
	answers: {...notTurned, 'gauge-mount': mount},
});
const at = (until: string, script: Script): Dialogue => follow(freshDialogue(), script, {until});
const stepOf = (dialogue: Dialogue) => positionOf(dialogue).step?.id;
const _shownAt = (dialogue: Dialogue) =>
	viewOf(dialogue).shown.flatMap((one) => (one.kind === 'line' ? [one.text] : []));

function askedBy(script: Script): Set<string | undefined> {
	const asked = new Set<string | undefined>();
	follow(freshDialogue(), script, {seen: (dialogue) => asked.add(stepOf(dialogue))});
	return asked;
}

function documentBy(script: Script) {
	const found = documentOfCheck(at('verdict', script).check);
	if (!found.ok) throw new Error(found.missing);
	return found.document;
}

describe('How the gauge is held', () => {
	it('is asked of a new gauge, and kept in its profile', () => {
		expect(askedBy(held('stands'))).toContain('gauge-mount');
		const {check} = at('safe', held('clamped'));
		const [tools] = profilesWith([], check, check.startedAt).filter(({kind}) => kind === 'tools');
		expect(tools?.answers['gauge-mount']?.value).toBe('clamped');
		const again = follow(
			freshDialogue(tools ? [tools] : []),
			{...held('stands'), answers: {...held('stands').answers, 'tools-profile': tools?.id ?? ''}},
			{until: 'safe'},
		);
		expect(gaugeMountOf(positionOf(again).progress.facts)).toBe('clamped');
	});

	it('is not asked of a gauge that is known from before: it stands', () => {
		const {check} = at('safe', held('stands'));
		const [tools] = profilesWith([], check, check.startedAt).filter(({kind}) => kind === 'tools');
		const {'gauge-mount': _asked, ...answers} = tools?.answers ?? {};
		const known = tools ? [{...tools, answers}] : [];
		const asked: (string | undefined)[] = [];
		const end = follow(
			freshDialogue(known),
			{...held('hand'), answers: {...held('hand').answers, 'tools-profile': tools?.id ?? ''}},
			{
				seen: (dialogue) => asked.push(stepOf(dialogue)),
				until: 'guard-gap',
			},
		);
		expect(asked).toContain('force-reading');
		expect(asked).not.toContain('gauge-mount');
		expect(end.check.answers['gauge-mount']).toBeUndefined();
		expect(gaugeMountOf(positionOf(end).progress.facts)).toBe('stands');
	});

	it.each(['hangs', 'clamped'])(
		'leaves a gauge that %s as it is: it is not turned, and its zero is read free',
		(mount) => {
			const asked = askedBy(held(mount));
			expect(asked).not.toContain('gauge-turns');
			expect(asked).toContain('zero-free-before');
			const {probe} = documentBy(held(mount));
			expect(probe.flatMap(({rounds}) => rounds).some(({gauge}) => gauge === 'turned')).toBe(false);
		},
	);

	it('says at height and probe where the gauge goes', () => {
		const asks = (['stands', 'hangs', 'clamped'] as const).map((mount) =>
			['guard-gap', 'probe-inner'].map((step) => viewOf(at(step, held(mount))).ask),
		);
		for (const one of [0, 1]) expect(new Set(asks.map((ask) => ask[one])).size).toBe(3);
	});
});

describe('A gauge pushed by hand', () => {
	it('has the arm floated, and neither weighed nor set to a height; nothing stands under it to be taken away', () => {
		const asked = askedBy(byHand({...biasAnswers, 'arm-gravity-centre': 'far'}));
		for (const step of ['arm-afloat', 'gauge-turns', 'lifter-clear', 'probe-bias-inner', 'back-weight'])
			expect(asked).toContain(step);
		for (const step of ['weighed', 'force-reading', 'force-at-height', 'guard-gap', 'clearance', 'back-gauge'])
			expect(asked).not.toContain(step);
	});

	it('carries nothing: its figures are the force over the playing force, and no tilt pulls', () => {
		const document = documentBy(byHand());
		expect(document.trackingForce).toMatchObject({playingMn: 21, scaleReadingMn: 0, guard: 'included'});
		// What the stylus scale is true to, over the playing force: 0.5 % (see the sample check).
		expect(document.trackingForce.relativeUncertaintyPct).toBeCloseTo(0.5, 5);
		expect(document.clearance).toBeUndefined();
		const {scaleFactor, carriedMn, probe, level} = compute(document);
		expect([scaleFactor, carriedMn]).toEqual([100 / 21, 0]);
		expect(level?.passes).toBe(true);
		// Inner limits of 3, 3 and 2.5 mN, outer of 8.5, 8 and 8; turned round −2.5 and −8.
		const [inner] = probe;
		expect(inner?.tiltSharePct).toBeCloseTo(0, 12);
		expect(inner?.pullPct).toBeCloseTo(((100 / 21) * (5.5 + 5.25)) / 2, 9);
	});

	it('wants a gauge that reads a force: percent of nothing are no figures', () => {
		const stuck = say(at('gauge-unit', byHand()), [choose('percent')]);
		expect(positionOf(stuck)).toMatchObject({step: {id: 'gauge-unit'}, stuck: true});
		expect(promptOf(stuck)).toMatchObject({options: [{id: 'way-0'}, {id: 'way-1'}, {id: 'way-2'}]});
		expect(say(stuck, [choose('way-0')]).check.answers['gauge-unit']?.value).toBe('mN');
		expect(say(stuck, [choose('way-1')]).check.answers['gauge-unit']?.value).toBe('gf');
		expect(stepOf(say(stuck, [choose('way-2')]))).toBe('gauge-mount');
	});

	it('stands nowhere while the arm floats; turned in the hand it shows', () => {
		const deckAt = ({check, profiles}: Dialogue) =>
			deckOf(check, positionOf({check, profiles, history: [], mode: {kind: 'ask'}}).progress);
		const start = at('probe-inner', byHand());
		expect(deckAt(start)).toMatchObject({arm: 'in-rest', gauge: 'away'});
		const used = say(start, [text('3 out'), text('8.5 out')]);
		expect(deckAt(used)).toMatchObject({arm: 'afloat', gauge: 'away'});
		expect(viewOf(used).ask).toContain(words.rounds.inHand.turned);
		const turned = say(used, [text('-2.5'), text('-8')]);
		expect(deckAt(turned)).toMatchObject({arm: 'afloat', gauge: 'turned'});
		expect(viewOf(turned).ask).toContain(words.rounds.inHand.turnedBack);
		expect(viewOf(start).ask).toContain(words.rounds.limit({which: 'innerLimit', isTurned: false, showsHand: true}));
	});

	it('is offered nothing at the verdict that only a gauge under the arm has', () => {
		const {progress} = positionOf(at('verdict', byHand()));
		const other = say(at('verdict', byHand()), [choose('other-way')]);
		const prompt = promptOf(other);
		const ids = prompt.kind === 'choice' ? prompt.options.map(({id}) => id) : [];
		expect(progress.facts.is('gauge-mount', 'hand')).toBe(true);
		for (const remedy of ['force', 'half-force', 'height', 'gauge-foot', 'platter'])
			expect(ids).not.toContain(`try:${remedy}`);
		expect(ids).toContain('try:leads');
	});

	it('leaves an arm that still floats: without a known guard its force is set where it is weighed as played', () => {
		const told = (answers: Script['answers']) => viewOf(at('back-force', byHand(answers))).ask;
		expect(told({'guard-mass': '-'})).not.toBe(told({}));
		expect(told({})).toBe(viewOf(at('back-force', held('stands'))).ask);
		expect(askedBy(byHand({'guard-mass': '-'}))).not.toContain('back-weight');
	});
});
