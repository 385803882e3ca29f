import type {ProbingWay} from '../../../practice/proof.js';
import type {ShortfallValues} from '../../../practice/shortfalls.js';
import type {Sentences} from '../../../said.js';
import {percent, rounded} from '../../numbers.js';

const way = ({rounds, stepPct, scatterPct, setAnew}: ProbingWay): string =>
	`${rounds} rounds, step ${stepPct} %, scatter ${scatterPct} %, ${setAnew ? 'set again' : 'not set again'}`;

/** Where a proof falls short of what it must reach, without the full stop. */
const shortfalls: Sentences<ShortfallValues> = {
	'interval-too-narrow': (values) =>
		`${way(values.way)}: the interval of the ${values.figure} holds in ${percent(100 * values.holding, 1)}`,
	'called-good': (values) =>
		`${way(values.way)}: ${percent(100 * values.share, 1)} of the arms with too much are called good`,
	'lesson-not-named': ({arm, finding, named, of}) => `${arm}: ${finding} is named in ${named} of ${of}`,
};

type Head = {
	readonly arms: number;
	readonly seed: number;
	readonly tookMs: number;
	readonly radiiMm: {readonly inner: number; readonly outer: number};
};

/** What the proof prints beside its figures, in lines of eighty columns at most. */
export const proof = {
	countWanted: ({mostArms}: {readonly mostArms: number}) =>
		`Wanted: --prove with a whole number from 1 to ${mostArms}.`,
	head: ({arms, seed, tookMs, radiiMm}: Head) =>
		`${arms} invented arms, seed ${seed}, ${rounded(tookMs / 1000, 0)} s. A scripted operator probes them at ${radiiMm.inner} and ${radiiMm.outer} mm,
each arm in every third way.
`,
	holding: ({holding, settingUpPct}: {readonly holding: number; readonly settingUpPct: number}) =>
		`How often the stated 95 % interval holds the hidden truth, with the 99 % interval
that chance leaves for that share (it falls short where its upper end is below
${percent(100 * holding, 0)}), and the mean ± and the mean error of the figure, in percent of tracking
force. 'scatter' is the standard deviation of one limit; setting up moves the pull
by ${settingUpPct} %, for each round where it is set again, else once a radius:
`,
	oneRound: `One round at each radius: how well rounds repeat is then assumed, so the figures
say 'assumed' and promise nothing (no bar):
`,
	restless: ({restlessPct}: {readonly restlessPct: number}) =>
		`The same arms in a draught, where the force wanders by ${restlessPct} % all the while (no
bar): it takes from the friction, and no term of the ± holds that:
`,
	calledGood: ({wronglyGood}: {readonly wronglyGood: number}) =>
		`How often an arm is called good that truly is not (wanted: less than ${percent(100 * wronglyGood, 0)} of
those with too much):
`,
	lessons: 'How often the lesson of each practice arm is named:\n',
	setting: {anew: 'again', once: 'once'},
	holdingHead: [
		...['set', 'rounds', 'step', 'scatter', 'n'],
		...['pull', 'chance', '±', 'error'],
		...['friction', 'chance', '±', 'error'],
	],
	goodHead: ['probes', 'not good', 'called good', 'too much', 'called good', 'off scale'],
	lessonHead: ['arm', 'finding', 'named'],
	lessonNamed: ({named, of}: {readonly named: number; readonly of: number}) => `${named} of ${of}`,
	shortfalls,
	holds: 'The proof holds.\n',
	/** `enough`: how many arms leave little to chance, where there were fewer. */
	fallsShort: ({
		shortfalls: sentences,
		enough,
	}: {
		readonly shortfalls: readonly string[];
		readonly enough: number | null;
	}) =>
		`The proof falls short:
${sentences.join('\n')}${enough === null ? '' : `\nWith fewer than ${enough} arms that may be chance.`}
`,
};
