import {StoreError, type StoreErrorCode} from '../store/store-error.js';
import {storeText} from '../words/store-text.js';

/** What came in the way of something, as it is told: of the disk, or of what was asked for. */
export class Hindrance extends Error {
	override readonly name = 'Hindrance';
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

/** An error as it is told. @throws anything that is not of the disk and no hindrance: that is a fault of the program */
export function hindranceOf(error: unknown): Hindrance {
	if (error instanceof Hindrance) return error;
	if (error instanceof StoreError) return new Hindrance(error.code, error.file, storeText(error.fault), error);
	throw error;
}

export type Attempt<T> = {readonly ok: true; readonly value: T} | {readonly ok: false; readonly sentence: string};

/** Errors of the disk become sentences; anything else is a fault of the program. */
export async function attempt<T>(work: () => T | Promise<T>): Promise<Attempt<T>> {
	try {
		return {ok: true, value: await work()};
	} catch (error) {
		return {ok: false, sentence: hindranceOf(error).sentence};
	}
}
