import {Hindrance, hindranceOf} from '../desk/hindrance.js';
import type {CheckStore} from '../desk/stored-forms.js';
import {words} from '../words/index.js';
import type {ImportedCheck, ImportFile} from './import-file.js';
import {type ImportPlan, remarkOf} from './import-plan.js';

/**
 * Adds what is new. Each check is a file of its own, written once: stopped at any moment, what was added stays, and the
 * next import of the same file adds the rest.
 */
export class Addition {
	readonly #file: ImportFile;
	readonly #store: CheckStore;
	#done = 0;
	#all = 0;

	constructor(file: ImportFile, store: CheckStore) {
		this.#file = file;
		this.#store = store;
	}

	/** What to say when it is stopped in the middle; empty when nothing was begun or everything is done. */
	stoppedText(): string {
		return this.#done === this.#all ? '' : `${words.commands.exchange.stopped({done: this.#done, all: this.#all})}\n`;
	}

	/** To be called under the lock. @throws Hindrance */
	async run(plan: ImportPlan): Promise<void> {
		this.#file.assertUnchanged();
		await this.#store.prepare();
		this.#all = plan.newChecks.length;
		try {
			for (const index of plan.newChecks) await this.#addCheck(this.#file.check(index));
			for (const index of plan.newRemarks) await this.#addRemark(this.#file.check(index));
			if (plan.profiles.next) await this.#store.saveProfiles(plan.profiles.next);
			if (plan.settings === 'new' && this.#file.settings) await this.#store.saveSettings(this.#file.settings);
		} catch (error) {
			const {code, file, sentence} = hindranceOf(error);
			throw new Hindrance(code, file, `${sentence} ${this.stoppedText().trimEnd()}`.trimEnd(), error);
		}
		this.#index();
		await this.#store.tidy();
	}

	async #addCheck(check: ImportedCheck): Promise<void> {
		await this.#store.add(check.id, check.json);
		if (check.remark) await this.#addRemark(check);
		this.#done++;
		// So that Ctrl+C is heard.
		await new Promise((resolve) => setImmediate(resolve));
	}

	async #addRemark(check: ImportedCheck): Promise<void> {
		const {isNew, remark} = remarkOf(check, this.#store);
		if (isNew) await this.#store.saveRemark(check.id, remark);
	}

	/** So that the next list need not read every new check; it would make good what is missing here. */
	#index(): void {
		this.#store.list({offset: 0, limit: Number.POSITIVE_INFINITY});
	}
}
