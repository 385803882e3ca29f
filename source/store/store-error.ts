import type {StoreFault} from './store-fault.js';

/** What kind of trouble a store error is; the caller maps it to an exit status. */
export type StoreErrorCode =
	/** Something that is no plain file, or no folder, stands where ours should be. */
	| 'blocked'
	/** The file holds nothing that can be used. */
	| 'damaged'
	/** Another copy is writing. */
	| 'locked'
	/** There is no such check. */
	| 'missing'
	/** Written by a newer version of this program; left alone. */
	| 'newer'
	/** No folder for the data can be named. */
	| 'no-place'
	/** The content to be saved is not sound; a fault of the caller. */
	| 'refused'
	| 'unreadable'
	| 'unwritable';

/** The one error that the store throws. `fault` says what failed, with the full path; its sentence stands in `words/`. */
export class StoreError extends Error {
	override readonly name = 'StoreError';
	readonly code: StoreErrorCode;
	readonly fault: StoreFault;

	constructor(code: StoreErrorCode, fault: StoreFault, cause?: unknown) {
		super(JSON.stringify(fault), {cause});
		this.code = code;
		this.fault = fault;
	}

	get file(): string {
		return this.fault.values.file;
	}
}

/** What was found. @throws the error that came in its place */
export function orThrow<T>(found: T | StoreError): T {
	if (found instanceof StoreError) throw found;
	return found;
}
