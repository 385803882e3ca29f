import {readdirSync} from 'node:fs';
import path from 'node:path';
import {describe, expect, it} from 'vitest';
import {glossary} from '../../source/words/glossary.js';
import {topics} from '../../source/words/help-topics.js';
import {askedAtSteps} from '../helpers/asked-at-steps.js';
import {words} from '../helpers/said.js';
import {saidInFile} from '../helpers/said-in-file.js';

const folder = path.resolve(import.meta.dirname, '../../source/words/en');

/** Words and phrases that are read twice, with the plain ones. */
const plainFor: Readonly<Record<string, string>> = {
	anew: 'again',
	'as it stands': '',
	'at leisure': 'later',
	'at worst': 'maybe',
	believable: 'allowed',
	'friction floor': 'friction hides',
	foretold: 'expected',
	hence: 'so',
	'in order to': 'to',
	'is to be': 'verb first',
	meanwhile: 'since then',
	'midway between': 'middle of',
	'not proven': 'maybe',
	'prior to': 'before',
	'put out of action': 'taken off',
	regardless: 'all the same',
	'root mean square': 'typically',
	shall: 'verb first',
	'so that it may': 'so',
	'still so': 'still true',
	therefore: 'so',
	thus: 'so',
	'unless not': 'if',
	utilise: 'use',
	'worth the name': '',
	whereby: 'so',
};

/** Words of the trade as drawings, heads of tables and titles name them. */
const named = [
	...Object.values(words.instruments.deck.parts),
	...Object.values(words.pages.verdict.radii.columns),
	...[words.instruments.clearance.guard, words.instruments.clearance.gauge, words.instruments.clearance.mat],
	...[
		words.pictures.bands.band,
		words.pictures.bands.pull,
		words.instruments.level.tilt,
		words.instruments.friction.heading,
	],
	...[words.bias.setting.columns.left, words.instruments.asked.aims.inner, words.stages.damping, words.stages.probe],
	...(
		['arm-length', 'arm-pivot-distance', 'arm-offset', 'arm-null-radius', 'playing-force', 'force-reading'] as const
	).map((id) => words.steps[id].title),
	...(
		[
			'radius-inner',
			'bias-drag',
			'bias-off',
			'bias-setting',
			'probe-closing',
			'lifter-clear',
			'mat',
			'tools-name',
		] as const
	).map((id) => words.steps[id].title),
];

const whole = (text: string): RegExp => new RegExp(`(?<![\\p{L}-])${text}(?![\\p{L}-])`, 'iu');

/** The words that are not used stand in the glossary too. */
const saidIn = (name: string): readonly string[] => saidInFile(path.join(folder, name), ['not']);

const files = readdirSync(folder, {recursive: true, encoding: 'utf8'})
	.map((name) => name.replaceAll(path.sep, '/'))
	.filter((name) => name.endsWith('.ts'));
const said = files.flatMap((name) => saidIn(name).map((text) => ({name, text})));

/** Where a phrase is said, with its sentence. */
const saying = (phrase: string): readonly string[] =>
	said.filter(({text}) => whole(phrase).test(text)).map(({name, text}) => `${name}: ${text}`);

/** Sentences of a text that have more words than that; a number is a word, a sign is none. */
const longer = (text: string, most: number): readonly string[] =>
	text
		.split(/(?<=[.?!])\s+|\n/)
		.filter((sentence) => sentence.split(/\s+/).filter((word) => /[\p{L}\d]/u.test(word)).length > most);

describe('What is to be done', () => {
	it.each(askedAtSteps)('at $id is said in at most twelve words a sentence', ({asks}) => {
		expect(asks.flatMap((text) => longer(text, 12))).toEqual([]);
	});

	it('in a round and by a remedy is said in at most twelve words a sentence', () => {
		const {inHand, turned, turnedBack, anew, moved, limit} = words.rounds;
		const limits = [true, false].flatMap((isTurned) =>
			[true, false].flatMap((showsHand) =>
				(['innerLimit', 'outerLimit'] as const).map((which) => limit({which, isTurned, showsHand})),
			),
		);
		const remedies = Object.values(words.remedies).flatMap(({how, left = ''}) => [how, left]);
		const all = [...Object.values(inHand), turned, turnedBack, anew, moved, ...limits, ...remedies];
		expect(all.flatMap((text) => longer(text, 12))).toEqual([]);
	});

	it('is what a finding says in one short sentence', () => {
		expect(Object.values(words.findings).flatMap(({brief}) => longer(brief, 12))).toEqual([]);
	});
});

describe('Why it is done', () => {
	it.each(askedAtSteps)('at $id, what goes wrong and what may hurt are said in at most twenty words', ({reasons}) => {
		expect(reasons.flatMap((text) => longer(text, 20))).toEqual([]);
	});
});

describe('What is printed', () => {
	const printed = files.filter((name) =>
		/^(?:commands|reports)\/|^(?:documents|misfits|store|system|terminal)/.test(name),
	);
	it.each(printed)('of %s is said in at most twenty words a sentence', (name) => {
		expect(saidIn(name).flatMap((text) => longer(text, 20))).toEqual([]);
	});
});

describe('A sentence', () => {
	it.each(Object.entries(plainFor))('says nowhere "%s" (%s)', (phrase) => {
		expect(saying(phrase)).toEqual([]);
	});
});

describe('One word for one thing', () => {
	it.each(glossary)('is $term, and no other', ({term, not}) => {
		expect(saying(term)).not.toEqual([]);
		expect(not.flatMap(saying)).toEqual([]);
	});

	it('is explained where it is a word of the trade', () => {
		expect(named.filter((name) => !glossary.some(({term}) => whole(term).test(name)))).toEqual([]);
	});

	it('stands in the help with its meaning', () => {
		const rows = topics.flatMap(({blocks}) =>
			blocks.flatMap((block) => (typeof block !== 'string' && 'rows' in block ? block.rows : [])),
		);
		for (const {term, meaning} of glossary) expect(rows).toContainEqual([term, meaning]);
	});
});
