import {lessonArms} from '../practice/arms.js';
import {EXIT} from '../terminal/exit-paths.js';
import type {PracticeExtent} from '../workbench.js';
import {didYouMean} from './did-you-mean.js';
import {practiceDesk} from './practice-desk.js';
import {readSeed, seedWanted} from './practice-seed.js';
import {sayFault} from './print-out.js';
import {Seat} from './seat.js';
import {type FaceFlags, onFace} from './show-face.js';

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
	if (on !== undefined && !lessonArms.some(({id}) => id === on)) return Promise.resolve(refused(unknownArm(on)));
	if (options.seed !== undefined && seed === undefined) return Promise.resolve(refused(seedWanted));
	return onFace(options, async () => {
		const {desk, goOn} = practiceDesk({data, version, seed});
		const seat = new Seat({workbench: desk, goOn});
		return {seat, desk, ...(on === undefined && !extent ? {} : {opened: await desk.begin(on, extent ?? 'whole')})};
	});
}

function refused(sentence: string): number {
	sayFault(sentence);
	return EXIT.usage;
}

function unknownArm(on: string): string {
	const meant = didYouMean(
		on,
		lessonArms.map(({id}) => id),
	);
	return `There is no practice arm "${on}"; ${meant === undefined ? 'see "armdrift practice --arms".' : `did you mean "${meant}"?`}`;
}
