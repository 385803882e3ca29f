import path from 'node:path';
import {checkContent} from './check-content.js';
import type {Codec, StoreContext} from './context.js';
import {sealDocument} from './document.js';
import {type Generation, interpretGeneration} from './generation.js';
import {noteLastNumber, readLastNumber} from './last-number.js';
import {localTime} from './local-time.js';
import {type Place, readDocument, reportDamage} from './read-document.js';
import {fileMark} from './read-plain-file.js';
import {setAside} from './set-aside.js';

/** Newest sound content of a pair of files, with what had to be said about it. */
export type Loaded<T> = {readonly value?: T; readonly savedAt?: string; readonly notices: string[]};

/**
 * Two files written in turn, each with a running number and a checksum. A save goes to the file that is not the newest
 * sound one, so that whatever happens to a save, the last good content is never the one being written.
 */
export type Generations<T> = {
	/** @throws StoreError where a file is newer than this program, or is there but can't be read */
	readonly load: () => Loaded<T>;
	/** `null` saves that there is nothing any more. To be called under the lock, one at a time. @throws StoreError */
	readonly save: (value: T | null) => Promise<void>;
};

type State<T> = {readonly newest: Generation<T> | undefined; readonly lastNumber: number; readonly notices: string[]};

const lostSaveNotice = (
	what: string,
	count: number,
	hasOther: boolean,
	newest: Generation<unknown>,
): string | undefined => {
	if (count > newest.number) return `The last save of all is no longer on the disk, as after a power cut. ${what}:`;
	return newest.number > 1 && !hasOther
		? `One of two files is missing beside "${newest.place.file}". ${what}:`
		: undefined;
};

export const createGenerations = <T>(
	name: string,
	what: string,
	codec: Codec<T>,
	context: StoreContext,
): Generations<T> => {
	const {dataDir, now, versions, writer, onNotice} = context;
	const kind = `armdrift-${name}`;
	const placeOf = (letter: string): Place => ({what, kind, file: path.join(dataDir, `${name}-${letter}.json`)});
	const first = placeOf('a');
	const second = placeOf('b');
	const countFile = path.join(dataDir, `${name}.count`);
	let known: {readonly state: State<T>; readonly marks: string} | undefined;
	const marks = () => `${fileMark(first.file)} ${fileMark(second.file)}`;

	const gather = (report: (place: Place, why: string) => string): State<T> => {
		const generations: Generation<T>[] = [];
		const notices: string[] = [];
		let missing = 0;
		// Before the files, lest another copy that is writing meanwhile looks like a lost save.
		const count = readLastNumber(countFile);
		for (const place of [first, second]) {
			const reading = readDocument(place, context);
			if (reading.state === 'closed') throw reading.error;
			if (reading.state === 'missing') missing++;
			const found = reading.state === 'sound' ? interpretGeneration(place, reading, codec) : undefined;
			if (typeof found === 'object') generations.push(found);
			else if (reading.state !== 'missing')
				notices.push(report(place, found ?? (reading.state === 'damaged' ? reading.why : '')));
		}
		const newest = generations.sort((one, other) => other.number - one.number)[0];
		if (newest !== undefined) {
			const lost = notices.length > 0 ? what : lostSaveNotice(what, count, missing === 0, newest);
			const time = localTime(new Date(newest.savedAt), now());
			if (lost !== undefined)
				notices.push(`${lost}: the copy saved ${time} is used; see whether the last answer is in it.`);
		}
		return {newest, lastNumber: Math.max(newest?.number ?? 0, count), notices};
	};

	const current = (): State<T> => {
		if (known !== undefined && known.marks === marks()) return known.state;
		const state = gather((place, why) => {
			writer.forget(place.file);
			return setAside(what, place.file, why, now());
		});
		for (const notice of state.notices) onNotice(notice);
		return state;
	};

	return {
		load() {
			const {newest, notices} = gather((place, why) => reportDamage(place, why, context));
			if (newest === undefined || newest.value === null) return {notices};
			return {value: newest.value, savedAt: newest.savedAt, notices};
		},
		async save(value) {
			const {newest, lastNumber} = current();
			const place = newest?.place === first ? second : first;
			if (value !== null) checkContent(what, place.file, value, codec);
			const number = lastNumber + 1;
			const savedAt = now().toISOString();
			const body = {...newest?.body, kind, version: versions.current, number, savedAt, content: value};
			known = undefined;
			await writer.write(what, place.file, sealDocument(body));
			noteLastNumber(countFile, number);
			known = {state: {newest: {place, number, savedAt, value, body}, lastNumber: number, notices: []}, marks: marks()};
		},
	};
};
