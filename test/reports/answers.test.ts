import {describe, expect, it} from 'vitest';
import {checkReport} from '../../source/reports/check-report.js';
import type {CheckSource} from '../../source/reports/check-source.js';
import {phraseText} from '../../source/reports/report.js';
import {played} from '../helpers/invented-checks.js';
import {titleOf, words} from '../helpers/said.js';
import {northDeckWith} from '../helpers/sample-check.js';
import {choose, text} from '../helpers/script.js';
import {textsOf} from './reading.js';
import {halfSource, imprint, leftSource, offScaleSource, poorSource, storySource, voidSource} from './support.js';

const {overridden, verdict} = words.reports;
const {mayBePlayed} = verdict;
const at = '2026-11-14T09:40:00+01:00';
const small = [
	['0.9 in', '1 out'],
	['0.9 in', '1 out'],
	['0.9 in', '1 out'],
] as const;
const fine = {'gauge-step': '0.1', 'gauge-nudge': '0.1'};
const soundScript = northDeckWith(fine, {inner: [...small], outer: [...small], closing: [['0.9 in', '1 out']]});
const soundSource: CheckSource = {record: played({at, script: soundScript}), history: []};

/** What stands in one box with the verdict. */
const boxOf = (source: CheckSource): readonly string[] =>
	checkReport(source, imprint).sections.flatMap(({blocks}) =>
		blocks
			.flatMap((block) => (block.kind === 'verdict' ? (block.beside ?? []) : []))
			.map(({phrase}) => phraseText(phrase)),
	);
const no = (...because: Parameters<typeof mayBePlayed.no>[0]['because']) => mayBePlayed.no({because});

describe('In one box with the verdict stands', () => {
	it('what to do next and who does it, once in a report', () => {
		const [first] = storySource.record.issued?.findings ?? [];
		expect(first && boxOf(storySource)).toContain(first && verdict.doNext(first));
		const {html, markdown} = textsOf(storySource);
		for (const whole of [html, markdown]) expect(whole.split(first?.next ?? 'none')).toHaveLength(2);
	});

	it.each<[string, CheckSource, string]>([
		['sound', soundSource, mayBePlayed.good],
		['beyond limits in a pull that bias carries, with a band on its limit of 6 %', storySource, no('band')],
		['left with its deck in pieces', leftSource, no('deck', 'pull', 'band')],
		['left in pieces, and put back later', {...leftSource, putBackAt: '2026-11-15T10:00:00+01:00'}, no('pull', 'band')],
		['off the scale', offScaleSource, no('off-scale')],
		['void', voidSource, no('void', 'band')],
	])('whether it may be played, and why: a check that is %s', (_what, source, said) => {
		expect(boxOf(source)).toContain(said);
	});

	it('that bias carries a pull, where it does', () => {
		const {record} = soundSource;
		const {issued} = storySource.record;
		if (!issued) throw new Error('nothing was issued');
		const probe = issued.figures.probe.map((one) => ({...one, bandAtWorst: 'good', bandVerdict: 'good'}) as typeof one);
		const [first] = issued.findings;
		const findings = first ? [first, {...first, code: 'playable-with-bias' as const}] : [];
		const carried = {...record, issued: {figures: {...issued.figures, probe}, findings}};
		expect(boxOf({record: carried, history: []})).toContain(mayBePlayed.withBias);
	});

	it('what was overridden and still is, as a caution; of the putting back apart', () => {
		const still = ['level-fb-2', 'damping-off', 'bias-off', 'wires'] as const;
		expect(boxOf(poorSource)).toContain(overridden.spoilsReadings({steps: still.map(titleOf)}));
		const light: CheckSource = {
			record: played({
				at,
				script: soundScript,
				detours: [
					{until: 'back-force', entries: [text('25 mN'), text(''), choose('override'), choose('other'), text('later')]},
				],
			}),
			history: [],
		};
		expect(boxOf(light)).toContain(overridden.spoilsPlay({steps: [titleOf('back-force')]}));
		expect(boxOf(soundSource)).toHaveLength(2);
	});
});

it('A check without a verdict is to be finished, and not played', () => {
	const {html, markdown} = textsOf(halfSource);
	for (const whole of [html, markdown]) {
		expect(whole).toContain(verdict.finish);
		expect(whole).toContain(no('deck', 'unfinished'));
	}
});
