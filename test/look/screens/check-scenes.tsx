import {type Dialogue, positionOf, startDialogue} from '../../../source/check/dialogue.js';
import {takenUp} from '../../../source/check/entry.js';
import {promptOf} from '../../../source/check/prompt.js';
import type {Entry} from '../../../source/check/respond.js';
import {placeOfRounds, stepById} from '../../../source/procedure/index.js';
import {profilesWith} from '../../../source/results/profiles.js';
import {App} from '../../../source/screens/show-app.js';
import {KEYS} from '../../../source/terminal/keys.js';
import {armProfile} from '../../helpers/filed-checks.js';
import {fullStory, played} from '../../helpers/invented-checks.js';
import {memoryWorkbench} from '../../helpers/memory-workbench.js';
import {biasAnswers, northDeck, northDeckWith} from '../../helpers/sample-check.js';
import {back, choose, clockOf, follow, freshDialogue, type Script, say, text, waysOut} from '../../helpers/script.js';
import {everyStep, stored} from '../../helpers/wandering.js';
import type {Scene} from './terminal.js';

type Memory = Parameters<typeof memoryWorkbench>[0];
type More = Pick<Scene, 'keys' | 'waitMs' | 'size'> & {readonly memory?: Memory};

/** A check that stands somewhere, as the whole program shows it. */
export const checkScene = (name: string, dialogue: Dialogue, {memory = {}, ...more}: More = {}): Scene => ({
	name,
	step: positionOf(dialogue).step?.id,
	show: ({feed, look}) => (
		<App workbench={memoryWorkbench(memory, clockOf(dialogue))} dialogue={dialogue} keys={feed} look={look} />
	),
	...more,
});

/** A script without what nobody is asked: nothing of it is known beforehand, as where an arm is checked first. */
const asFirst = ({answers, rounds}: Script): Script => ({
	answers: Object.fromEntries(Object.entries(answers).filter(([id]) => !stepById(id)?.usual)),
	rounds,
});
const firstCheck = asFirst(northDeckWith({'arm-damping': 'yes', 'bias-setting': 'third notch', ...biasAnswers}));
/** The sample check, from its first question to a step. */
const at = (until: string, script: Script = northDeck): Dialogue => follow(freshDialogue(), asFirst(script), {until});

/** The readings of an invented arm that is sound, with a fine gauge. */
export const soundArm: Script = northDeckWith(
	{'arm-name': 'quiet deck', 'gauge-step': '0.1', 'gauge-nudge': '0.1'},
	{
		inner: [
			['0.9 in', '1 out'],
			['0.9 in', '1.1 out'],
			['1 in', '1 out'],
		],
		outer: [['0.8 in', '1.1 out']],
		closing: [['0.9 in', '1 out']],
	},
);
/** So near a limit that a coarse gauge cannot tell on which side of it. */
const nearLimit = northDeckWith(
	{'arm-name': 'near deck'},
	{inner: [['1.5 out', '6.5 out']], outer: [['1.5 out', '6 out']], closing: [['1.5 out', '6.5 out']]},
);
const offScale = northDeckWith({}, {inner: [['4 out', '20 out']], closing: [['4 out', '20 out']]});
/** A gauge that cannot be turned, a thread with a weight, a unipivot with stiff leads. */
const otherKinds: Script = {
	answers: {
		...everyStep.answers,
		'arm-pivot-way': 'offset',
		'gauge-turns': 'no',
		'zero-free-before': '+0.5',
		'zero-free-after': '0',
		'arm-bearing': 'unipivot',
		'arm-bias-device': 'weight-on-thread',
		'arm-wire-path': 'free-loop',
		'arm-wire-stiffness': 'stiff',
		'bias-angle-outer': '90',
		'bias-angle-middle': '90',
		'bias-angle-inner': '90',
	},
	rounds: {...everyStep.rounds, inner: [['3 out', '8.5 out']], closing: [['3 out', '8.5 out']]},
};
/** The leads off at the tags, to see whether they make the pull. */
const leadsOff = northDeckWith({'arm-wire-path': 'free-loop', 'arm-wire-stiffness': 'stiff'});
const withoutGuard = northDeckWith({'guard-on': 'no-guard', mat: 'on', clearance: '3'});

const known = follow(freshDialogue(), northDeckWith({'arm-damping': 'yes', 'bias-setting': 'third notch'}));
const knownProfiles = profilesWith([], known.check, '2026-03-02T12:00:00Z');

/** Kept of its own by an earlier version, with its playing force. */
const cartridge = armProfile('blue one', {
	kind: 'cartridge',
	answers: {
		'cartridge-name': {value: 'blue one', typed: 'blue one'},
		'playing-force': {value: 21, typed: '21 mN'},
	},
});

type Stop = {readonly name: string; readonly dialogue: Dialogue; readonly step: string};

/** Each question of a walk once. */
function stopsOf(from: Dialogue, script: Script, until?: string): readonly Stop[] {
	const stops = new Map<string, Stop>();
	const seen = (dialogue: Dialogue): void => {
		const step = positionOf(dialogue).step?.id;
		const {key} = promptOf(dialogue);
		if (dialogue.mode.kind === 'ask' && step && !stops.has(key)) stops.set(key, {name: key, dialogue, step});
	};
	follow(from, script, {seen, ...(until === undefined ? {} : {until})});
	return [...stops.values()];
}

/** Later rounds look as the first ones do, but for the inner radius, where the gauge is turned. */
const isAnew = ({name, step}: Stop): boolean =>
	placeOfRounds(step) === undefined || step === 'probe-inner' || !/-[1-9]-/.test(name);

/** Every step as it is first met, by walks that between them meet all of them. */
export async function walkScenes(): Promise<readonly Scene[]> {
	const met = new Set<string>();
	const first = stopsOf(freshDialogue(), firstCheck).filter(isAnew);
	for (const {step} of first) met.add(step);
	const repeated = await recheckFrom();
	const walks = [
		stopsOf(freshDialogue(), everyStep),
		stopsOf(repeated, northDeckWith({'done-since': 'other', 'done-since-note': 'new cartridge clips'})),
		stopsOf(repeated, northDeck),
		stopsOf(freshDialogue(knownProfiles, 'sample-2'), northDeck, 'safe'),
		stopsOf(
			freshDialogue([...knownProfiles, cartridge], 'sample-2'),
			northDeckWith({'arm-profile': 'new', 'arm-name': 'other deck'}),
			'safe',
		),
		stopsOf(later(at('probe-outer'), nextDay), northDeck, 'probe-outer'),
		stopsOf(later(atBiasRead(), 60), northDeckWith(biasAnswers), 'bias-result'),
		stopsOf(freshDialogue(), withoutGuard, 'first-swing'),
		stopsOf(freshDialogue(), otherKinds),
	];
	const others = walks.flatMap((walk) => {
		const added = walk.filter(({step}) => !met.has(step)).filter(isAnew);
		for (const {step} of added) met.add(step);
		return added;
	});
	return [...first, ...others].map(({name, dialogue}) => checkScene(name, dialogue));
}

async function recheckFrom(): Promise<Dialogue> {
	const workbench = memoryWorkbench({
		records: [played({at: '2025-09-02T09:00:00Z', script: northDeck})],
		profiles: knownProfiles,
	});
	const opened = await workbench.recheck();
	if (!opened.ok) throw new Error(opened.sentence);
	return opened.dialogue;
}

const later = (dialogue: Dialogue, minutes: number): Dialogue =>
	takenUp(
		startDialogue(stored(dialogue.check), dialogue.profiles),
		new Date(Date.parse(clockOf(dialogue)()) + 60_000 * minutes).toISOString(),
	);
const atBiasRead = (): Dialogue => at('probe-bias-inner', northDeckWith(biasAnswers));
const nextDay = 20 * 60;
const toReadings: readonly Entry[] = [text('3 out'), text('8.5 out')];

/** What a check is beside its questions: refusals, detours, verdicts, and coming back. */
export function detourScenes(): readonly Scene[] {
	const atProbe = at('probe-inner');
	const atGap = at('guard-gap');
	const atVerdict = at('verdict');
	const suspect = follow(say(atVerdict, [choose('try:bias')]), northDeck, {until: 'verdict'});
	const atBiasResult = at('bias-result', northDeckWith(biasAnswers));
	const scene = checkScene;
	return [
		scene('refused-word', at('arm-length'), {keys: ['long', KEYS.enter]}),
		scene('refused-number', at('arm-length'), {keys: ['2330', KEYS.enter]}),
		scene('refused-reading-on-list', at('gauge-unit'), {keys: ['2.5', KEYS.enter]}),
		scene('why-guard', at('guard-on'), {keys: ['?']}),
		scene('why-probe', atProbe, {keys: ['?']}),
		scene('why-verdict', atVerdict, {keys: ['?']}),
		scene('side-level', at('level-lr-1'), {keys: ['0.15', KEYS.enter]}),
		scene('side-probe', atProbe, {keys: ['3', KEYS.enter]}),
		scene('level-typed', at('level-fb-2'), {keys: ['0.1 front']}),
		scene('level-first-too-much', say(at('level-lr-1'), [text('0.9 right')])),
		scene('level-not-passed', say(at('level-lr-1'), ['0.9 right', '0.8 right', '0.05 back', '0.1 front'].map(text))),
		scene('force-typed', at('force-reading'), {keys: ['2.05']}),
		scene('force-not-passed', say(at('force-reading'), [text('2.6 g')])),
		scene('height-not-passed', say(atGap, [text('1.7')])),
		scene('height-ways-out', say(atGap, [text('1.7'), waysOut])),
		scene('height-reasons', say(atGap, [text('1.7'), waysOut, choose('override')])),
		scene('height-reason-typed', say(atGap, [text('1.7'), waysOut, choose('override'), choose('other')])),
		scene('steps-stages', atProbe, {keys: [KEYS.tab]}),
		scene('steps-of-a-stage', say(atProbe, [{kind: 'steps'}, choose('stage:level')])),
		scene('stop-asked', say(atProbe, [{kind: 'stop'}])),
		scene('probe-typed', atProbe, {keys: ['3 out']}),
		scene('probe-countdown', atProbe, {keys: [' '], waitMs: 2600}),
		scene('probe-settled', atProbe, {keys: [' '], waitMs: 6000}),
		scene('probe-half-round', say(atProbe, [text('3 out')])),
		scene('probe-second-round', say(atProbe, toReadings)),
		scene('probe-third-half-round', say(atProbe, [...toReadings, text('-2.5'), text('-8'), text('3 out')])),
		scene('probe-refused-crossed', say(atProbe, [text('3 out')]), {keys: ['1 out', KEYS.enter]}),
		scene('probe-above-scale', atProbe, {keys: ['25 out', KEYS.enter]}),
		scene('probe-refused-turned-sign', say(atProbe, toReadings), {keys: ['+3', KEYS.enter, '+8.5', KEYS.enter]}),
		scene('probe-off-scale', say(atProbe, [text('4 out'), text('20 out')])),
		scene('probe-strike-which', say(follow(atProbe, northDeck, {until: 'probe-outer'}), [back, choose('strike')])),
		scene('probe-strike-why', say(atVerdict, [choose('strike'), choose('inner:0')])),
		scene('verdict-beyond', atVerdict),
		scene('verdict-sound', at('verdict', soundArm)),
		scene('verdict-undecided', at('verdict', nearLimit)),
		scene('verdict-off-scale', at('verdict', offScale)),
		scene('verdict-after-suspect', suspect),
		scene('verdict-other-ways', say(atVerdict, [choose('other-way')])),
		scene('bias-result-second-setting', secondSetting(atBiasResult)),
		scene('back-force-not-passed', say(at('back-force'), [text('2.6 g')])),
		scene(
			'back-leads',
			follow(say(atVerdict, [choose('other-way'), choose('try:leads-off')]), leadsOff, {until: 'back-leads'}),
		),
		scene('resume-bias-on', later(atBiasRead(), 60)),
		scene('back-after-stop', say(atProbe, [{kind: 'stop'}, {kind: 'yes'}])),
		scene('resume-after-an-hour', later(say(atProbe, [text('3 out')]), 60)),
		scene('resume-next-day', later(at('probe-outer'), nextDay)),
		scene('resume-put-back', later(at('back-mat'), 60)),
		scene('brisk-list', {...at('safe'), isBrisk: true}),
		scene('brisk-probe', {...atProbe, isBrisk: true}),
		scene('unsaved-answer', at('guard-on'), {
			keys: ['1', KEYS.enter],
			memory: {failures: ['The disk is full (invented).', 'The disk is full (invented).']},
		}),
		scene('too-small', atProbe, {size: {columns: 38, rows: 18}}),
		scene(
			'long-foreign-name',
			at('probe-inner', fullStoryNamed('ذراع المنصة الشمالية 👩🏽‍🔧 Langspielplattentonarmversuch')),
		),
	];
}

const fullStoryNamed = (name: string): Script => ({
	...fullStory.script,
	answers: {...fullStory.script.answers, 'arm-name': name},
});

/** The bias read once more with another weight. */
const secondSetting = (dialogue: Dialogue): Dialogue =>
	follow(
		say(dialogue, [choose('adjust')]),
		northDeckWith({...biasAnswers, 'bias-weight': '2.8', 'bias-set': 'fourth notch'}),
		{
			until: 'bias-result',
		},
	);
