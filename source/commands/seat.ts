import type {PracticeDoor} from '../workbench.js';
import type {OpenWorkbench} from './open-workbench.js';
import {partingLines} from './parting-lines.js';
import type {PracticeWorkbench} from './practice-workbench.js';
import {sentenceOf} from './shelf.js';

export type AtPractice = {readonly desk: PracticeWorkbench; readonly goOn: string};

type Options = {
	/** The workbench that is sat at first. */
	readonly workbench: OpenWorkbench;
	/** How to go on there later, as it is typed. */
	readonly goOn: string;
	/** @throws StoreError where practice data cannot be kept */
	readonly practise: () => Promise<AtPractice>;
};

/** Where somebody sits: at the workbench of real checks, or at that of practice. What is said on leaving is about that one. */
export class Seat {
	readonly #practise: Options['practise'];
	readonly #real: {readonly workbench: OpenWorkbench; readonly goOn: string};
	#at: {readonly workbench: OpenWorkbench; readonly goOn: string};
	#practising: AtPractice | undefined;

	constructor({workbench, goOn, practise}: Options) {
		this.#real = {workbench, goOn};
		this.#at = this.#real;
		this.#practise = practise;
	}

	get workbench(): OpenWorkbench {
		return this.#at.workbench;
	}

	readonly door: PracticeDoor = {
		open: async () => {
			try {
				this.#practising ??= await this.#practise();
			} catch (error) {
				return {ok: false, sentence: sentenceOf(error)};
			}
			const {desk, goOn} = this.#practising;
			this.#at = {workbench: desk, goOn};
			return {ok: true, desk};
		},
		close: () => {
			this.#at = this.#real;
		},
	};

	/** What is said on the normal screen at the end. */
	readonly parting = (): readonly string[] => partingLines(this.#at.workbench, this.#at.goOn);

	/** Gives the locks back; for every way out. */
	readonly release = (): void => {
		this.#real.workbench.release();
		this.#practising?.desk.release();
	};
}
