import type {PracticeDoor, PracticeOpened} from '../workbench.js';
import type {OpenWorkbench} from './open-workbench.js';
import {partingLines} from './parting-lines.js';
import type {PracticeWorkbench} from './practice-workbench.js';
import {sentenceOf} from './shelf.js';

/** Practice that was opened. */
export type OpenPractice = {readonly desk: PracticeWorkbench; readonly goOn: string};

type Options = {
	/** The workbench that is sat at first. */
	readonly workbench: OpenWorkbench;
	/** How to go on there later, as it is typed. */
	readonly goOn: string;
	/** @throws StoreError where practice data cannot be kept */
	readonly practise?: () => Promise<OpenPractice>;
};

type Place = {readonly workbench: OpenWorkbench; readonly goOn: string};

/** Nobody waits for the first save by then. */
const settleInMs = 300;

/** Where somebody sits: at the workbench of real checks, or at that of practice. What is said on leaving is about that one. */
export class Seat {
	readonly #practise: Options['practise'] | undefined;
	readonly #real: Place;
	#at: Place;
	#practising: OpenPractice | undefined;

	constructor({workbench, goOn, practise}: Options) {
		this.#real = {workbench, goOn};
		this.#at = this.#real;
		this.#practise = practise;
	}

	get workbench(): OpenWorkbench {
		return this.#at.workbench;
	}

	/** A check that is left open: a real one counts before one of practice. */
	get isLeftOpen(): boolean {
		return [this.#real, this.#at].some(({workbench}) => workbench.openCheck !== undefined);
	}

	/** The way to practice and back; undefined where practice is all there is. */
	get door(): PracticeDoor | undefined {
		const practise = this.#practise;
		return practise && {open: () => this.#open(practise), close: () => this.#close()};
	}

	/** What is said on the normal screen at the end; a real check that is still open is never passed over. */
	readonly parting = (): readonly string[] => {
		const isReal = this.#at === this.#real;
		return [...(!isReal && this.#real.workbench.openCheck ? linesAt(this.#real) : []), ...linesAt(this.#at)];
	};

	/** Gives the locks back; for every way out. */
	readonly release = (): void => {
		this.#real.workbench.release();
		this.#practising?.desk.release();
	};

	async #open(practise: () => Promise<OpenPractice>): Promise<PracticeOpened> {
		try {
			this.#practising ??= await practise();
		} catch (error) {
			return {ok: false, sentence: sentenceOf(error)};
		}
		const {desk, goOn} = this.#practising;
		this.#at = {workbench: desk, goOn};
		setTimeout(() => void desk.settleIn(), settleInMs).unref();
		return {ok: true, desk};
	}

	#close(): void {
		this.#at = this.#real;
	}
}

const linesAt = ({workbench, goOn}: Place): readonly string[] => partingLines(workbench, goOn);
