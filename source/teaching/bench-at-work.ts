import {type Dialogue, positionOf} from '../check/dialogue.js';
import type {PracticeNotes} from '../check/practice-notes.js';
import type {FinishedCheck} from '../results/record.js';
import type {Nudge} from '../workbench.js';
import {benchShown} from './bench-shown.js';
import {atQuestion, type BenchState, benchOf, handled, later, pushed, revealed, withReading} from './bench-state.js';
import {motionOf} from './gauged-arm.js';
import {readingWanted} from './reading-wanted.js';
import {truthLines} from './truth-lines.js';

/** An invented bench while somebody works at it: the one thing in practice that changes in place. */
export class BenchAtWork {
	#state: BenchState;
	#asked: Dialogue | undefined;

	constructor(notes: PracticeNotes) {
		this.#state = benchOf(notes);
	}

	get notes(): PracticeNotes {
		return this.#state.notes;
	}

	get state(): BenchState {
		return this.#state;
	}

	readonly shown = (dialogue: Dialogue) => {
		this.#follow(dialogue);
		return benchShown(this.#state, dialogue);
	};

	readonly isProbing = (dialogue: Dialogue): boolean => readingWanted(dialogue) !== undefined;

	readonly nudge = (nudge: Nudge): void => {
		this.#state = pushed(this.#state, nudge);
	};

	readonly pass = (ms: number): void => {
		this.#state = later(this.#state, ms);
	};

	readonly motion = () => motionOf(this.#state.probing.arm);

	readonly doByHand = (dialogue: Dialogue): boolean => {
		this.#follow(dialogue);
		const isVerdict = positionOf(dialogue).step?.input.kind === 'verdict' && dialogue.mode.kind === 'ask';
		const next = isVerdict ? revealed(this.#state) : handled(this.#state, dialogue);
		if (next) this.#state = next;
		return next !== undefined;
	};

	readonly truth = ({check, issued}: FinishedCheck) => truthLines(check, issued);

	/** The notes as they are once an answer is saved; {@link saved} makes them count. */
	readonly noted = ({check}: Dialogue): BenchState =>
		this.#asked ? withReading(this.#state, this.#asked, check) : this.#state;

	readonly saved = (state: BenchState): void => {
		this.#state = {...this.#state, notes: state.notes};
	};

	#follow(dialogue: Dialogue): void {
		if (this.#asked === dialogue) return;
		this.#asked = dialogue;
		this.#state = atQuestion(this.#state, dialogue);
	}
}
