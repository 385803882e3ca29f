import {readFileSync} from 'node:fs';
import {describe, expect, it} from 'vitest';
import {visibleText} from '../../source/visible-text.js';
import {becauseText, overriddenText, reasonText} from '../../source/words/says.js';
import {fullStory, played} from '../helpers/invented-checks.js';
import {beginning, flat, numbersIn, words} from '../helpers/said.js';
import {textsOf} from './reading.js';
import {
	formsOf,
	halfSource,
	leftSource,
	nasty,
	nastySources,
	offScaleSource,
	sources,
	storySource,
	voidSource,
} from './support.js';

const story = textsOf(storySource);
const kinds = Object.entries(story);
const {captions, deck, method, sections, verdict} = words.reports;
const {bias, figures, results} = words;
const {record, verdict: judged} = words.pages;
const beyond = judged.headline({verdict: 'beyond', atWorst: 'beyond'});
const changed = words.years.comparison.summary.changed;
/** How the sentence on what the gauge is to show begins. */
const setGaugeTo = beginning(bias.setting.setGaugeTo({middles: [{radiusMm: 68, shown: '1'}]}));
const notTaken = bias.advice.notTaken({
	fit: {
		worstBeforePct: 41,
		frictionFloorPct: 42,
		factor: 43,
		worstAfterPct: 44,
		worstAfterDragPct: 0,
		rmsBeforePct: 0,
		rmsAfterPct: 0,
		targets: [],
	},
	isWithoutBias: false,
});

describe.each(Object.entries(sources))('A report of %s', (_name, source) => {
	const {check, issued} = source.record;

	it('has every finding and every override with its reason, in every format', () => {
		for (const text of Object.values(textsOf(source))) {
			for (const {found} of issued?.findings ?? []) expect(text).toContain(found);
			for (const given of check.overrides) {
				expect(text).toContain(overriddenText(given));
				expect(text).toContain(visibleText(reasonText(given.reason)).trim());
			}
		}
	});

	it('has every reading as it was typed, struck ones too, wherever readings belong', () => {
		const {html, markdown, maker} = textsOf(source);
		const readings = check.series.flatMap((series) =>
			[...series.inner, ...series.outer, ...series['bias-inner'], ...series['bias-outer']].flatMap(
				({innerLimit, outerLimit, struck}) => [
					innerLimit.typed,
					...(outerLimit ? [outerLimit.typed] : []),
					...(struck ? [reasonText(struck.reason)] : []),
				],
			),
		);
		for (const text of [html, markdown, maker]) for (const reading of readings) expect(text).toContain(reading);
	});
});

describe('A report', () => {
	it.each(kinds)('as %s says verdict or figures first, each with its ± and its limits', (_kind, text) => {
		expect(text).toContain(figures.sideForce(5.4, 0.4));
		expect(text).toContain(method.sidePull({goodPct: 2, usablePct: 4}));
	});

	it('says what the verdict is, who acts and what comes next, and when the next check is due', () => {
		for (const text of [story.html, story.markdown, story.arm]) {
			expect(text).toContain(beyond);
			for (const {next, who} of storySource.record.issued?.findings ?? []) {
				expect(text).toContain(next);
				expect(text).toContain(who);
			}
			expect(flat(text)).toContain(
				flat(verdict.nextCheck({day: '14 Dec 2026', because: storySource.record.nextCheck?.because ?? 'none'})),
			);
			expect(storySource.record.nextCheck?.date).toBe('2026-12-14');
		}
	});

	it('tells the playing force in the unit of the scale and in mN', () => {
		for (const text of Object.values(story)) expect(text).toContain('2.14 g = 21 mN');
	});

	it('keeps an earlier series beside the last one, with why it was closed', () => {
		for (const text of [story.html, story.markdown, story.maker]) {
			const because = becauseText({id: 'remedy', values: {remedy: 'again'}});
			expect(text).toContain(judged.series.closed({number: 1, because, hasFigures: true}));
			expect(text).toContain(judged.series.pull({place: 'inner'}));
		}
	});

	it('shows what the bias leaves over, and what to set the gauge to as long as no setting was chosen', () => {
		const {html, markdown} = textsOf({record: played({...fullStory, leftAt: 'bias-result'}), history: []});
		for (const text of [html, markdown]) {
			expect(text).toContain(bias.setting.name({name: '1: 2.4 g, third notch', isKept: false}));
			expect(text).toContain(setGaugeTo);
			expect(text).toContain(captions.biasToBeSet({column: words.bias.setting.columns.setGaugeTo}));
		}
	});

	it('names the bias setting that was kept, and asks for no other one', () => {
		for (const text of [story.html, story.markdown]) {
			expect(text).toContain(bias.setting.name({name: '1: 2.4 g, third notch', isKept: true}));
			// Of the three figures that are told only the strength is known from outside.
			expect(numbersIn(text, notTaken, 42, 43, 44)[0]).toBe(1.7);
			expect(text).not.toContain(setGaugeTo);
			expect(text).not.toContain(words.bias.setting.columns.setGaugeTo);
		}
	});

	it('compares with the checks before it, in words, and lists them all', () => {
		for (const text of Object.values(story)) {
			expect(text).toContain(changed);
			for (const {id} of storySource.history) expect(text).toContain(id);
		}
	});

	it('has the cautions and the limits of the method as the manual has them', () => {
		const manual = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');
		const itemsUnder = (heading: string) =>
			(manual.split(`## ${heading}\n`)[1]?.split('\n## ')[0] ?? '')
				.split('\n')
				.filter((line) => line.startsWith('- '))
				.map((line) => line.slice(2).replaceAll('**', ''));
		expect(itemsUnder(sections.cautions).length).toBeGreaterThan(2);
		for (const text of [story.html, story.markdown, story.arm])
			for (const caution of itemsUnder(sections.cautions)) expect(text).toContain(caution);
		for (const text of Object.values(story))
			for (const limit of itemsUnder(sections.limitsOfMethod)) expect(text).toContain(limit);
	});

	it('of a deck in pieces says so beside the verdict, in every format', () => {
		for (const text of Object.values(textsOf(leftSource))) expect(text).toContain(deck.notReadyBesideVerdict);
		for (const text of Object.values(story)) expect(text).not.toContain(deck.notReadyBesideVerdict);
		const back = {...leftSource, putBackAt: '2026-11-15T10:00:00+01:00'};
		for (const text of Object.values(textsOf(back))) expect(text).not.toContain(deck.notReadyBesideVerdict);
		const putBack = record.outcome({outcome: 'interrupted', putBackOn: '2026-11-15'});
		expect(textsOf(back).html).toContain(putBack);
	});

	it('of a void check says so before its verdict, with the reason, compares it with nothing and hands out no next date', () => {
		for (const text of Object.values(textsOf(voidSource))) {
			expect(text).toContain(results.void({at: '2026-11-20', reason: 'the level had slipped'}));
			for (const one of Object.values(words.years.comparison.summary)) expect(text).not.toContain(one);
			expect(text).not.toContain('14 Dec 2026');
			expect(text).not.toContain(storySource.record.nextCheck?.because ?? 'none');
		}
		const {html} = textsOf(voidSource);
		expect(html.indexOf(results.void({at: '2026-11-20', reason: 'the level had slipped'}))).toBeLessThan(
			html.indexOf(beyond),
		);
	});

	it('of a check that was void and counts again says so, and compares it', () => {
		const former = {
			reason: 'only tried out',
			at: '2026-11-20T09:00:00+01:00',
			takenBackAt: '2026-11-21T09:00:00+01:00',
		};
		for (const text of Object.values(textsOf({...storySource, voids: {formerVoids: [former]}}))) {
			expect(text).toContain(results.wasVoid({at: '2026-11-20', takenBackAt: '2026-11-21', reason: 'only tried out'}));
			expect(text).toContain(changed);
		}
	});

	it('of a check left half measured says that there is no verdict, and shows what there is', () => {
		const {html, markdown} = textsOf(halfSource);
		for (const text of [html, markdown]) {
			expect(text).toContain(judged.none);
			expect(text).toContain(results.missing.outer);
			expect(text).toContain(judged.radii.radius({place: 'inner', radiusMm: 68}));
		}
	});

	it('of a radius off the scale has no figure there', () => {
		for (const text of Object.values(textsOf(offScaleSource))) expect(text).toContain(judged.radii.offScale);
	});
});

describe('Texts that people typed', () => {
	it.each(Object.entries(nasty))('are read as they were typed: %s', (name, typed) => {
		const source = nastySources[`texts with ${name}`];
		const texts = source ? Object.values(textsOf(source)) : [];
		expect(texts).toHaveLength(5);
		for (const text of texts) expect(text).toContain(visibleText(typed).trim());
	});

	it('keep their own direction to themselves on a page', () => {
		const source = nastySources['texts with rightToLeft'];
		expect(source && formsOf(source).html).toContain(`<bdi>${visibleText(nasty.rightToLeft)}</bdi>`);
	});
});
