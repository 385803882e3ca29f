import {compute} from '../findings/compute.js';
import {lessonArms} from '../practice/arms.js';
import type {FigureTally} from '../practice/coverage.js';
import {type Proof, prove, radiiMm, restlessPct, type WayTally} from '../practice/proof.js';
import {bars, holdingShare, lessonTotal, shortfalls} from '../practice/shortfalls.js';
import {columns} from '../terminal/columns.js';
import {EXIT} from '../terminal/exit-paths.js';
import {readSeed, seedWanted, wholeNumber} from './practice-seed.js';
import {printOut, sayFault} from './print-out.js';

type Options = {readonly prove: string; readonly seed?: string | undefined};

const usualSeed = '1';
const mostArms = 100_000;
/**
 * `armdrift practice --prove N`: probes N random arms with a scripted operator, and prints how often the program was right.
 * @returns exit status: 0 where the proof holds, 70 where enough arms show that it does not: the figures promise too much
 */
export async function runPracticeProve({prove: count, seed: given = usualSeed}: Options): Promise<number> {
	const [arms, seed] = [wholeNumber(count, 1, mostArms), readSeed(given)];
	if (arms === undefined || seed === undefined) {
		sayFault(arms === undefined ? `Wanted: --prove with a whole number from 1 to ${mostArms}.` : seedWanted);
		return EXIT.usage;
	}
	const startMs = performance.now();
	const proof = prove({arms, seed, compute});
	const seconds = ((performance.now() - startMs) / 1000).toFixed(0);
	const short = shortfalls(proof);
	const head = `${arms} invented arms, seed ${seed}, ${seconds} s. A scripted operator probes each at ${radiiMm.inner} and ${radiiMm.outer} mm.\n`;
	const status = await printOut([head, ...tables(proof), explanation, conclusion(short, arms)].join('\n'));
	return status === EXIT.done && short.length > 0 && arms >= bars.arms ? EXIT.internal : status;
}

const tables = (proof: Proof): string[] => [
	`How often the stated 95 % interval holds the hidden truth (wanted: ${(100 * bars.holding).toFixed(0)} % or more),
with the mean ± and the mean error of the figure, in percent of tracking force:
`,
	holdingTable(proof.ways),
	`The same arms where the side force wanders by ${restlessPct} %, twice as much as
above on average (no bar):
`,
	holdingTable(proof.restless),
	`How often an arm is called good that truly is not (wanted: less than ${(100 * bars.wronglyGood).toFixed(0)} % of
those beyond the usable limits):
`,
	goodTable(proof),
	'How often the lesson of each practice arm is named:\n',
	lessonTable(proof),
];

const signed = (value: number): string => `${value < 0 ? '-' : '+'}${Math.abs(value).toFixed(2)}`;

function figureCells(tally: FigureTally): string[] {
	const count = Math.max(1, tally.intervals);
	return [
		`${(100 * holdingShare(tally)).toFixed(1)} %`,
		`±${(tally.statedPct / count).toFixed(2)}`,
		signed(tally.errorPct / count),
	];
}

const wayCells = ({way}: WayTally): string[] => [
	String(way.rounds),
	way.stepPct.toFixed(1),
	(way.stepPct * way.nudgeSteps).toFixed(1),
];

const wayHeads = ['rounds', 'step', 'nudge'];

const holdingTable = (ways: readonly WayTally[]): string =>
	columns([
		[...wayHeads, 'n', 'pull holds', '±', 'error', 'band holds', '±', 'error'],
		...ways.map((one) => [
			...wayCells(one),
			String(one.tally.pull.intervals),
			...figureCells(one.tally.pull),
			...figureCells(one.tally.band),
		]),
	]);

const goodTable = ({ways}: Proof): string =>
	columns([
		[...wayHeads, 'not good', 'called good', 'beyond', 'called good', 'off scale'],
		...ways.map((one) => [
			...wayCells(one),
			...[one.tally.notGood, one.tally.notGoodCalledGood, one.tally.beyond, one.tally.beyondCalledGood].map(String),
			String(one.tally.offScaleRadii),
		]),
	]);

const lessonTable = (proof: Proof): string =>
	columns([
		['arm', 'finding', 'named'],
		...lessonArms.map(({id, finding}) => {
			const {named, of} = lessonTotal(proof, id);
			return [id, finding, `${named} of ${of}`];
		}),
	]);

const explanation = `Why a coarse step holds more often than 95 %: step and nudge are counted in full,
as if they were the same in every round, and once more in the spread of the
rounds, which they make. Why bands come out a little narrow: the side force
wanders, and the arm lets go when it is weakest; more rounds do not cure that. Why
the pull of a restless arm holds less often: rounds that follow each other soon
share where the force has wandered to, and the spread of few rounds goes into the
zero of the gauge as if it were well known. tilt-explains asks that two 95 %
intervals hold at once, so it may miss one time in ten.
`;

function conclusion(short: readonly string[], arms: number): string {
	if (short.length === 0) return 'The proof holds.\n';
	const few = arms < bars.arms ? `\nWith fewer than ${bars.arms} arms that may be chance.` : '';
	return `The proof falls short:\n${short.join('\n')}${few}\n`;
}
