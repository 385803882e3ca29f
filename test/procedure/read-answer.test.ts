import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {procedure, stepById} from '../../source/procedure/index.js';
import {type AnswerRead, fits, readAnswer, unitOf} from '../../source/procedure/read-answer.js';
import {pushSides} from '../../source/procedure/readings.js';
import type {TypedRefusal} from '../../source/procedure/refusal.js';
import type {Input, Step} from '../../source/procedure/step.js';
import type {AnswerValue} from '../../source/procedure/step-ids.js';
import {withUnit} from '../../source/procedure/typed-text.js';
import {gaugeUnits} from '../../source/units.js';
import {names, refusalText} from '../../source/words/step-text.js';
import {factsWith} from '../helpers/facts.js';

function step(id: string): Step {
	const found = stepById(id);
	if (!found) throw new Error(`no step ${id}`);
	return found;
}

const read = (id: string, typed: string, known: Readonly<Record<string, AnswerValue>> = {}): AnswerRead =>
	readAnswer(step(id), typed, factsWith(known), names);
const refusedFor = (id: TypedRefusal['id'], values: object = {}) => ({
	kind: 'refused',
	refusal: {id, values: expect.objectContaining(values)},
});
const sentenceOf = (found: AnswerRead): string => (found.kind === 'refused' ? refusalText(found.refusal) : '');

describe('A typed answer', () => {
	it.each([
		['arm-length', '233', 233, '233 mm'],
		['arm-length', '233 mm', 233, '233 mm'],
		['arm-length', '9 in', 228.6, '9 in'],
		['playing-force', '21 mN', 21, '21 mN'],
		['playing-force', '2', 19.6133, '2 g'],
		['room-temperature', '70 °F', 21.1111, '70 °F'],
		['level-lr-1', '0.1 right', 0.1, '0.1° right'],
		['level-lr-1', '2 mm/m left', -0.114592, '2 mm/m left'],
		['level-lr-1', '0', 0, '0°'],
	])("to %s, '%s', becomes %d in the base unit and is kept with its unit: %s", (id, typed, value, kept) => {
		// Six digits, as the expected values are written here; inch, gram-force and °F from NIST SP 811 app. B.8.
		expect(read(id, typed)).toEqual({kind: 'value', value: expect.closeTo(value, 4), typed: kept});
	});

	it.each([
		['room-temperature', null],
		['arm-serial', ''],
		['guard-mass', null],
		['level-lr-2', null],
	])('to %s may be empty or a dash: not known', (id, value) => {
		expect(read(id, '')).toEqual({kind: 'value', value, typed: ''});
		expect(read(id, ' - ')).toEqual({kind: 'value', value, typed: ''});
	});

	it.each(['arm-name', 'arm-length', 'level-lr-1', 'gauge-unit', 'safe', 'back-lock'])(
		'to %s may not be empty',
		(id) => {
			expect(sentenceOf(read(id, '  '))).toMatch(/\.$/);
		},
	);

	it('asks for its side where none was named, and leaves a sign out that means nothing', () => {
		expect(read('level-lr-1', '0.1')).toMatchObject({kind: 'side-wanted', size: 0.1, typed: '0.1'});
		expect(read('level-lr-1', '-0.1')).toMatchObject({kind: 'side-wanted', size: 0.1, typed: '0.1'});
	});
});

describe('A value that cannot be believed', () => {
	it.each([
		['arm-length', '23.3', /120 mm to 420 mm.* 23\.3 cm\?$/],
		['arm-length', '9', / 9 in\?$/],
		['arm-length', '233 cm', / 233 mm\?$/],
		['playing-force', '21', / 21 mN\?$/],
		['playing-force', '1.8 mN', / 1\.8 g\?$/],
		['guard-mass', '500', / 500 mg\?$/],
		['room-temperature', '70', / 70 °F\?$/],
		['room-temperature', '110', / 110 °F\?$/],
		['level-lr-1', '12 right', / 12 ′\?$/],
		// The ends of what is believable count as believable: 42 cm are 420 mm, 12 cm are 120 mm.
		['arm-length', '42', / 42 cm\?$/],
		['arm-length', '12', / 12 cm\?$/],
	])("for %s, '%s', is refused and the likely unit is named", (id, typed, sentence) => {
		const found = read(id, typed);
		expect(found).toEqual(refusedFor('not-believable', {typed, meant: expect.anything()}));
		expect(sentenceOf(found)).toMatch(sentence);
	});

	it.each([
		['arm-length', '99999'],
		['arm-length', '-233'],
		// -18 °F is -28 °C: no unit makes that a room.
		['room-temperature', '-18'],
		['playing-force', '0'],
	])("for %s, '%s', is refused with what is believable and without a guess", (id, typed) => {
		expect(read(id, typed)).toEqual(refusedFor('not-believable', {typed, meant: undefined}));
	});
});

describe('A reading without its number', () => {
	it('is refused for what it lacks, not for its size', () => {
		expect(read('level-lr-1', 'up')).toEqual(refusedFor('not-a-number', {sides: ['right', 'left']}));
	});
});

describe('The ends of what is believable', () => {
	it.each(['120', '420'])('are believable themselves: %s mm', (typed) => {
		expect(read('arm-length', typed)).toMatchObject({kind: 'value', value: Number(typed)});
	});

	it.each(['119.99', '420.01'])('and what lies beyond them is not: %s mm', (typed) => {
		expect(read('arm-length', typed)).toEqual(refusedFor('not-believable', {least: 120, most: 420}));
	});

	it('bear the rounding of another unit: 16.53543307087 in are 420 mm and 1e-10', () => {
		expect(read('arm-length', '16.53543307087 in')).toMatchObject({kind: 'value'});
	});
});

describe('A name', () => {
	it.each(['north deck', 'Größe 3 (µ)', '漢字', 'O’Neil "left"', '1', '/etc'])("may be '%s'", (name) => {
		expect(read('arm-name', ` ${name} `)).toEqual({kind: 'value', value: name, typed: name});
	});

	it.each(['a\u001B[31mb', 'a\u0000', 'a\u009Bb', 'a\u2028b', 'a\nb', '\uD83D'])(
		'may hold no control character',
		(name) => {
			expect(read('arm-name', name)).toEqual(refusedFor('control-characters'));
		},
	);

	it('is at most 80 characters long, an emoji counting as one', () => {
		expect(read('arm-name', '👍'.repeat(80))).toMatchObject({kind: 'value'});
		expect(read('arm-name', 'x'.repeat(81))).toEqual(refusedFor('too-long', {characters: 81, most: 80}));
	});
});

describe('A choice', () => {
	it.each(['2', 'mN', 'MN', names.options['gauge-unit'].mN])("is taken by number, by id or by words: '%s'", (typed) => {
		expect(read('gauge-unit', typed)).toEqual({kind: 'value', value: 'mN', typed: names.options['gauge-unit'].mN});
	});

	it.each(['0', '4', '-1', '1.5', '', 'a2', '2a', 'newton', '1 '.repeat(9), '9'.repeat(400)])(
		"is refused for '%s'",
		(typed) => {
			expect(read('gauge-unit', typed)).toEqual(refusedFor('not-in-list', {options: 3}));
		},
	);
});

describe('The place of a lever', () => {
	const leverAt = step('bias-clock-outer');

	it.each([
		['8:30', '8:30'],
		['8.30', '8:30'],
		['8h30', '8:30'],
		['8 30', '8:30'],
		['830', '8:30'],
		['1215', '12:15'],
		['8', '8:00'],
		['08:05', '8:05'],
		["8 o'clock", '8:00'],
		["7:15 O'Clock", '7:15'],
		['8 oclock', '8:00'],
		["8o'clock", '8:00'],
	])("typed as '%s' is %s on the clock face", (typed, kept) => {
		expect(readAnswer(leverAt, typed, factsWith())).toEqual({kind: 'value', value: kept, typed: kept});
	});

	it.each([
		'13:00',
		'0:30',
		'8:60',
		'8:3',
		'8:305',
		'at 8:30',
		'8:30 x',
		"8 o'clock sharp",
		'8x30',
		'noon',
		'123456',
		"o'clock8",
	])("'%s' is no time of the clock face", (typed) => {
		expect(readAnswer(leverAt, typed, factsWith())).toEqual(refusedFor('no-clock-time', {typed}));
	});

	it('may be left out', () => {
		expect(readAnswer(leverAt, '-', factsWith())).toEqual({kind: 'value', value: '', typed: ''});
	});
});

describe('A step that is not answered by text', () => {
	it('says so', () => {
		const ticks = procedure.find(({input}) => input.kind === 'ticks');
		if (!ticks) throw new Error('some step is answered by ticks');
		expect(readAnswer(ticks, 'y', factsWith())).toEqual(refusedFor('not-by-text'));
	});
});

describe('A stored answer', () => {
	const number = {kind: 'number', unit: 'mm', between: [0, 9]} as const;
	const choice = {kind: 'choice', options: ['left', 'right']} as const;
	const cases: readonly [Input, readonly AnswerValue[], readonly AnswerValue[]][] = [
		[{kind: 'text'}, ['', 'a'], [1, true, null, ['a']]],
		[{kind: 'clock'}, ['8:30'], ['', '8:3', 8, null]],
		[{kind: 'clock', optional: true}, ['8:30', ''], ['8:3', 8, null]],
		[choice, ['left', 'right'], ['', 'up', 'Left', 1, null]],
		[{kind: 'confirm'}, [true, false], ['yes', 1, null]],
		[number, [0, 4.5], ['4', null, true, ['4']]],
		[{...number, optional: true}, [0, 4.5, null], ['4', true]],
	];

	it.each(cases)('fits %j or does not', (input, fitting, others) => {
		for (const value of fitting) expect([value, fits(input, value)]).toEqual([value, true]);
		for (const value of others) expect([value, fits(input, value)]).toEqual([value, false]);
	});

	it('of a profile is its name, and of ticks a list', () => {
		const kindOf = (kind: Input['kind']) => procedure.find(({input}) => input.kind === kind)?.input;
		const [profile, ticks] = [kindOf('profile'), kindOf('ticks')];
		if (!profile || !ticks) throw new Error('there are steps of both kinds');
		expect([fits(profile, 'a'), fits(profile, 1)]).toEqual([true, false]);
		expect([fits(ticks, ['a']), fits(ticks, 'a')]).toEqual([true, false]);
	});
});

describe('A confirmation', () => {
	it.each([
		['y', true],
		['YES', true],
		['n', false],
		['No', false],
	])("'%s' is %s", (typed, value) => {
		expect(read('back-lock', typed)).toMatchObject({kind: 'value', value});
	});

	it.each(['', 'ok', '1', 'oui', 'yy'])("'%s' confirms nothing", (typed) => {
		expect(read('back-lock', typed)).toEqual(refusedFor('not-yes-or-no'));
	});
});

const answered = procedure.filter(({input}) => ['text', 'choice', 'confirm', 'number', 'signed'].includes(input.kind));

describe('Every step that is answered in words', () => {
	it.each(answered.map((one) => [one.id, one] as const))('%s refuses junk with a sentence', (_id, one) => {
		for (const junk of ['\u0007', '\u001B]0;x\u0007', 'NaN', 'x'.repeat(5000), '🜨']) {
			const result = readAnswer(one, junk, factsWith({'guard-mass': 0.4}));
			if (one.input.kind === 'text' && ['NaN', '🜨'].includes(junk)) expect(result.kind).toBe('value');
			else expect(sentenceOf(result)).toMatch(/^.{10,250}[.?]$/su);
		}
	});

	it('takes its kept text for the same answer again', () => {
		const text = fc.oneof(
			fc.string({unit: fc.constantFrom(...'0123456789.,+- ')}),
			fc.string({
				unit: fc.constantFrom(
					'1',
					'4',
					'0',
					'.',
					' ',
					'+',
					'-',
					'right',
					'l',
					'plus',
					'm',
					'%',
					'mN',
					'g',
					'mm',
					'°',
					'y',
				),
				maxLength: 5,
			}),
		);
		fc.assert(
			fc.property(fc.constantFrom(...answered), fc.constantFrom(...gaugeUnits), text, (one, unit, typed) => {
				const facts = factsWith({'gauge-unit': unit, 'guard-mass': 0.4});
				const first = readAnswer(one, typed, facts, names);
				if (first.kind === 'value') expect(readAnswer(one, first.typed, facts, names)).toEqual(first);
			}),
			{numRuns: 3000},
		);
	});
});

describe('A reading as it is kept', () => {
	it.each([
		['4', 'percent', '4 %'],
		['4 out', 'percent', '4 % out'],
		['4out', 'percent', '4 % out'],
		['-3', 'mN', '-3 mN'],
		['+4 mN', 'mN', '+4 mN'],
		['+0.4 g', 'gf', '+0.4 g'],
		['+4 pct', 'percent', '+4 pct'],
		['0.1 right', 'deg', '0.1° right'],
		['6 min right', 'deg', '6 min right'],
		['6 right', 'arcmin', '6′ right'],
		['  4  ', 'percent', '4 %'],
		['2.5o', 'percent', '2.5 % out'],
		['2.5 i', 'mN', '2.5 mN in'],
		['- 3', 'mN', '- 3 mN'],
		['plus 4', 'mN', 'plus 4'],
		['out 4', 'percent', 'out 4'],
		['nothing', 'percent', 'nothing'],
	] as const)("says its unit once: '%s' on a gauge in %s is '%s'", (typed, unit, kept) => {
		expect(withUnit(typed, unit, pushSides)).toBe(kept);
	});

	it('takes no word after a plain number for a side', () => {
		expect(withUnit('4 out', 'percent')).toBe('4 out');
		expect(withUnit('4', 'percent')).toBe('4 %');
	});

	it('has the unit of its step', () => {
		const input = step('gauge-step').input;
		expect(input.kind === 'number' && unitOf(input, factsWith({'gauge-unit': 'gf'}))).toBe('gf');
	});
});
