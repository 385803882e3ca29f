import {lessonArms} from '../practice/arms.js';
import type {FigureTally} from '../practice/coverage.js';
import {type Proof, prove, radiiMm, restlessPct, settingUpPct, type WayTally} from '../practice/proof.js';
import {bars, holdingShare, lessonTotal, shareInterval, shortfalls} from '../practice/shortfalls.js';
import {compute} from '../results/compute.js';
import {columns} from '../terminal/columns.js';
import {EXIT} from '../terminal/exit-paths.js';
import {words} from '../words/index.js';
import {practiceWords} from '../words/practice.js';
import {speaker} from '../words/speaker.js';
import {mostSeed, readSeed, wholeNumber} from './practice-seed.js';
import {printOut, refuseWith} from './print.js';

type Options = {readonly prove: string; readonly seed?: string | undefined};

const said = practiceWords.proof;
const shortfallText = speaker(said.shortfalls);

const usualSeed = '1';
const mostArms = 100_000;
/**
 * `armdrift practice --prove N`: probes N random arms with a scripted operator, and prints how often the program was right.
 * @returns exit status: 0 where the proof holds, 70 where enough arms show that it does not: the figures promise too much
 */
export async function runProve({prove: count, seed: given = usualSeed}: Options): Promise<number> {
	const [arms, seed] = [wholeNumber(count, 1, mostArms), readSeed(given)];
	if (arms === undefined) return refuseWith(said.countWanted({mostArms}));
	if (seed === undefined) return refuseWith(words.commands.practice.seedWanted({most: mostSeed}));
	const startMs = performance.now();
	const proof = prove({arms, seed, compute});
	const tookMs = performance.now() - startMs;
	const short = shortfalls(proof);
	const head = said.head({arms, seed, tookMs, radiiMm});
	const status = await printOut([head, ...tables(proof), conclusion(short, arms)].join('\n'));
	return status === EXIT.done && short.length > 0 && arms >= bars.arms ? EXIT.internal : status;
}

const tables = (proof: Proof): string[] => [
	said.holding({holding: bars.holding, settingUpPct}),
	holdingTable(proof.ways),
	said.oneRound,
	holdingTable(proof.once),
	said.restless({restlessPct}),
	holdingTable(proof.restless),
	said.calledGood({wronglyGood: bars.wronglyGood}),
	goodTable(proof),
	said.lessons,
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
	said.setting[way.setAnew ? 'anew' : 'once'],
	String(way.rounds),
	String(way.stepPct),
	String(way.scatterPct),
];

const holdingTable = (ways: readonly WayTally[]): string =>
	columns([
		said.holdingHead,
		...ways.map((one) => [
			...wayCells(one),
			String(one.tally.pull.intervals),
			...figureCells(one.tally.pull),
			...figureCells(one.tally.band),
		]),
	]);

const counts = ['arms', 'notGood', 'notGoodCalledGood', 'beyond', 'beyondCalledGood', 'offScaleRadii'] as const;

/** All ways together: the share of each is too small to be read. */
const goodTable = ({ways}: Proof): string =>
	columns([said.goodHead, counts.map((count) => String(ways.reduce((sum, {tally}) => sum + tally[count], 0)))]);

const lessonTable = (proof: Proof): string =>
	columns([
		said.lessonHead,
		...lessonArms.map(({id, finding}) => [id, finding, said.lessonNamed(lessonTotal(proof, id))]),
	]);

const conclusion = (short: ReturnType<typeof shortfalls>, arms: number): string =>
	short.length === 0
		? said.holds
		: said.fallsShort({shortfalls: short.map(shortfallText), enough: arms < bars.arms ? bars.arms : null});
