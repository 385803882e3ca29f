import {didYouMean} from '../desk/did-you-mean.js';
import {lessonArms} from '../practice/arms.js';
import {columns} from '../terminal/columns.js';
import {saidBack} from '../visible-text.js';
import {words} from '../words/index.js';
import {practiceWords} from '../words/practice.js';
import type {PracticeExtent} from '../workbench.js';
import {type FaceFlags, onFace} from './face.js';
import {practiceDesk} from './practice-desk.js';
import {mostSeed, readSeed} from './practice-seed.js';
import {printOut, refuseWith} from './print.js';
import {Seat} from './seat.js';

const say = words.commands.practice;

type Options = FaceFlags & {
	/** Id of an invented arm, to begin with it at once. */
	readonly on?: string | undefined;
	/** How much is practised, to begin with it at once; without an arm, on one that is not told. */
	readonly extent?: PracticeExtent | undefined;
	readonly seed?: string | undefined;
	readonly data?: string | undefined;
	readonly version: string;
};

/** `armdrift practice`: the check on an invented arm, apart from all real data. @returns exit status */
export function runPractice(options: Options): Promise<number> {
	const {on, extent, data, version} = options;
	const seed = options.seed === undefined ? undefined : readSeed(options.seed);
	if (on !== undefined && !lessonArms.some(({id}) => id === on)) return Promise.resolve(refuseWith(unknownArm(on)));
	if (options.seed !== undefined && seed === undefined)
		return Promise.resolve(refuseWith(say.seedWanted({most: mostSeed})));
	return onFace(options, async () => {
		const {desk, goOn} = practiceDesk({data, version, seed});
		const seat = new Seat({workbench: desk, goOn});
		return {seat, desk, ...(on === undefined && !extent ? {} : {opened: await desk.begin(on, extent ?? 'whole')})};
	});
}

function unknownArm(on: string): string {
	const meant = didYouMean(
		on,
		lessonArms.map(({id}) => id),
	);
	return say.noArm({arm: saidBack(on), meant});
}

/** `armdrift practice --arms`: the invented arms, without what they teach. */
export const printPracticeArms = (): Promise<number> =>
	printOut(columns(lessonArms.map(({id}) => [id, practiceWords.arms[id].name])));
