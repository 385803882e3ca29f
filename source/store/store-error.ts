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

/**
 * The one error that the store throws.
 *
 * `sentence` says what failed, the full path and the way out. Path and sentence hold the raw text, control characters
 * included: whoever prints them makes them safe first (the store must not depend on the terminal).
 */
export class StoreError extends Error {
	override readonly name = 'StoreError';
	readonly code: StoreErrorCode;
	readonly file: string;
	readonly sentence: string;

	constructor(code: StoreErrorCode, file: string, sentence: string, cause?: unknown) {
		super(sentence, {cause});
		this.code = code;
		this.file = file;
		this.sentence = sentence;
	}
}
