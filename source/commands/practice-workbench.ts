import type {Check} from '../check/check.js';
import type {Dialogue} from '../check/dialogue.js';
import {lessonArms} from '../practice/arms.js';
import {BenchAtWork} from '../teaching/practice-bench.js';
import {nameOf, newNotes, practiceCheck} from '../teaching/practice-check.js';
import {preparedBy} from '../teaching/prepared.js';
import type {Opened, PracticeDesk, Saved} from '../workbench.js';
import {OpenWorkbench} from './open-workbench.js';

type Options = {
	/** Folder of practice data, apart from all real data. */
	readonly dataDir: string;
	readonly version: string;
	/** Chosen for every practice check that begins. */
	readonly seed: () => number;
};

/** The workbench of practice: the same disk and clock in a folder of its own, and an invented bench beside it. */
export class PracticeWorkbench extends OpenWorkbench implements PracticeDesk {
	readonly arms = lessonArms.map(({id, name}) => ({id, name}));
	readonly #seed: () => number;
	#bench: BenchAtWork;

	constructor({dataDir, version, seed}: Options) {
		super({dataDir, version});
		this.#seed = seed;
		this.#bench = new BenchAtWork(newNotes({arm: undefined, seed: 0, isPrepared: false}));
	}

	get practice(): BenchAtWork {
		return this.#bench;
	}

	async begin(arm: string | undefined, isPrepared: boolean): Promise<Opened> {
		this.#bench = new BenchAtWork(newNotes({arm, seed: this.#seed(), isPrepared}));
		const opened = await this.start();
		return opened.ok && isPrepared ? this.#prepared(opened.dialogue) : opened;
	}

	protected override blankCheck(): Check {
		return practiceCheck(super.blankCheck(), this.#bench.notes);
	}

	override async resume(): Promise<Opened> {
		const opened = await super.resume();
		const notes = opened.ok ? opened.dialogue.check.practice : undefined;
		if (notes) this.#bench = new BenchAtWork(notes);
		return opened;
	}

	override async save(dialogue: Dialogue): Promise<Saved> {
		const state = this.#bench.noted(dialogue);
		const saved = await super.save({...dialogue, check: {...dialogue.check, practice: state.notes}});
		if (saved.ok) this.#bench.saved(state);
		return saved;
	}

	/** Somebody else has prepared the deck; the probe is next. */
	async #prepared(dialogue: Dialogue): Promise<Opened> {
		const prepared = preparedBy(dialogue, this.#bench.state, nameOf(this.#bench.notes), this.now());
		const saved = await super.save(prepared);
		return saved.ok ? {ok: true, dialogue: prepared} : {ok: false, sentence: saved.sentence, locked: false};
	}
}
