import {between, type Chance, chanceFrom, evenUnit} from '../../source/practice/chance.js';
import {manyWays, onceWays, type ProbingWay, settingUpPct} from '../../source/practice/proof.js';
import {bars, shareInterval} from '../../source/practice/shortfalls.js';
import type {Document} from '../../source/results/document-schema.js';
import {figuresOf} from '../../source/results/figures.js';

// Limits are drawn, not found: everything here is invented and in percent of the playing force.

type Truth = {readonly pullPct: number; readonly bandPct: number};
type Bench = {readonly way: ProbingWay; readonly zeroPct: number; readonly gain: number; readonly chance: Chance};
type Round = Document['probe'][number]['rounds'][number];

/** Of the scale of the gauge, ± percent, all alike likely. */
const scalePct = 2;

/** Nearly normal: twelve even numbers, each of standard deviation 1. */
const normal = (chance: Chance): number =>
	Array.from({length: 12}, () => evenUnit(chance)).reduce((sum, one) => sum + one, 0) / Math.sqrt(12);

/** What the gauge shows at the last nudge that held: up to one nudge short of the limit, in whole steps. */
function shown(limitPct: number, inward: number, {way, zeroPct, gain, chance}: Bench, sign: number): number {
	const held = limitPct + inward * between(chance, 0, way.stepPct);
	return Math.round((sign * gain * held + zeroPct) / way.stepPct) * way.stepPct;
}

/** One round about a middle that this setting up has moved; taken again where it reads upside down. */
function roundOf({pullPct, bandPct}: Truth, movedPct: number, bench: Bench, isTurned: boolean): Round {
	const {way, chance} = bench;
	const sign = isTurned ? -1 : 1;
	for (;;) {
		const limit = (side: number) => pullPct + movedPct + (side * bandPct) / 2 + way.scatterPct * normal(chance);
		const [innerLimit, outerLimit] = [shown(limit(-1), 1, bench, sign), shown(limit(1), -1, bench, sign)];
		if (sign * (outerLimit - innerLimit) < 0) continue;
		return isTurned ? {innerLimit, outerLimit, gauge: 'turned'} : {innerLimit, outerLimit};
	}
}

/** Rounds at a radius; the gauge is set up anew for each, or once and where it is turned. */
function roundsOf(truth: Truth, turns: readonly boolean[], bench: Bench): Round[] {
	let movedPct = 0;
	return turns.map((isTurned, index) => {
		if (bench.way.setAnew || index === 0 || isTurned !== turns[index - 1])
			movedPct = settingUpPct * normal(bench.chance);
		return roundOf(truth, movedPct, bench, isTurned);
	});
}

function documentOf(inner: Truth, outer: Truth, bench: Bench): Document {
	const {rounds, stepPct, setAnew} = bench.way;
	const asUsed = Array.from({length: rounds}, () => false);
	const isWhole = rounds > 1;
	const innerRounds = roundsOf(inner, isWhole ? asUsed.with(1, true) : asUsed, bench);
	const outerRounds = roundsOf(outer, asUsed, bench);
	const closing = isWhole ? roundsOf(inner, [false], bench).map((one) => ({...one, closing: true as const})) : [];
	return {
		arm: {effectiveLengthMm: 233, pivotDistanceMm: 215.4, loading: 'gravity'},
		gauge: {
			unit: 'percent',
			step: stepPct,
			topOfScale: 100,
			relativeUncertaintyPct: scalePct / Math.sqrt(3),
			nudge: stepPct,
			setAnew,
		},
		trackingForce: {playingMn: 21, scaleReadingMn: 21, guard: 'none'},
		probe: [
			{place: 'inner', radiusMm: 68, rounds: [...innerRounds, ...closing]},
			{place: 'outer', radiusMm: 136, rounds: outerRounds},
		],
	};
}

const truthFrom = (chance: Chance): Truth => ({pullPct: between(chance, -6, 6), bandPct: between(chance, 1.5, 9)});

/** How many intervals of pulls and bands hold, of two in each check. */
function heldIn(way: ProbingWay, checks: number): {readonly pull: number; readonly band: number} {
	const chance = chanceFrom(20_260_301);
	const held = {pull: 0, band: 0};
	for (let check = 0; check < checks; check++) {
		const [inner, outer] = [truthFrom(chance), truthFrom(chance)];
		const gain = 1 + between(chance, -scalePct, scalePct) / 100;
		const bench = {way, zeroPct: between(chance, -0.8, 0.8), gain, chance};
		for (const one of figuresOf(documentOf(inner, outer, bench)).probe) {
			const truth = one.place === 'inner' ? inner : outer;
			if (one.pullPct === null) continue;
			if (Math.abs(one.pullPct - truth.pullPct) <= one.pullUncertaintyPct) held.pull++;
			if (Math.abs(one.bandPct - truth.bandPct) <= one.bandUncertaintyPct) held.band++;
		}
	}
	return held;
}

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;

/** Prints a line a combination. @returns whether every share reaches its bar, as far as chance lets it be told */
export function proveFigures(checks: number): boolean {
	const all = 2 * checks;
	const line = (way: ProbingWay): boolean => {
		const {pull, band} = heldIn(way, checks);
		const isShort = [pull, band].some((held) => shareInterval(held, all)[1] < bars.holding);
		const {rounds, stepPct, scatterPct, setAnew} = way;
		console.log(
			`${setAnew ? 'anew' : 'once'}  ${rounds} rounds  step ${stepPct}  scatter ${scatterPct}  pull ${percent(pull / all)}  band ${percent(band / all)}${isShort ? '  SHORT' : ''}`,
		);
		return !isShort;
	};
	console.log(`${checks} simulated checks a combination; wanted ${percent(bars.holding)} or more:`);
	const holds = manyWays.map(line);
	console.log('One round at each radius, scatter assumed (nothing is promised):');
	for (const way of onceWays) line(way);
	return holds.every(Boolean);
}
