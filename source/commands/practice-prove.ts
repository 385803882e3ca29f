import {lessonArms} from '../practice/arms.js';
import type {FigureTally} from '../practice/coverage.js';
import {type Proof, prove, radiiMm, restlessPct, settingUpPct, type WayTally} from '../practice/proof.js';
import {bars, holdingShare, lessonTotal, shareInterval, shortfalls} from '../practice/shortfalls.js';
import {compute} from '../results/compute.js';
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
	const head = `${arms} invented arms, seed ${seed}, ${seconds} s. A scripted operator probes them at ${radiiMm.inner} and ${radiiMm.outer} mm,\neach arm in every third way.\n`;
	const status = await printOut([head, ...tables(proof), conclusion(short, arms)].join('\n'));
	return status === EXIT.done && short.length > 0 && arms >= bars.arms ? EXIT.internal : status;
}

const tables = (proof: Proof): string[] => [
	`How often the stated 95 % interval holds the hidden truth, with the 99 % interval
that chance leaves for that share (it falls short where its upper end is below
${(100 * bars.holding).toFixed(0)} %), and the mean ± and the mean error of the figure, in percent of tracking
force. 'scatter' is the standard deviation of one limit; setting up moves the pull
by ${settingUpPct} %, for each round where it is set anew, else once a radius:
`,
	holdingTable(proof.ways),
	`One round at each radius: how well rounds repeat is then assumed, so the figures
say 'assumed' and promise nothing (no bar):
`,
	holdingTable(proof.once),
	`The same arms where the side force wanders by ${restlessPct} % meanwhile, as in a draught (no
bar): it narrows the band, and no term of the ± holds that:
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
	way.setAnew ? 'anew' : 'once',
	String(way.rounds),
	String(way.stepPct),
	String(way.scatterPct),
];

const wayHeads = ['set', 'rounds', 'step', 'scatter'];

const holdingTable = (ways: readonly WayTally[]): string =>
	columns([
		[...wayHeads, 'n', 'pull', 'chance', '±', 'error', 'band', 'chance', '±', 'error'],
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
		['probes', 'not good', 'called good', 'beyond', 'called good', 'off scale'],
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
		['arm', 'finding', 'named'],
		...lessonArms.map(({id, finding}) => {
			const {named, of} = lessonTotal(proof, id);
			return [id, finding, `${named} of ${of}`];
		}),
	]);

function conclusion(short: readonly string[], arms: number): string {
	if (short.length === 0) return 'The proof holds.\n';
	const few = arms < bars.arms ? `\nWith fewer than ${bars.arms} arms that may be chance.` : '';
	return `The proof falls short:\n${short.join('\n')}${few}\n`;
}
