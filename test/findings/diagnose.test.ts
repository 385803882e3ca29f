// @ts-nocheck
import {describe, expect, it} from 'vitest';
import {type FindingCode, findingRows, findingsOf} from '../../source/findings/diagnose.js';
import type {Document} from '../../source/findings/document.js';
import {figuresOf} from '../../source/findings/figures.js';
import {documentWith, example} from './example.js';

const found = (document: Document) => findingsOf(document, figuresOf(document));
const codes = (document: Document) => found(document).map(({code}) => code);

const level = (leftRightDeg: number[]) => ({stepDeg: 0.05, leftRightDeg, frontBackDeg: [0, 0]});
const quiet = documentWith({pull: 1, band: 1}, {pull: 1, band: 1});

// The share that 3° across makes of the pull, so that a document can be pulled by its tilt alone.
const tilted = documentWith({pull: 0, band: 1}, {pull: 0, band: 1}, {level: level([3, -3])});
const [innerShare = 0, outerShare = 0] = figuresOf(tilted).probe.map(({tiltSharePct}) => tiltSharePct ?? 0);
const byTilt = (readings: number[]) =>
	documentWith({pull: innerShare, band: 1}, {pull: outerShare, band: 1}, {level: level(readings)});

const withOther = (pull: number, band: number): Document => ({
	...quiet,
	probe: [
		...quiet.probe,
		{place: 'other', radiusMm: 100, rounds: [{innerLimit: pull - band / 2, outerLimit: pull + band / 2}]},
	],
});

type BiasReading = {radiusMm: number; pull: number; band: number};

/** A document with readings with the bias on; skating wants 12.1 % at 65 mm and 12.8 % at 140 mm of this arm. */
const withBias = (document: Document, ...readings: BiasReading[]): Document => ({
	...document,
	bias: {
		device: 'weighted-lever',
		readings: readings.map(({radiusMm, pull, band}) => ({
			radiusMm,
			rounds: [{innerLimit: pull - band / 2, outerLimit: pull + band / 2}],
		})),
	},
});
const at = (radiusMm: number, pull: number, band = 1): BiasReading => ({radiusMm, pull, band});
const pulled = documentWith({pull: 5, band: 1}, {pull: 5, band: 1});

/** Each finding: a document in which it fires, with its places, and the nearest one in which it does not. */
const cases: Record<FindingCode, {fires: Document; places: string[]; silent: Document}> = {
	'off-scale': {fires: withOther(12, 8), places: ['other'], silent: withOther(12, 7.9)},
	'hard-case': {
		fires: documentWith({pull: 5, band: 7}, {pull: 5, band: 1}),
		places: ['inner'],
		silent: documentWith({pull: 5, band: 1}, {pull: 1, band: 7}),
	},
	// One reading of the level holds its zero error: nothing can be laid on it.
	'tilt-explains': {fires: byTilt([3, -3]), places: ['inner', 'outer'], silent: byTilt([3])},
	'constant-pull': {
		fires: documentWith({pull: 3, band: 1}, {pull: 3.99, band: 1}),
		places: ['inner', 'outer'],
		silent: documentWith({pull: 3, band: 1}, {pull: 4, band: 1}),
	},
	'spring-pull': {
		fires: documentWith({pull: 3, band: 1}, {pull: 2, band: 1}),
		places: ['inner', 'outer'],
		silent: documentWith({pull: 3, band: 1}, {pull: 2.01, band: 1}),
	},
	'runaway-pull': {
		fires: documentWith({pull: 2, band: 1}, {pull: 3, band: 1}),
		places: ['inner', 'outer'],
		silent: documentWith({pull: 3, band: 1}, {pull: 2, band: 1}),
	},
	friction: {
		fires: documentWith({pull: 0, band: 7}, {pull: 0, band: 7}),
		places: ['inner', 'outer'],
		silent: documentWith({pull: 0, band: 7}, {pull: 0, band: 5}),
	},
	'friction-local': {
		fires: documentWith({pull: 0, band: 3.5}, {pull: 0, band: 2}),
		places: ['inner', 'outer'],
		silent: documentWith({pull: 0, band: 3.49}, {pull: 0, band: 2}),
	},
	'bias-off-scale': {
		fires: withBias(quiet, at(140, 15.5), at(65, 12)),
		places: ['outer'],
		silent: withBias(quiet, at(140, 15.4), at(65, 12)),
	},
	'bias-rubs': {
		fires: withBias(quiet, at(140, 12, 2.5), at(65, 12)),
		places: ['outer'],
		silent: withBias(quiet, at(140, 12, 2.49), at(65, 12)),
	},
	'bias-uneven': {
		fires: withBias(quiet, at(140, 12), at(65, 8)),
		places: ['inner', 'outer'],
		silent: withBias(quiet, at(140, 12), at(65, 9.5)),
	},
	'playable-with-bias': {
		fires: withBias(pulled, at(140, 11), at(65, 11)),
		places: ['inner', 'outer'],
		silent: withBias(pulled, at(140, 11), at(65, 7)),
	},
	undecided: {
		fires: documentWith({pull: 1, band: 1}, {pull: 2, band: 1}),
		places: ['outer'],
		silent: documentWith({pull: 1, band: 1}, {pull: 2.5, band: 1}),
	},
	sound: {
		fires: documentWith({pull: 3, band: 5}, {pull: 3, band: 5}),
		places: ['inner', 'outer'],
		silent: documentWith({pull: 4, band: 5}, {pull: 3, band: 5}),
	},
};

describe('the findings', () => {
	it.skip.each(Object.entries(cases))('%s fires where it should and not beside it', (code, {fires, places, silent}) => {
		expect(found(fires).find((finding) => finding.code === code)?.places).toEqual(places);
		expect(codes(silent)).not.toContain(code);
	});

	it.skip('have a case for every row', () => {
		expect(Object.keys(cases)).toEqual(findingRows.map(({code}) => code));
	});

	it('of the worked example stand in order of weight', () => {
		expect(found(example()).map(({code, places, who}) => ({code, places, who}))).toEqual([
			{code: 'spring-pull', places: ['inner', 'outer'], who: 'technician'},
			{code: 'friction-local', places: ['inner', 'outer'], who: 'technician'},
			{code: 'playable-with-bias', places: ['inner', 'outer'], who: 'technician'},
			{code: 'undecided', places: ['inner'], who: 'technician'},
		]);
	});

	it.skip('say what was found with value, uncertainty and limit, then the cause and who acts', () => {
		for (const {fires} of Object.values(cases)) {
			for (const {code, text, who, next, likely} of found(fires)) {
				expect(text).toContain('%');
				// Readings with the bias on have no budget of their own: the assumed drag leaves more open than they do.
				if (code !== 'off-scale' && !code.startsWith('bias-')) expect(text).toContain('±');
				expect(text.endsWith('.')).toBe(true);
				expect(text.toLowerCase()).toContain(who);
				expect(text).toContain(next.slice(1));
				expect(text).toContain(likely);
				expect(text).not.toMatch(/NaN|undefined|null|Infinity/);
			}
		}
	});

	it.skip('never send the arm to its maker before a repeat', () => {
		const toMaker = Object.values(cases)
			.flatMap(({fires}) => found(fires))
			.filter(({who}) => who === 'maker');
		expect(new Set(toMaker.map(({code}) => code))).toEqual(new Set(['off-scale', 'hard-case', 'friction']));
		for (const {text} of toMaker) expect(text.indexOf('repeat')).toBeLessThan(text.indexOf('maker'));
		for (const {text} of toMaker) expect(text).toContain('repeat at one radius');
	});

	it.skip('lead with what is sure of an undecided figure, and say what would decide it', () => {
		const once = {pull: 2, band: 1, rounds: 1};
		const text = found(documentWith(once, once)).find(({code}) => code === 'undecided')?.text;
		expect(text).toContain('usable at worst, good not proven');
		expect(text).toContain('3 rounds in all');
	});

	it('tell the ways apart: out toward the rim, in toward the spindle', () => {
		const text = found(documentWith({pull: 3, band: 1}, {pull: -3, band: 1})).find(
			({code}) => code === 'spring-pull',
		)?.text;
		expect(text).toContain('3.00 % out ±');
		expect(text).toContain('3.00 % in ±');
		expect(text).toMatch(/neutral at \d+ mm/);
	});
});
