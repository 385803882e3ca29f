import {type ArmSource, armReport} from '../../source/reports/arm-report.js';
import {checkReport} from '../../source/reports/check-report.js';
import type {CheckSource} from '../../source/reports/check-source.js';
import {htmlOf} from '../../source/reports/html/html-of.js';
import {makerReport} from '../../source/reports/maker-report.js';
import {markdownOf} from '../../source/reports/markdown-of.js';
import {summaryOf} from '../../source/results/record.js';
import {driftingArm, fullStory, type Played, played, playedInTurn} from '../helpers/invented-checks.js';
import {northDeckWith} from '../helpers/sample-check.js';
import {choose, no, text, waysOut, yes} from '../helpers/script.js';

export const imprint = {version: '0.0.0', writtenOn: '2026-11-25'};

/** Texts that would break a page, a table or a reader, were they taken as anything but text; all invented. */
export const nasty = {
	markup: '<script>alert("x")</script><img src=x onerror=y>&amp;&#60;',
	markdown: '# | `*_~[a](b)<c>&amp; \\\\| 1. ',
	emoji: '👩🏽‍🔧 tool kit 🏴󠁧󠁢󠁥󠁮󠁧󠁿 e\u0301',
	rightToLeft: 'ذراع المنصة \u202Etxt.exe\u2069 שלום 12',
	long: 'Donaudampfschifffahrtselektrizitätenhauptbetriebswerkbauunterbeamtengesellschaftx',
	control: 'a\u0000b\u001B]0;title\u0007c\u009B2Jd\u200Be\uFFFEf\nsecond line',
} as const;

const nastyPlay = (name: string): Played => ({
	at: '2026-11-14T09:40:00+01:00',
	script: northDeckWith({}),
	detours: [{until: 'guard-gap', entries: [text('1.7'), waysOut, choose('override'), choose('other'), text(name)]}],
});

/** A check in which a text stands wherever people type freely, as it might come from an import. */
function nastyCheck(name: string): CheckSource {
	const record = played(nastyPlay('a reason'));
	const {check} = record;
	const answers = Object.fromEntries(
		['arm-name', 'arm-serial', 'cartridge-name', 'tools-name', 'room-note', 'bias-setting'].map((step) => [
			step,
			{typed: name, value: name, at: check.startedAt},
		]),
	);
	const overrides = check.overrides.map((one) => ({...one, reason: {id: 'other', typed: name}}));
	const whole = {...record, check: {...check, answers: {...check.answers, ...answers}, overrides}};
	const past = {...summaryOf(whole), id: 'earlier', date: '2025-11-14', startedAt: '2025-11-14T09:40:00+01:00'};
	return {record: whole, history: [past], voids: {voided: {reason: name, at: '2026-11-20T09:00:00+01:00'}}};
}

const inTurn = playedInTurn([...driftingArm, fullStory]);
const story = inTurn.at(-1);
if (!story) throw new Error('no check was played');

/** A check with overrides, a struck round, a remedy, bias readings and five earlier checks. */
export const storySource: CheckSource = story;
/** The first check of an arm, left with the deck in pieces. */
export const leftSource: CheckSource = {
	record: played({at: '2026-11-14T09:40:00+01:00', script: northDeckWith({}), leftAt: 'back-lock'}),
	history: [],
};
/** Left before anything was measured at the outer radius. */
export const halfSource: CheckSource = {
	record: played({at: '2026-11-14T09:40:00+01:00', script: northDeckWith({}), leftAt: 'probe-outer'}),
	history: [],
};
export const offScaleSource: CheckSource = {
	record: played({
		at: '2026-11-14T09:40:00+01:00',
		script: northDeckWith(
			{},
			{
				inner: [
					['4 out', '20 out'],
					['-4', '-20'],
					['4 out', '20 out'],
				],
			},
		),
	}),
	history: [],
};
/** Nothing was ruled out that could be: damper and bias left in, a lead that touches, out of level, zero not checked. */
export const poorSource: CheckSource = {
	record: played({
		at: '2026-11-14T09:40:00+01:00',
		script: northDeckWith(
			{
				'arm-damping': 'yes',
				'level-lr-1': '1 right',
				'level-lr-2': '1 right',
				'gauge-turns': 'no',
				'zero-free-before': '-',
				'zero-free-after': '-',
			},
			{
				inner: [
					['3 out', '8.5 out'],
					['2.5 out', '8 out'],
					['3 out', '8 out'],
				],
			},
		),
		detours: [
			{
				until: 'level-fb-2',
				entries: [text('0.05 front'), choose('override'), choose('other'), text('a wall shelf')],
			},
			{until: 'damping-off', entries: [no, choose('override'), choose('damper-built-in')]},
			{until: 'bias-off', entries: [no, choose('override'), choose('maker-forbids-unhooking')]},
			{
				until: 'wires',
				entries: [yes, no, yes, yes, choose('override'), choose('part-of-fault')],
			},
		],
	}),
	history: [],
};
export const voidSource: CheckSource = {
	...storySource,
	voids: {voided: {reason: 'the level had slipped', at: '2026-11-20T09:00:00+01:00'}},
};

export const nastySources: Readonly<Record<string, CheckSource>> = Object.fromEntries(
	Object.entries(nasty).map(([name, value]) => [`texts with ${name}`, nastyCheck(value)]),
);

export const sources: Readonly<Record<string, CheckSource>> = {
	'a whole story': storySource,
	'a check left with its deck in pieces': leftSource,
	'a check left half measured': halfSource,
	'a check off the scale': offScaleSource,
	'a poorly prepared check': poorSource,
	'a void check': voidSource,
	...nastySources,
};

/** The history of an arm, with one check that does not count. */
export const armSourceOf = (newest: CheckSource): ArmSource => ({
	arm: newest.record.check.answers['arm-name']?.typed ?? '',
	newest,
	overridden: [
		{
			date: '2025-11-22',
			overridden: [
				{
					step: 'clearance',
					title: 'Clearance',
					sentence: 'Too low.',
					reason: 'the arm touches',
					series: 1,
					holds: true,
				},
			],
		},
	],
	notCounted: [{...summaryOf(leftSource.record), voidBecause: 'draught'}],
});

/** Every report that is made of a source, by its kind. */
export const formsOf = (
	source: CheckSource,
): Readonly<Record<'html' | 'markdown' | 'maker' | 'arm' | 'armMarkdown', string>> => ({
	html: htmlOf(checkReport(source, imprint)),
	markdown: markdownOf(checkReport(source, imprint)),
	maker: htmlOf(makerReport(source, imprint)),
	arm: htmlOf(armReport(armSourceOf(source), imprint)),
	armMarkdown: markdownOf(armReport(armSourceOf(source), imprint)),
});

/** Pages of every kind, with a name for each. */
export const pages: readonly (readonly [name: string, html: string])[] = Object.entries(sources).flatMap(
	([name, source]) => {
		const {html, maker, arm} = formsOf(source);
		return [
			[`${name}: check`, html],
			[`${name}: maker`, maker],
			[`${name}: arm`, arm],
		] as const;
	},
);
