import {formatISO} from 'date-fns/formatISO';
import type {Shelf} from '../shelf.js';
import type {ArmOnFile} from './arm-on-file.js';
import {writeBackUp} from './back-up.js';

/**
 * Takes an arm off the disk: first the back-up, whole and read back, then the checks with what is noted beside them, and
 * last the profile, which knows the names under which the rest is found when this is stopped in the middle.
 */
export class Deletion {
	readonly #shelf: Shelf;
	readonly #version: string;
	#discard = (): void => {};
	#stopped = 'Nothing was deleted.';

	constructor(shelf: Shelf, version: string) {
		this.#shelf = shelf;
		this.#version = version;
	}

	/** What to say when it is stopped now. */
	get stoppedText(): string {
		return this.#stopped;
	}

	/** For every way out: no half of a back-up is left. */
	readonly discard = (): void => this.#discard();

	/** To be called under the lock. @throws StoreError */
	async run(arm: ArmOnFile, file: string): Promise<void> {
		const {profile, checkIds} = arm;
		await this.#shelf.store.prepare();
		await this.#backUp(arm, file);
		this.#stopped = `Stopped in the middle: all of it is in the back-up "${file}", and the same command again deletes the rest.`;
		if (checkIds.length > 0) await this.#shelf.store.remove(checkIds);
		if (profile) await this.#removeProfile(profile.id);
	}

	#backUp({profile, checkIds}: ArmOnFile, file: string): Promise<void> {
		const {store, dataDir} = this.#shelf;
		const only = {checkIds, profileIds: profile ? [profile.id] : []};
		return writeBackUp({
			file,
			dataDir,
			source: {store, program: this.#version, at: formatISO(new Date()), only},
			onLeave: (discard) => {
				this.#discard = discard;
			},
		});
	}

	async #removeProfile(id: string): Promise<void> {
		const {store} = this.#shelf;
		const {value} = store.profiles();
		if (value) await store.saveProfiles({...value, profiles: value.profiles.filter((one) => one.id !== id)});
	}
}
