import type {ConfWriter} from './conf-writer.js';
import type {LockKeeper} from './lock-keeper.js';
import type {Misfit, StoreFault} from './store-fault.js';
import type {Versions} from './upgrades.js';

/** Checks content on the way in and out. It must keep fields that it does not know, or they are lost at the next save. */
export type Codec<T> = {
	readonly parse: (
		json: unknown,
	) => {readonly ok: true; readonly value: T} | {readonly ok: false; readonly misfit: Misfit};
};

/** What all parts of one opened store share. */
export type StoreContext = {
	readonly dataDir: string;
	readonly now: () => Date;
	readonly versions: Versions;
	readonly lock: LockKeeper;
	readonly writer: ConfWriter;
	/** Takes what there is to tell in the middle of a save. */
	readonly onNotice: (fault: StoreFault) => void;
};
