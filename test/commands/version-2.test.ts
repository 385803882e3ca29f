import {cpSync, readdirSync, readFileSync} from 'node:fs';
import path from 'node:path';
import {beforeAll, describe, expect, it} from 'vitest';
import * as z from 'zod/mini';
import {positionOf} from '../../source/check/dialogue.js';
import {progressOf} from '../../source/check/progress.js';
import {OpenWorkbench} from '../../source/desk/open-workbench.js';
import {PracticeWorkbench} from '../../source/desk/practice-workbench.js';
import {stepById} from '../../source/procedure/index.js';
import {usualSettings} from '../../source/procedure/settings.js';
import {checkReport} from '../../source/reports/check-report.js';
import {htmlOf} from '../../source/reports/html/html-of.js';
import type {FinishedCheck} from '../../source/results/record.js';
import {upgradeContent} from '../../source/store/upgrades.js';
import {becauseText, overriddenText, reasonText} from '../../source/words/says.js';
import {freshFolder} from '../helpers/program-environment.js';
import {words} from '../helpers/said.js';

// A data folder as the second stored form has it, described in fixtures/saved/version-2.md: what was gone past, and why,
// stands there in English sentences. What is expected stands in its own files, read here as plain JSON.
const saved = path.resolve(import.meta.dirname, '../../fixtures/saved/version-2');

const rawOverride = z.looseObject({step: z.string(), sentence: z.string(), reason: z.string()});
const rawStruck = z.optional(z.looseObject({reason: z.string()}));
const rawCheck = z.looseObject({
	id: z.string(),
	answers: z.record(z.string(), z.looseObject({typed: z.string()})),
	series: z.array(
		z.looseObject({
			inner: z.array(z.looseObject({struck: rawStruck})),
			closed: z.optional(z.looseObject({because: z.string()})),
		}),
	),
	overrides: z.array(rawOverride),
});
const rawFigures = z.looseObject({verdict: z.string(), probe: z.array(z.looseObject({pullPct: z.number()}))});
const rawRecord = z.looseObject({
	check: rawCheck,
	outcome: z.string(),
	issued: z.nullish(z.looseObject({figures: rawFigures})),
});
const rawRemark = z.looseObject({
	remark: z.looseObject({
		void: z.optional(z.looseObject({reason: z.string()})),
		overrides: z.optional(z.array(rawOverride)),
	}),
});

const json = (...parts: readonly string[]): unknown => JSON.parse(readFileSync(path.join(saved, ...parts), 'utf8'));
const rawRecordOf = (name: string) =>
	z.looseObject({version: z.literal(2), record: rawRecord}).parse(json('checks', name)).record;
const filed = readdirSync(path.join(saved, 'checks')).sort().map(rawRecordOf);
const draft = z.looseObject({version: z.literal(2), content: rawCheck}).parse(json('draft-b.json')).content;

const copy = (): string => {
	const dataDir = path.join(freshFolder(), 'data');
	cpSync(saved, dataDir, {recursive: true});
	return dataDir;
};
/** A minute after the open check was left. */
const soon = () => new Date('2026-11-20T19:29:09Z');

/** What stands in its files in English, in the words of today; what somebody typed stays as it is. */
const asToday = (text: string): string =>
	new Map([
		['a licensed person is in charge', words.reasons['licensed-person']],
		['bumped the deck', words.reasons.bumped],
		['it will be done by someone else, who knows', words.reasons['someone-else']],
		['the arm touches elsewhere', words.reasons['arm-touches-elsewhere']],
		['the deck cannot be levelled here', words.reasons['cannot-level']],
		['the device cannot be put out of action', words.reasons['bias-stays']],
	]).get(text) ?? text;

const ids = {
	overridden: '20260606-090006-uvwbrkhj',
	twoSeries: '20260620-140024-a8dxolyy',
	voided: '20260905-091515-qz8iey0g',
} as const;

let workbench: OpenWorkbench;
let dataDir = '';
beforeAll(() => {
	dataDir = copy();
	workbench = new OpenWorkbench({dataDir, version: '0.0.0', clock: soon});
});
const found = (id: string) => {
	const one = workbench.archive.record(id);
	if (!one.ok) throw new Error(one.sentence);
	return one;
};

describe('Checks filed in the second stored form', () => {
	it('are all listed with the very verdicts and pulls that were issued', () => {
		const {rows, total, notices} = workbench.archive.past({offset: 0, limit: 99});
		expect([total, notices]).toEqual([filed.length, []]);
		const wanted = filed.toReversed().map(({check, outcome, issued}) => ({
			id: check.id,
			outcome,
			verdict: issued?.figures.verdict,
			probe: issued?.figures.probe.map(({pullPct}) => ({pullPct})) ?? [],
		}));
		expect(rows).toMatchObject(wanted.map(({verdict, ...rest}) => (verdict === undefined ? rest : {...rest, verdict})));
	});

	it.each(filed.map(({check}) => [check.id, check] as const))(
		'keep what was gone past as it was said, under an id: %s',
		(id, raw) => {
			const {check}: FinishedCheck = found(id).record;
			// What was put back later stands beside the file, and takes the place of those lines.
			const later = raw.overrides.filter(({step}) => stepById(step)?.stage !== 'back');
			const now = check.overrides.filter(({step}) => stepById(step)?.stage !== 'back');
			expect(now.map(overriddenText)).toEqual(later.map(({sentence}) => sentence));
			expect(now.map(({reason}) => reasonText(reason))).toEqual(later.map(({reason}) => asToday(reason)));
			for (const {problem} of check.overrides) expect(Object.keys(words.problems)).toContain(problem.id);
			for (const [index, {closed}] of raw.series.entries())
				expect(check.series[index]?.closed && becauseText(check.series[index].closed.because)).toBe(closed?.because);
			expect(check.series.map(({inner}) => inner.map(({struck}) => struck && reasonText(struck.reason)))).toEqual(
				raw.series.map(({inner}) => inner.map(({struck}) => struck && asToday(struck.reason))),
			);
		},
	);

	it('are reported with all of that', () => {
		const {record} = found(ids.overridden);
		const html = htmlOf(checkReport({record, history: []}, {version: '0.0.0', writtenOn: '2026-11-25'}));
		const raw = filed.find(({check}) => check.id === ids.overridden);
		for (const {reason} of raw?.check.overrides ?? []) expect(html).toContain(asToday(reason));
	});

	it('keep what was noted later beside them: an override of the put-back list, and that one is void', () => {
		const later = rawRemark.parse(json('remarks', `${ids.overridden}.json`)).remark.overrides ?? [];
		// Left to somebody twice: on the day itself, and when the list was done later.
		expect(later).toHaveLength(2);
		const given = found(ids.overridden).record.check.overrides.filter(({step}) => stepById(step)?.stage === 'back');
		expect(given.map((one) => [overriddenText(one), reasonText(one.reason)])).toEqual(
			later.map(({sentence, reason}) => [sentence, asToday(reason)]),
		);
		const voided = rawRemark.parse(json('remarks', `${ids.voided}.json`)).remark.void;
		expect(found(ids.voided).voided?.reason).toBe(voided?.reason);
	});

	it('are found under the former name of an arm too', () => {
		expect(workbench.profiles().map(({name}) => name)).toContain('birch ten, wall shelf');
		const history = workbench.archive.history(found('20261010-170527-5jip25ul').record.check);
		expect(history.map(({id}) => id)).toContain(ids.twoSeries);
	});

	it('stay byte for byte as they were', () => {
		for (const {check} of filed) found(check.id);
		for (const name of readdirSync(path.join(saved, 'checks')))
			expect(readFileSync(path.join(dataDir, 'checks', name))).toEqual(readFileSync(path.join(saved, 'checks', name)));
	});
});

describe('A check left open in the second stored form', () => {
	it('goes on where it was left, and what was gone past still holds', async () => {
		const opened = await new OpenWorkbench({dataDir: copy(), version: '0.0.0', clock: soon}).resume();
		if (!opened.ok) throw new Error(opened.sentence);
		const {check} = opened.dialogue;
		expect(check.id).toBe(draft.id);
		expect(check.overrides.map(overriddenText)).toEqual(draft.overrides.map(({sentence}) => sentence));
		const {stateOf, visible} = progressOf(check);
		const states = draft.overrides.map(({step: id}) => {
			const step = visible.find((one) => one.id === id);
			return step && stateOf(step);
		});
		expect(states).toEqual(draft.overrides.map(() => 'overridden'));
		expect(positionOf(opened.dialogue).step?.input.kind).toBe('rounds');
	});

	it('of practice goes on too', async () => {
		const practice = new PracticeWorkbench({
			dataDir: path.join(copy(), 'practice'),
			version: '0.0.0',
			settings: usualSettings,
			seed: () => 1,
		});
		const opened = await practice.resume();
		expect(opened).toMatchObject({ok: true, dialogue: {check: {practice: {arm: 'tilted-deck'}}}});
	});
});

describe('Every sentence of the second form', () => {
	const at = '2026-06-06T09:00:00Z';
	const upgraded = (sentence: string) => {
		const content = {
			answers: {},
			series: [],
			overrides: [{step: 'x', sentence, reason: 'time is short', at, series: 1}],
		};
		const check = z
			.looseObject({overrides: z.array(z.looseObject({problem: z.unknown(), said: z.string(), reason: z.unknown()}))})
			.parse(upgradeContent('armdrift-draft', 'content', content, 2));
		return check.overrides[0];
	};

	// As that program said them; a gram-force is 9.80665 mN (CODATA standard acceleration of gravity).
	it.each([
		[
			'The tilt alone pushes the stylus by 0.65 %; 0.5 % is allowed.',
			'tilt-too-much',
			{sharePct: 0.65, allowedPct: 0.5},
		],
		['The deck leans by 0.66°; 0.5° is allowed.', 'deck-leans', {leanDeg: 0.66, allowedDeg: 0.5}],
		[
			"The gauge would carry 2.6 g, above the cartridge's range of 1.8 g to 2.4 g.",
			'force-outside-range',
			{carriedMn: 2.6 * 9.80665, side: 'above', lowMn: 1.8 * 9.80665, highMn: 2.4 * 9.80665},
		],
		[
			'2.1 g is 4.8 % less than the playing force of 2.2 g; within 2 % is wanted.',
			'playing-force-off',
			{weighedMn: 2.1 * 9.80665, offPct: -4.8, playingMn: 2.2 * 9.80665, allowedPct: 2},
		],
		[
			'Something moved: the closing round is 1.25 % away from the inner rounds. Probe again.',
			'closing-moved',
			{movedPct: 1.25},
		],
		['It was not weighed as played.', 'not-weighed', {}],
		['The mat is still off.', 'not-confirmed', {step: 'back-mat'}],
		[
			'Stop the platter and wedge it gently, so that it cannot creep. Put the arm in its rest and lay the stylus guard ready.',
			'lines-left',
			{list: 'safe', lines: ['platter', 'rest']},
		],
		['Something that no version has said.', 'as-said', {}],
	])('is known by its id: %s', (sentence, id, values) => {
		expect(upgraded(sentence)).toMatchObject({problem: {id, values}, said: sentence, reason: {id: 'time-short'}});
	});
});
