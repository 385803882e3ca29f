import {type Dialogue, positionOf} from '../check/dialogue.js';
import type {PracticeNotes} from '../check/practice-notes.js';
import {issuedOf} from '../pages/issued.js';
import {line, type Shown} from '../pages/shown-lines.js';
import type {FinishedCheck} from '../results/record.js';
import {practiceWords} from '../words/practice.js';
import type {Nudge} from '../workbench.js';
import {
	atQuestion,
	type BenchState,
	benchNow,
	benchOf,
	handled,
	handsAt,
	later,
	nudgeFiner,
	pushed,
	revealed,
	withReading,
} from './bench-state.js';
import {gaugedArm, motionOf} from './gauged-arm.js';
import {instruments} from './instruments.js';
import {readingWanted} from './reading-wanted.js';
import {truthLines} from './truth-lines.js';

const said = practiceWords.bench;

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

	readonly isTruthShown = (dialogue: Dialogue): boolean => this.notes.isRevealed && isAtVerdict(dialogue);

	readonly doByHand = (dialogue: Dialogue): boolean => {
		this.#follow(dialogue);
		const next = isAtVerdict(dialogue) ? revealed(this.#state) : handled(this.#state, dialogue);
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

const isAtVerdict = (dialogue: Dialogue): boolean =>
	dialogue.mode.kind === 'ask' && positionOf(dialogue).step?.input.kind === 'verdict';

/** What an invented bench has to show at a question, before all else; the bench must have followed it there. */
function benchShown(state: BenchState, dialogue: Dialogue): readonly Shown[] {
	const {step, progress} = positionOf(dialogue);
	if (!step || dialogue.mode.kind === 'steps' || dialogue.mode.kind === 'stop') return [];
	if (step.input.kind === 'verdict') return atVerdict(state, dialogue);
	if (step.id === 'safe') return [line(said.nothingBreaks)];
	const wanted = readingWanted(dialogue);
	if (wanted) return [gaugedArm(state.probing, wanted, nudgeFiner(state))];
	const seen = instruments[step.id]?.see(benchNow(state, progress.facts));
	const hands = handsAt(state, dialogue);
	return [
		...(state.did?.step === step.id ? [line(state.did.text, 'good')] : []),
		...(seen === undefined ? [] : [line(said.seen({seen}), 'strong')]),
		...(hands ? [line(practiceWords.hands[hands.deed].offer)] : []),
	];
}

function atVerdict({notes}: BenchState, {check, mode}: Dialogue): readonly Shown[] {
	if (mode.kind !== 'ask') return [];
	return notes.isRevealed ? truthLines({...check, practice: notes}, issuedOf(check)) : [line(said.reveal, 'strong')];
}
