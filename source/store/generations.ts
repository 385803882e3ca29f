import fs from 'node:fs';
import path from 'node:path';
import type {Codec, StoreContext} from './context.js';
import {sealDocument} from './document.js';
import {type FilePlace, readDocument, reportDamage} from './documents.js';
import type {Json} from './json.js';
import {localTime} from './local-time.js';
import {moveAside} from './move-aside.js';
import {checkContent} from './plain-content.js';
import {practiceFault} from './practice-folder.js';
import {closeQuietly, fileMark, readPlainFile} from './read-plain-file.js';
import type {Damage, StoreFault, Thing} from './store-fault.js';

/** Newest sound content of a pair of files, with what had to be said about it. */
type Loaded<T> = {readonly value?: T; readonly savedAt?: string; readonly notices: StoreFault[]};

/** One sound file of a pair written in turn. */
type Generation<T> = {
	readonly place: FilePlace;
	readonly number: number;
	readonly savedAt: string;
	/** `null`: it was saved that there is nothing any more. */
	readonly value: T | null;
	readonly body: Json;
	readonly checksum: string;
};

/** Reads the fields of a generation from a sound document, or says why they are not there. */
const interpretGeneration = <T>(
	place: FilePlace,
	{body, checksum}: Pick<Generation<T>, 'body' | 'checksum'>,
	codec: Codec<T>,
): Generation<T> | Damage => {
	const {number, savedAt, content} = body;
	if (typeof number !== 'number' || !Number.isSafeInteger(number) || number < 1) return {id: 'no-number', values: {}};
	if (typeof savedAt !== 'string' || Number.isNaN(Date.parse(savedAt))) return {id: 'no-time', values: {}};
	const generation = {place, number, savedAt, body, checksum};
	if (content === null) return {...generation, value: null};
	const parsed = codec.parse(content);
	return parsed.ok ? {...generation, value: parsed.value} : {id: 'content', values: parsed.misfit};
};

const FILE_MODE = 0o600;
const DIGITS = 16;

/**
 * Notes the number of the last confirmed save in a small file of its own, overwritten in place. After a power cut that
 * undid the last rename it tells that a newer save has been there. Only a hint, so a failure is no fault.
 */
const noteLastNumber = (file: string, number: number): void => {
	let descriptor: number | undefined;
	try {
		const {O_WRONLY, O_CREAT, O_NOFOLLOW = 0, O_NONBLOCK = 0} = fs.constants;
		descriptor = fs.openSync(file, O_WRONLY | O_CREAT | O_NOFOLLOW | O_NONBLOCK, FILE_MODE);
		fs.writeSync(descriptor, `${String(number).padStart(DIGITS, '0')}\n`, 0);
	} catch {
	} finally {
		if (descriptor !== undefined) closeQuietly(descriptor);
	}
};

/** The number noted last, 0 where there is none. */
const readLastNumber = (file: string): number => {
	const read = readPlainFile({id: 'last-number', values: {}}, file);
	const digits = read.state === 'bytes' ? /^\d{16}\n$/.exec(read.bytes.toString('latin1'))?.[0] : undefined;
	return digits === undefined ? 0 : Number(digits);
};

type State<T> = {
	/** Newest first. */
	readonly sound: readonly Generation<T>[];
	readonly lastNumber: number;
	readonly notices: StoreFault[];
};

type Newest = Extract<StoreFault, {id: 'older-copy'}>['values']['newest'];

/** What became of a save after the newest one that is left; undefined where there was none. */
const lostSave = (count: number, hasOther: boolean, newest: Generation<unknown>): Newest | undefined => {
	if (count > newest.number) return 'lost';
	return newest.number > 1 && !hasOther ? 'missing' : undefined;
};

/**
 * Two files written in turn, each with a running number and a checksum. A save goes to the file that is not the newest
 * sound one, so that whatever happens to a save, the last good content is never the one being written.
 */
export const createGenerations = <T>(
	name: 'draft' | 'profiles' | 'settings',
	codec: Codec<T>,
	context: StoreContext,
) => {
	const {dataDir, now, versions, writer, onNotice} = context;
	const kind = `armdrift-${name}`;
	const thing: Thing = {id: name, values: {}};
	const placeOf = (letter: string): FilePlace => ({thing, kind, file: path.join(dataDir, `${name}-${letter}.json`)});
	const first = placeOf('a');
	const second = placeOf('b');
	const countFile = path.join(dataDir, `${name}.count`);
	let known: {readonly state: State<T>; readonly marks: string} | undefined;
	/** Checksums of what this copy read or wrote last; undefined before either. */
	let own: ReadonlySet<string> | undefined;
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
		const [newest] = generations.sort((one, other) => other.number - one.number);
		if (newest !== undefined) {
			const misplaced = name === 'draft' ? practiceFault(newest.place, newest.body.content, dataDir) : undefined;
			if (misplaced) throw misplaced;
			const became = notices.length > 0 ? 'damaged' : lostSave(count, missing === 0, newest);
			const savedAt = localTime(new Date(newest.savedAt), now());
			const {file} = newest.place;
			if (became !== undefined) notices.push({id: 'older-copy', values: {thing, file, savedAt, newest: became}});
		}
		return {sound: generations, lastNumber: Math.max(newest?.number ?? 0, count), notices};
	};

	const current = (): State<T> => {
		if (known !== undefined && known.marks === marks()) return known.state;
		const state = gather((place, damage) => {
			writer.forget(place.file);
			return moveAside(thing, place.file, damage, now());
		});
		// What is saved is whole in this copy, so nothing of an older one is used.
		for (const notice of state.notices) if (notice.id !== 'older-copy') onNotice(notice);
		return state;
	};

	const look = () => gather((place, damage) => reportDamage(place, damage, context));
	const loaded = ({sound: [newest], notices}: State<T>): Loaded<T> => {
		if (newest === undefined || newest.value === null) return {notices};
		return {value: newest.value, savedAt: newest.savedAt, notices};
	};

	/** What this copy goes on from. What somebody else saved meanwhile, past the lock, is set aside rather than written over. */
	const ours = (): State<T> => {
		const state = current();
		const isOurs = ({value, checksum}: Generation<T>) => value === null || own === undefined || own.has(checksum);
		for (const {place} of state.sound.filter((one) => !isOurs(one))) {
			writer.forget(place.file);
			onNotice(moveAside(thing, place.file, {id: 'other-hand', values: {}}, now()));
		}
		return {...state, sound: state.sound.filter(isOurs)};
	};

	return {
		/** @throws StoreError where a file is newer than this program, or is there but can't be read */
		load(): Loaded<T> {
			const state = look();
			own = new Set(state.sound.map(({checksum}) => checksum));
			return loaded(state);
		},
		/** The same, for a look that nothing follows from: what is saved next does not build on it. */
		peek: (): Loaded<T> => loaded(look()),
		/** `null` saves that there is nothing any more. To be called under the lock, one at a time. @throws StoreError */
		async save(value: T | null): Promise<void> {
			const {
				sound: [newest],
				lastNumber,
			} = ours();
			const place = newest?.place === first ? second : first;
			if (value !== null) checkContent(thing, place.file, value, codec);
			const number = lastNumber + 1;
			const savedAt = now().toISOString();
			const body = {...newest?.body, kind, version: versions.current, number, savedAt, content: value};
			known = undefined;
			const sealed = sealDocument(body);
			await writer.write(thing, place.file, sealed);
			noteLastNumber(countFile, number);
			const {checksum} = sealed.document;
			const written: Generation<T> = {place, number, savedAt, value, body, checksum};
			own = new Set([written, ...(newest ? [newest] : [])].map((one) => one.checksum));
			known = {state: {sound: [written], lastNumber: number, notices: []}, marks: marks()};
		},
	};
};
