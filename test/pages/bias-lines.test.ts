import {describe, expect, it} from 'vitest';
import {type Dialogue, positionOf} from '../../source/check/dialogue.js';
import {finishedCheck} from '../../source/desk/filing.js';
import {biasLines} from '../../source/pages/bias/lines.js';
import {recordLines} from '../../source/pages/record-lines.js';
import type {Shown} from '../../source/pages/shown-lines.js';
import {viewOf} from '../../source/pages/view.js';
import type {BiasFitFigures} from '../../source/results/figures-types.js';
import {beginning, withAnyNumbers, words} from '../helpers/said.js';
import {biasAnswers, northDeckWith} from '../helpers/sample-check.js';
import {choose, follow, freshDialogue, goTo, type Script, say} from '../helpers/script.js';

const inText = (shown: readonly Shown[]): string =>
	shown.map((one) => (one.kind === 'line' ? one.text : one.caption)).join('\n');
const {advice, curve, groove, lever, setting} = words.bias;
/** For sentences whose figures are told beside them. */
const anyFit: BiasFitFigures = {
	factor: 1.5,
	worstBeforePct: 1,
	worstAfterPct: 1,
	rmsBeforePct: 1,
	rmsAfterPct: 1,
	worstAfterDragPct: 1,
	frictionFloorPct: 1,
	targets: [],
};
const anyGain = {nowPct: 1, isKept: false, isHidden: false, turned: undefined, heldPct: undefined};
const anyDoubt = {fromMm: 136, toMm: 68, measuredPct: -0.5, expectedPct: -3, openPct: 1};
/** That another place would leave less, whether it is for now or another time. */
const advised = [{}, {isKept: true}, {isHidden: true}].map((now) =>
	beginning(lever.gain({...anyGain, reads: 'clock', ...now, heldPct: 1})),
);
const doubted = (['clock', 'angle'] as const).map((reads) => beginning(lever.doubt({...anyDoubt, reads})));
const ownPull = curve.ownPull({
	own: [
		{radiusMm: 68, pct: 5.4},
		{radiusMm: 136, pct: 3.4},
	],
});
/** The sentence as a line of its own, whatever its figures. */
const wholeLine = (sentence: string): RegExp => new RegExp(`^${withAnyNumbers(sentence).source}$`, 'm');
/** As this program assumes it where nobody typed another one. */
const usualDrag = {drag: 0.3, band: 0.05, isUsual: true};
const tried = {leftPct: 1, isKept: false, isLeast: false, isChosen: false};
/** What is said of a setting that was tried, whatever it leaves. */
const triedIn = (text: string, one: Parameters<typeof setting.tried>[0]): string | undefined =>
	wholeLine(setting.tried(one)).exec(text)?.[0];
const seen = (dialogue: Dialogue): string => inText(viewOf(dialogue).shown);

const scriptWith = (answers: Script['answers'], rounds: Script['rounds'] = {}): Script =>
	northDeckWith({...biasAnswers, ...answers}, rounds);
const at = (step: string, answers: Script['answers'] = {}, rounds: Script['rounds'] = {}): Dialogue =>
	follow(freshDialogue(), scriptWith(answers, rounds), {until: step});

/** The first question once the bias is to be set, and the drag that is behind it, out of the list of steps. */
const atFirst = (): Dialogue => at('bias-radius-middle');
const atDrag = (): Dialogue => say(atFirst(), goTo('bias-on', 'bias-drag'));

/** Bands so narrow that friction hides nothing. */
const narrow: Script['rounds'] = {
	inner: [['0.5 in', '0.5 out']],
	outer: [['0.5 in', '0.5 out']],
	closing: [['0.5 in', '0.5 out']],
};
// Skating wants 12.5 % at 136 mm and 11.8 % at 68 mm of this arm.
const onAt = (outer: number, inner: number): Script['rounds'] => ({
	...narrow,
	'bias-outer': [[`${outer - 0.5} out`, `${outer + 0.5} out`]],
	'bias-inner': [[`${inner - 0.5} out`, `${inner + 0.5} out`]],
});

describe('What skating asks of the arm', () => {
	it('is said before anything is read: outside, least, inside, and that the drag is assumed', () => {
		const text = seen(atFirst());
		// 30 times (L² + r² − D²) / (2Lr), which is 0.4293 at 146 mm and 0.4110 at 60 mm; least at √(L² − D²) = 88.8 mm,
		// where it is 88.8 / 233 = 0.3813.
		const wanted = [
			{radiusMm: 146, pct: 12.88},
			{radiusMm: 89, pct: 11.44},
			{radiusMm: 60, pct: 12.33},
		];
		expect(text).toContain(curve.wantedOverRecord({wanted, drag: 0.3}));
		expect(text).toContain(curve.dragMoves({drag: 0.05, byPct: 2.15}));
		expect(text).toContain(curve.leastSkating({radiusMm: 88.8}));
		expect(text).toContain(ownPull);
	});

	it('stands first as the gauge will show it, with the drag behind it and where that comes from', () => {
		// 12.49 % at 136 mm and 11.85 % at 68 mm, and the gauge's zero of 0.125 %, to its step of 0.5 %.
		const middles = [
			{radiusMm: 136, shown: '12.5 % out'},
			{radiusMm: 68, shown: '12.0 % out'},
		];
		const drag = (told: {drag: number; isUsual: boolean}) => setting.drag({...told, band: 0.05});
		const [target, origin] = seen(atFirst()).split('\n');
		expect([target, origin]).toEqual([setting.wantedOnGauge({middles}), drag({drag: 0.3, isUsual: true})]);
		const typed = say(atFirst(), [...goTo('bias-on', 'bias-drag'), {kind: 'text', text: '0.25'}]);
		expect(seen(typed)).toContain(drag({drag: 0.25, isUsual: false}));
		for (const usual of [true, false])
			expect(seen(at('probe-bias-outer', usual ? {} : {'bias-drag': '0.25'}))).toContain(
				drag(usual ? {drag: 0.3, isUsual: true} : {drag: 0.25, isUsual: false}),
			);
	});

	it('follows the drag that is being typed', () => {
		// Two thirds of the above.
		const wanted = [
			{radiusMm: 146, pct: 8.59},
			{radiusMm: 89, pct: 7.63},
			{radiusMm: 60, pct: 8.22},
		];
		expect(inText(viewOf(atDrag(), '0.2').shown)).toContain(curve.wantedOverRecord({wanted, drag: 0.2}));
	});

	it('makes plain that it is a torque, and that the groove wall gives a little more', () => {
		expect(seen(atFirst())).toContain(setting.torque);
	});

	it('is all that an arm without bias device gets', () => {
		const text = seen(at('bias-drag', {'arm-bias-device': 'none'}));
		expect(text).toContain(setting.noDevice);
		expect(text).toContain(ownPull);
	});

	it('comes after the word that an arm that sticks lets bias be set no finer than half its band', () => {
		const sticky: Script['rounds'] = {
			inner: [['5 in', '5 out']],
			outer: [['1 in', '1 out']],
			closing: [['5 in', '5 out']],
		};
		const [first = ''] = seen(at('bias-radius-middle', {}, sticky)).split('\n');
		expect(first).toMatch(withAnyNumbers(setting.frictionFirst({bandPct: 11})));
		expect(first).toMatch(/± 5\.\d %/);
	});

	it('warns where the wanted reading and half the band pass the top of the scale', () => {
		const scaleEnd = {topOfScale: 20, unit: 'percent'} as const;
		const end = words.pages.gauge.ends(scaleEnd);
		expect(seen(at('bias-on'))).not.toContain(end);
		expect(seen(atFirst())).not.toContain(end);
		// A drag of 0.45 wants 100 × 0.45 × 0.394971 = 17.77 % at 68 mm and 18.74 % at 136 mm; half the bands of 5.875 and
		// 4.167 % and the zero of 0.125 % make 20.84 and 20.95 %, to the step of 0.5 %.
		expect(inText(viewOf(atDrag(), '0.45').shown)).toContain(
			setting.outerBeyondTop({outers: [68, 136].map((radiusMm) => ({radiusMm, shown: '21.0 % out'})), ...scaleEnd}),
		);
	});
});

describe('What a bias setting came to', () => {
	it('stands at each radius while it is read', () => {
		const text = seen(at('bias-clock-outer', {}, {}));
		expect(text).toBe('');
		const shownAfter = follow(freshDialogue(), scriptWith({}), {
			until: 'bias-clock-outer',
			seen: (dialogue) => {
				if (positionOf(dialogue).step?.id !== 'probe-bias-outer' || positionOf(dialogue).slot) return;
				expect(seen(dialogue)).toContain(
					curve.readHere({pullOnPct: 9.1, wantedPct: 12.5, leftoverPct: -3.4, biasPct: 5.8}),
				);
			},
		});
		expect(positionOf(shownAfter).step?.id).toBe('bias-clock-outer');
	});

	it('says what is left, what to do with the device in its own words, what the gauge then shows, and last what bears it out', () => {
		const result = at('bias-result');
		// What it came to stands in the place of the task.
		const text = `${viewOf(result).ask}\n${seen(result)}`;
		// The worked example: 13.31 and 11.42 % of the playing force; with the zero of 0.125 %, to the step of 0.5 %.
		const middles = [
			{radiusMm: 136, shown: '13.5 % out'},
			{radiusMm: 68, shown: '11.5 % out'},
		];
		// 1.7 times its weight of 2.4 g.
		const fit = {...anyFit, factor: 1.7, worstBeforePct: 3.8, worstAfterPct: 0.9, frictionFloorPct: 2.9};
		const order = [
			withAnyNumbers(setting.leaves({name: '1: 2.4 g, third notch', isKept: false, leftPct: 3.8})),
			withAnyNumbers(advice.bestSetting({fit, setBy: 'weight', weightG: 2.4})),
			setting.setGaugeTo({middles}),
			withAnyNumbers(advice.leftAfter(fit)),
		].map((said) => text.search(said));
		expect(order).not.toContain(-1);
		expect(order).toEqual(order.toSorted((one, other) => one - other));
		for (const figure of ['2.4 g', '4.1 g', '0.9 %', '3.8 %', '2.9 %']) expect(text).toContain(figure);
	});

	it.each([
		['weight-on-thread', 'weight'],
		['spring', 'dial'],
		['magnet', 'turning'],
		['other', 'dial'],
	] as const)('speaks of a %s as it is set', (device, setBy) => {
		const rounds = onAt(9, 8);
		expect(
			seen(at('bias-result', {'arm-bias-device': device, 'bias-angle-outer': '', 'bias-angle-inner': ''}, rounds)),
		).toMatch(withAnyNumbers(advice.bestSetting({fit: anyFit, setBy, weightG: 2.4})));
	});

	it('says how the best setting moves with the drag', () => {
		const best = [0.25, 0.35].map((drag) => ({drag, factor: 1.5}));
		const said = withAnyNumbers(advice.otherDrags({best})).exec(seen(at('bias-result')))?.[0];
		expect(said).toContain('0.25');
		expect(said).toContain('0.35');
	});

	it('is done once what is left lies under the friction floor', () => {
		const wide: Script['rounds'] = {
			inner: [['2 in', '2 out']],
			outer: [['2 in', '2 out']],
			closing: [['2 in', '2 out']],
			'bias-outer': [['11 out', '15 out']],
			'bias-inner': [['10 out', '14 out']],
		};
		const said = withAnyNumbers(advice.leaveItSo(anyFit)).exec(seen(at('bias-result', {}, wide)))?.[0];
		expect(said).toMatch(/2\.\d %/);
	});

	it('says so when no setting of the device can do', () => {
		expect(seen(at('bias-result', {}, onAt(13, 6)))).toMatch(withAnyNumbers(advice.wrongShape(anyFit)));
	});

	it('tells of the lever: how much of the weight acts, and what another place would gain', () => {
		const text = seen(at('bias-result'));
		const places = [
			{radiusMm: 136, clock: '8:30'},
			{radiusMm: 68, clock: '7:15'},
		];
		expect(text).toContain(lever.leverStands({places}));
		// sin 37.5° and sin 75°; skating asks for 0.3948 / 0.4163 = 0.948 of its most at 68 mm of this arm.
		expect(text).toContain(lever.weightThatActs({reads: 'clock', shares: [0.609, 0.966], askedShare: 0.948}));
		// Both stand below the level, 9 o'clock.
		const turned = {byDeg: 15, isRaised: true, worstPct: 1};
		expect(text).toMatch(withAnyNumbers(lever.gain({...anyGain, reads: 'clock', isHidden: true, turned})));
	});

	it('tells where a lever that falls far below its level had better stay', () => {
		// 9 o'clock outside and 7:15 inside: all of the weight, and sin 37.5° = 0.61 of it; 12 and 7.3 % bias.
		const text = seen(at('bias-result', {'bias-clock-outer': '9:00', 'bias-clock-inner': '7:15'}, onAt(12, 7.3)));
		expect(text).toContain(lever.weightThatActs({reads: 'clock', shares: [0.609, 1], askedShare: 0.948}));
		const turned = {byDeg: 15, isRaised: true, worstPct: 1};
		expect(text).toMatch(withAnyNumbers(lever.gain({...anyGain, reads: 'clock', turned, heldPct: 1})));
	});

	it('tells of a thread by its angle to the bias pin', () => {
		const answers = {'arm-bias-device': 'weight-on-thread', 'bias-angle-outer': '85', 'bias-angle-inner': '30'};
		const text = seen(at('bias-result', answers, onAt(12, 6)));
		const places = [
			{radiusMm: 136, deg: 85},
			{radiusMm: 68, deg: 30},
		];
		expect(text).toContain(lever.threadStands({places}));
		const turned = {byDeg: 15, isRaised: false, worstPct: 1};
		expect(text).toMatch(withAnyNumbers(lever.gain({...anyGain, reads: 'angle', turned, heldPct: 1})));
	});

	it('says that the lever does not explain the bias where both change otherwise over the record, and advises no other place', () => {
		// Skating of this arm is nearly level over the record, and so is this bias; the lever lets half of it act inside.
		const text = seen(at('bias-result', {'bias-clock-inner': '7:00'}, onAt(12, 11.5)));
		const said = withAnyNumbers(lever.doubt({...anyDoubt, reads: 'clock'})).exec(text)?.[0] ?? '';
		for (const figure of ['136', '68 mm', '0.5 %']) expect(said).toContain(figure);
		for (const one of [...advised, lever.gainsNothing]) expect(text).not.toContain(one);
	});

	it('says the same of a thread', () => {
		const answers = {'arm-bias-device': 'weight-on-thread', 'bias-angle-outer': '85', 'bias-angle-inner': '40'};
		expect(seen(at('bias-result', answers, onAt(12, 12)))).toMatch(
			withAnyNumbers(lever.doubt({...anyDoubt, reads: 'angle', measuredPct: 0})),
		);
	});

	it('doubts no lever where friction hides the difference', () => {
		// Half the widest band is 2.9 %.
		for (const one of doubted) expect(seen(at('bias-result'))).not.toContain(one);
	});

	it('says that another place would gain nothing only where the lever does what skating asks for', () => {
		const even = {'bias-clock-outer': '9:00', 'bias-clock-inner': '8:30'};
		expect(seen(at('bias-result', even, onAt(12.5, 12)))).toContain(lever.gainsNothing);
	});

	it('says otherwise where the arm’s own pull makes up for what the lever does not do', () => {
		const pulled: Script['rounds'] = {
			...onAt(12.5, 12),
			inner: [['5.5 out', '6.5 out']],
			closing: [['5.5 out', '6.5 out']],
		};
		const text = seen(at('bias-result', {'bias-clock-inner': '7:00'}, pulled));
		expect(text).toMatch(withAnyNumbers(lever.leavesLeast({nowPct: 1})));
		for (const one of [...doubted, lever.gainsNothing]) expect(text).not.toContain(one);
	});

	it('tells what it means in the groove, before and after', () => {
		const text = seen(at('bias-result'));
		expect(text).toContain(groove.inGroove({isLeaning: true}));
		const loads = groove.wallLoads({inner: 0.5, outer: 0.5, leanUm: 5, leanDeg: 0.1});
		const cells = groove.columns.map((column) => `${column} ${loads}`).join(', ');
		expect(text).toMatch(withAnyNumbers(`136 mm: ${cells}.`));
	});

	it('is at hand while the next one is set, and read', () => {
		const next = say(at('bias-result'), [choose('adjust')]);
		expect(seen(next)).toContain(
			setting.setGaugeTo({
				middles: [
					{radiusMm: 136, shown: '13.5 % out'},
					{radiusMm: 68, shown: '11.5 % out'},
				],
			}),
		);
		const reading = follow(next, scriptWith({}), {until: 'probe-bias-outer'});
		expect(seen(reading)).toContain(
			setting.aimShown({
				of: 'best',
				shows: words.pages.gauge.aim({unit: 'percent', step: 0.5, middle: 13.5, limits: {inner: 11.5, outer: 15}}),
			}),
		);
	});

	it('stands beside the others that were tried, the best one marked', () => {
		const first = at('bias-result', {}, onAt(9, 8));
		const better = scriptWith({'bias-weight': '3.2'}, onAt(12.5, 12));
		const second = follow(say(first, [choose('adjust')]), better, {until: 'bias-result'});
		const text = seen(second);
		expect(triedIn(text, {...tried, name: '1: 2.4 g, third notch'})).toContain('1: 2.4 g, third notch');
		expect(triedIn(text, {...tried, name: '2: 3.2 g, third notch', isLeast: true})).toContain('2: 3.2 g, third notch');
	});

	it('stays in the record, with the readings of every setting', () => {
		const {check} = follow(freshDialogue(), scriptWith({}));
		const text = inText(recordLines(finishedCheck(check, '2026-03-02T12:00:00Z')));
		expect(text).toContain(setting.drag(usualDrag));
		expect(text).toContain(setting.leaves({name: '1: 2.4 g, third notch', isKept: true, leftPct: 3.8}));
		expect(text.split('\n')).toContain(
			words.pages.record.reading({
				series: 1,
				place: 'bias-outer',
				setting: '1: 2.4 g, third notch',
				round: 1,
				isTurned: false,
				innerLimit: '7.5 % out',
				outerLimit: '11 % out',
				struck: undefined,
			}),
		);
	});

	it('that was kept is named, and nothing is to be set any more; what was not taken is told', () => {
		const {check} = follow(freshDialogue(), scriptWith({}));
		const shown = biasLines(check);
		const text = inText(shown);
		expect(text).toContain(
			advice.notTaken({
				fit: {...anyFit, factor: 1.7, worstBeforePct: 3.8, worstAfterPct: 0.9, frictionFloorPct: 2.9},
				isWithoutBias: false,
			}),
		);
		const toBeDone = [
			setting.setGaugeTo({middles: [{radiusMm: 136, shown: '13.5 % out'}]}),
			setting.columns.setGaugeTo,
			advice.bestSetting({fit: anyFit, setBy: 'weight', weightG: 2.4}),
		];
		for (const one of toBeDone) expect(text).not.toContain(beginning(one));
		const turned = {byDeg: 15, isRaised: true, worstPct: 1};
		expect(text).toMatch(
			wholeLine(lever.gain({...anyGain, reads: 'clock', nowPct: 0.9, isKept: true, isHidden: true, turned})),
		);
	});

	it('that was kept is marked among those that were tried, beside the one that leaves least', () => {
		const first = at('bias-result', {}, onAt(9, 8));
		const better = scriptWith({'bias-weight': '3.2'}, onAt(12.5, 12));
		const second = follow(say(first, [choose('adjust')]), better, {until: 'bias-result'});
		const text = inText(biasLines(say(second, [choose('back-to:1')]).check));
		expect(text).toContain(setting.leaves({name: '1: 2.4 g, third notch', isKept: true, leftPct: 4.3}));
		const chosen = {...tried, isChosen: true};
		expect(triedIn(text, {...chosen, name: '1: 2.4 g, third notch', isKept: true})).toContain('1: 2.4 g, third notch');
		expect(triedIn(text, {...chosen, name: '2: 3.2 g, third notch', isLeast: true})).toContain('2: 3.2 g, third notch');
	});
});
