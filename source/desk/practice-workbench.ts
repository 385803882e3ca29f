import type {Check} from '../check/check.js';
import type {Dialogue} from '../check/dialogue.js';
import {seriesNotice} from '../check/entry.js';
import {reduce} from '../check/reduce.js';
import {type Notice, plainly} from '../check/says.js';
import {lessonArms} from '../practice/arms.js';
import type {Settings} from '../procedure/settings.js';
import {BenchAtWork} from '../teaching/bench-at-work.js';
import {isDeckChanged, lessonFor} from '../teaching/deck.js';
import {armNameOf, newNotes, practiceCheck} from '../teaching/practice-check.js';
import {preparedBy} from '../teaching/prepared.js';
import {words} from '../words/index.js';
import {practiceWords} from '../words/practice.js';
import type {Opened, PracticeDesk, PracticeExtent, Saved} from '../workbench.js';
import {OpenWorkbench} from './open-workbench.js';

type Options = {
	/** Folder of practice data, apart from all real data. */
	readonly dataDir: string;
	readonly version: string;
	readonly settings: Settings;
	/** Chosen for every practice check that begins. */
	readonly seed: () => number;
};

/** The workbench of practice: the same disk and clock in a folder of its own, and an invented bench beside it. */
export class PracticeWorkbench extends OpenWorkbench implements PracticeDesk {
	readonly arms = lessonArms.map(({id}) => ({id, name: practiceWords.arms[id].name}));
	readonly #seed: () => number;
	#bench: BenchAtWork | undefined;

	readonly #settings: Settings;

	constructor({dataDir, version, settings, seed}: Options) {
		super({dataDir, version});
		this.#settings = settings;
		this.#seed = seed;
	}

	/** The invented bench of the check that is open, or was filed last. */
	get practice(): BenchAtWork {
		if (!this.#bench) throw new Error('No practice check was begun.');
		return this.#bench;
	}

	truthSeenOf(): string | undefined {
		const notes = this.#bench?.notes;
		return notes && (notes.isRevealed || !this.unfinished()) ? notes.arm : undefined;
	}

	/** Those of real checks: practice has none of its own. */
	override settings(): Settings {
		return this.#settings;
	}

	async begin(arm: string | undefined, extent: PracticeExtent): Promise<Opened> {
		const isPrepared = extent !== 'whole';
		const rounds = extent === 'once' ? {roundsEach: 1} : {};
		this.#bench = new BenchAtWork(newNotes({arm, seed: this.#seed(), isPrepared, ...rounds}));
		const opened = await this.start();
		return opened.ok && isPrepared ? this.#prepared(opened.dialogue) : opened;
	}

	protected override blankCheck(): Check {
		return practiceCheck(super.blankCheck(), this.practice.notes);
	}

	override async resume(): Promise<Opened> {
		const opened = await super.resume();
		const notes = opened.ok ? opened.dialogue.check.practice : undefined;
		if (!notes) return opened;
		if (!lessonFor(notes)) return {ok: false, sentence: words.commands.practice.unknownArm(notes), locked: false};
		this.#bench = new BenchAtWork(notes);
		return opened;
	}

	override async save(dialogue: Dialogue): Promise<Saved> {
		const state = this.practice.noted(dialogue);
		const onDeck = this.#onItsDeck({...dialogue.check, practice: state.notes});
		const saved = await super.save({...dialogue, check: onDeck.kept});
		if (!saved.ok) return saved;
		this.practice.saved(state);
		return {...onDeck, ...saved};
	}

	/** Rounds of one series are taken on one deck: what hands have put right since begins another one. */
	#onItsDeck(check: Check): {readonly kept: Check; readonly notice?: Notice} {
		if (!isDeckChanged(check)) return {kept: check};
		const because = plainly('put-right-by-hand');
		const kept = reduce(check, {type: 'new-series', because, steps: [], at: this.now()});
		const notice = seriesNotice(check, kept);
		return {kept, ...(notice === undefined ? {} : {notice})};
	}

	/** Somebody else has prepared the deck; the probe is next. */
	async #prepared(dialogue: Dialogue): Promise<Opened> {
		const prepared = preparedBy(dialogue, this.practice.state, armNameOf(this.practice.notes), this.now());
		const saved = await super.save(prepared);
		return saved.ok ? {ok: true, dialogue: prepared} : {ok: false, sentence: saved.sentence, locked: false};
	}
}
