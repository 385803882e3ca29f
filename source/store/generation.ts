import type {Codec} from './context.js';
import type {DocumentBody} from './document.js';
import type {FilePlace, FileReading} from './read-document.js';
import type {Damage} from './store-fault.js';

/** One sound file of a pair written in turn. */
export type Generation<T> = {
	readonly place: FilePlace;
	readonly number: number;
	readonly savedAt: string;
	/** `null`: it was saved that there is nothing any more. */
	readonly value: T | null;
	readonly body: DocumentBody;
};

/** Reads the fields of a generation from a sound document, or says why they are not there. */
export const interpretGeneration = <T>(
	place: FilePlace,
	{body}: Extract<FileReading, {state: 'sound'}>,
	codec: Codec<T>,
): Generation<T> | Damage => {
	const {number, savedAt, content} = body;
	if (typeof number !== 'number' || !Number.isSafeInteger(number) || number < 1) return {id: 'no-number', values: {}};
	if (typeof savedAt !== 'string' || Number.isNaN(Date.parse(savedAt))) return {id: 'no-time', values: {}};
	const generation = {place, number, savedAt, body};
	if (content === null) return {...generation, value: null};
	const parsed = codec.parse(content);
	return parsed.ok ? {...generation, value: parsed.value} : {id: 'content', values: parsed.misfit};
};
