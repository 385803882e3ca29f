import {lessonArms} from '../practice/arms.js';
import type {FigureTally} from '../practice/coverage.js';
import {type Proof, prove, radiiMm, restlessPct, settingUpPct, type WayTally} from '../practice/proof.js';
import {bars, holdingShare, lessonTotal, shareInterval, shortfalls} from '../practice/shortfalls.js';
import {compute} from '../results/compute.js';
import {columns} from '../terminal/columns.js';
import {EXIT} from '../terminal/exit-paths.js';
import {words} from '../words/index.js';
import {mostSeed, readSeed, wholeNumber} from './practice-seed.js';
import {printOut, refuseWith} from './print.js';

const say = words.commands.proof;

type Options = {readonly prove: string; readonly seed?: string | undefined};

const usualSeed = '1';
const mostArms = 100_000;
/**
 * `armdrift practice --prove N`: probes N random arms with a scripted operator, and prints how often the program was right.
 * @returns exit status: 0 where the proof holds, 70 where enough arms show that it does not: the figures promise too much
 */
export async function runProve({prove: count, seed: given = usualSeed}: Options): Promise<number> {
	const [arms, seed] = [wholeNumber(count, 1, mostArms), readSeed(given)];
	if (arms === undefined) return refuseWith(say.countWanted({most: mostArms}));
	if (seed === undefined) return refuseWith(words.commands.practice.seedWanted({most: mostSeed}));
	const startMs = performance.now();
	const proof = prove({arms, seed, compute});
	const seconds = (performance.now() - startMs) / 1000;
	const short = shortfalls(proof);
	const head = say.head({arms, seed, seconds, innerMm: radiiMm.inner, outerMm: radiiMm.outer});
	const status = await printOut([head, ...tables(proof), conclusion(short, arms)].join('\n'));
	return status === EXIT.done && short.length > 0 && arms >= bars.arms ? EXIT.internal : status;
}

const tables = (proof: Proof): string[] => [
	say.holding({holdingShare: bars.holding, settingUpPct}),
	holdingTable(proof.ways),
	say.once,
	holdingTable(proof.once),
	say.restless({restlessPct}),
	holdingTable(proof.restless),
	say.calledGood({wronglyGoodShare: bars.wronglyGood}),
	goodTable(proof),
	say.lessons,
	lessonTable(proof),
];

const signed = (value: number): string => `${value < 0 ? '-' : '+'}${Math.abs(value).toFixed(2)}`;

const percents = (share: number): string => (100 * share).toFixed(1);

function figureCells(tally: FigureTally): string[] {
	// Too few arms for every way to get one.
	if (tally.intervals === 0) return ['-', '-', '-', '-'];
	const count = tally.intervals;
	return [
		`${percents(holdingShare(tally))} %`,
		shareInterval(tally.holding, tally.intervals).map(percents).join('-'),
		`±${(tally.statedPct / count).toFixed(2)}`,
		signed(tally.errorPct / count),
	];
}

const wayCells = ({way}: WayTally): string[] => [
	way.setAnew ? say.anew : say.onceARadius,
	String(way.rounds),
	String(way.stepPct),
	String(way.scatterPct),
];

const holdingTable = (ways: readonly WayTally[]): string =>
	columns([
		say.holdingHeads,
		...ways.map((one) => [
			...wayCells(one),
			String(one.tally.pull.intervals),
			...figureCells(one.tally.pull),
			...figureCells(one.tally.band),
		]),
	]);

/** All ways of a table together: the share of each is too small to be read. */
const sumOf = (ways: readonly WayTally[], count: (tally: WayTally['tally']) => number): number =>
	ways.reduce((sum, {tally}) => sum + count(tally), 0);

const goodTable = ({ways}: Proof): string =>
	columns([
		say.goodHeads,
		[
			sumOf(ways, ({arms}) => arms),
			sumOf(ways, ({notGood}) => notGood),
			sumOf(ways, ({notGoodCalledGood}) => notGoodCalledGood),
			sumOf(ways, ({beyond}) => beyond),
			sumOf(ways, ({beyondCalledGood}) => beyondCalledGood),
			sumOf(ways, ({offScaleRadii}) => offScaleRadii),
		].map(String),
	]);

const lessonTable = (proof: Proof): string =>
	columns([
		say.lessonHeads,
		...lessonArms.map(({id, finding}) => {
			const {named, of} = lessonTotal(proof, id);
			return [id, finding, say.named({named, of})];
		}),
	]);

const conclusion = (short: readonly string[], arms: number): string =>
	short.length === 0 ? say.holds : say.fallsShort({short, fewerThan: arms < bars.arms ? bars.arms : undefined});
