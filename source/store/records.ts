import fs from 'node:fs';
import path from 'node:path';
import {checkContent} from './check-content.js';
import {isCheckId} from './check-id.js';
import type {Codec, StoreContext} from './context.js';
import {codeOf, readFault} from './describe-fault.js';
import {moveAside} from './move-aside.js';
import {placeDocument} from './place-document.js';
import {type FilePlace, readDocument, reportDamage} from './read-document.js';
import {removable, removeFiles} from './remove-files.js';
import {StoreError} from './store-error.js';
import type {Damage, StoreFault} from './store-fault.js';

/** One finished check as it was found. */
export type FoundRecord<R> =
	| {
			readonly state: 'sound';
			readonly record: R;
			/** The record as it lies in the file. */
			readonly json: unknown;
			readonly sizeBytes: number;
			readonly changedMs: number;
	  }
	| {readonly state: 'missing'}
	| {readonly state: 'damaged'; readonly damage: Damage}
	| {readonly state: 'closed'; readonly error: StoreError};

/** The finished checks: one file each, written once and never again. */
export type Records<R> = {
	readonly placeOf: (id: string) => FilePlace;
	/** All ids on file, newest first. @throws StoreError */
	readonly ids: () => string[];
	readonly find: (id: string) => FoundRecord<R>;
	/** Writes what the codec takes for a finished check, unless it is on file already. To be called under the lock. @throws StoreError */
	readonly write: (id: string, record: unknown) => Promise<void>;
	/** Removes sound ones for good; one that is gone already is no fault. To be called under the lock. @throws StoreError */
	readonly remove: (ids: readonly string[]) => void;
	/** Moves a damaged one aside if possible, and says so. */
	readonly report: (id: string, damage: Damage) => StoreFault;
};

export const createRecords = <R>(codec: Codec<R>, context: StoreContext): Records<R> => {
	const folder = path.join(context.dataDir, 'checks');
	const placeOf = (id: string): FilePlace => ({
		thing: {id: 'check', values: {id}},
		kind: 'armdrift-check',
		file: path.join(folder, `${id}.json`),
	});
	const find = (id: string): FoundRecord<R> => {
		const reading = readDocument(placeOf(id), context);
		if (reading.state !== 'sound') return reading;
		if (reading.body.id !== id) return {state: 'damaged', damage: {id: 'other-check', values: {}}};
		const parsed = codec.parse(reading.body.record);
		if (!parsed.ok) return {state: 'damaged', damage: {id: 'content', values: parsed.misfit}};
		const {sizeBytes, changedMs} = reading;
		return {state: 'sound', record: parsed.value, json: reading.body.record, sizeBytes, changedMs};
	};
	return {
		placeOf,
		find,
		ids() {
			try {
				const names = fs.readdirSync(folder).filter((name) => name.endsWith('.json'));
				return names
					.map((name) => name.slice(0, -'.json'.length))
					.filter(isCheckId)
					.sort()
					.reverse();
			} catch (error) {
				if (codeOf(error) === 'ENOENT') return [];
				throw readFault({id: 'checks', values: {}}, folder, error);
			}
		},
		async write(id, record) {
			const place = placeOf(id);
			checkContent(place.thing, place.file, record, codec);
			const found = find(id);
			if (found.state === 'sound') return;
			if (found.state === 'closed') throw found.error;
			if (found.state === 'damaged') context.onNotice(moveAside(place.thing, place.file, found.damage, context.now()));
			await placeDocument(place, {id, finishedAt: context.now().toISOString(), record}, context);
		},
		remove(ids) {
			for (const id of ids) removable(placeOf(id), find(id));
			removeFiles(ids.map(placeOf), folder);
		},
		report: (id, damage) => reportDamage(placeOf(id), damage, context),
	};
};

/** The error for an id that could not be a file name of ours, `undefined` where it could. */
export const idFault = (id: string, dataDir: string): StoreError | undefined => {
	if (isCheckId(id)) return undefined;
	return new StoreError('missing', {id: 'no-id', values: {file: dataDir, id}});
};
