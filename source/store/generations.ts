import path from 'node:path';
import {checkContent} from './check-content.js';
import type {Codec, StoreContext} from './context.js';
import {sealDocument} from './document.js';
import {type Generation, interpretGeneration} from './generation.js';
import {noteLastNumber, readLastNumber} from './last-number.js';
import {localTime} from './local-time.js';
import {moveAside} from './move-aside.js';
import {type FilePlace, readDocument, reportDamage} from './read-document.js';
import {fileMark} from './read-plain-file.js';
import type {Damage, StoreFault, Thing} from './store-fault.js';

/** Newest sound content of a pair of files, with what had to be said about it. */
export type Loaded<T> = {readonly value?: T; readonly savedAt?: string; readonly notices: StoreFault[]};

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

type State<T> = {
	readonly newest: Generation<T> | undefined;
	readonly lastNumber: number;
	readonly notices: StoreFault[];
};

type Newest = Extract<StoreFault, {id: 'older-copy'}>['values']['newest'];

/** What became of a save after the newest one that is left; undefined where there was none. */
const lostSave = (count: number, hasOther: boolean, newest: Generation<unknown>): Newest | undefined => {
	if (count > newest.number) return 'lost';
	return newest.number > 1 && !hasOther ? 'missing' : undefined;
};

export const createGenerations = <T>(
	name: 'draft' | 'profiles' | 'settings',
	codec: Codec<T>,
	context: StoreContext,
): Generations<T> => {
	const {dataDir, now, versions, writer, onNotice} = context;
	const kind = `armdrift-${name}`;
	const thing: Thing = {id: name, values: {}};
	const placeOf = (letter: string): FilePlace => ({thing, kind, file: path.join(dataDir, `${name}-${letter}.json`)});
	const first = placeOf('a');
	const second = placeOf('b');
	const countFile = path.join(dataDir, `${name}.count`);
	let known: {readonly state: State<T>; readonly marks: string} | undefined;
	const marks = () => `${fileMark(first.file)} ${fileMark(second.file)}`;

	const gather = (report: (place: FilePlace, damage: Damage) => StoreFault): State<T> => {
		const generations: Generation<T>[] = [];
		const notices: StoreFault[] = [];
		let missing = 0;
		// Before the files, lest another copy that is writing meanwhile looks like a lost save.
		const count = readLastNumber(countFile);
		for (const place of [first, second]) {
			const reading = readDocument(place, context);
			if (reading.state === 'closed') throw reading.error;
			if (reading.state === 'missing') missing++;
			if (reading.state === 'damaged') notices.push(report(place, reading.damage));
			if (reading.state !== 'sound') continue;
			const found = interpretGeneration(place, reading, codec);
			if ('id' in found) notices.push(report(place, found));
			else generations.push(found);
		}
		const newest = generations.sort((one, other) => other.number - one.number)[0];
		if (newest !== undefined) {
			const became = notices.length > 0 ? 'damaged' : lostSave(count, missing === 0, newest);
			const savedAt = localTime(new Date(newest.savedAt), now());
			const {file} = newest.place;
			if (became !== undefined) notices.push({id: 'older-copy', values: {thing, file, savedAt, newest: became}});
		}
		return {newest, lastNumber: Math.max(newest?.number ?? 0, count), notices};
	};

	const current = (): State<T> => {
		if (known !== undefined && known.marks === marks()) return known.state;
		const state = gather((place, damage) => {
			writer.forget(place.file);
			return moveAside(thing, place.file, damage, now());
		});
		for (const notice of state.notices) onNotice(notice);
		return state;
	};

	return {
		load() {
			const {newest, notices} = gather((place, damage) => reportDamage(place, damage, context));
			if (newest === undefined || newest.value === null) return {notices};
			return {value: newest.value, savedAt: newest.savedAt, notices};
		},
		async save(value) {
			const {newest, lastNumber} = current();
			const place = newest?.place === first ? second : first;
			if (value !== null) checkContent(thing, place.file, value, codec);
			const number = lastNumber + 1;
			const savedAt = now().toISOString();
			const body = {...newest?.body, kind, version: versions.current, number, savedAt, content: value};
			known = undefined;
			await writer.write(thing, place.file, sealDocument(body));
			noteLastNumber(countFile, number);
			known = {state: {newest: {place, number, savedAt, value, body}, lastNumber: number, notices: []}, marks: marks()};
		},
	};
};
