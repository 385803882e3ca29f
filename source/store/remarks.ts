import fs from 'node:fs';
import path from 'node:path';
import {checkContent} from './check-content.js';
import {isCheckId} from './check-id.js';
import type {Codec, StoreContext} from './context.js';
import {moveAside} from './move-aside.js';
import {placeDocument} from './place-document.js';
import {type FilePlace, readDocument} from './read-document.js';
import {removable, removeFiles} from './remove-files.js';
import {StoreError} from './store-error.js';

/** Small later facts beside a finished check, whose own file never changes. */
export type Remarks<M> = {
	/** Ids of the checks that have a remark; none where the folder cannot be read. */
	readonly ids: () => ReadonlySet<string>;
	readonly find: (id: string) => M | StoreError | undefined;
	/** Replaces the remark. To be called under the lock. @throws StoreError */
	readonly save: (id: string, remark: M) => Promise<void>;
	/** Removes sound ones for good; one that is gone already is no fault. To be called under the lock. @throws StoreError */
	readonly remove: (ids: readonly string[]) => void;
};

export const createRemarks = <M>(codec: Codec<M>, context: StoreContext): Remarks<M> => {
	const folder = path.join(context.dataDir, 'remarks');
	const placeOf = (id: string): FilePlace => ({
		thing: {id: 'remark', values: {id}},
		kind: 'armdrift-remark',
		file: path.join(folder, `${id}.json`),
	});
	const read = (id: string) => {
		const reading = readDocument(placeOf(id), context);
		if (reading.state !== 'sound') return reading;
		if (reading.body.id !== id) return {state: 'damaged', damage: {id: 'other-remark', values: {}}} as const;
		const parsed = codec.parse(reading.body.remark);
		if (!parsed.ok) return {state: 'damaged', damage: {id: 'content', values: parsed.misfit}} as const;
		return {state: 'sound', remark: parsed.value, body: reading.body} as const;
	};
	return {
		ids() {
			try {
				const names = fs.readdirSync(folder);
				return new Set(names.map((name) => path.basename(name, '.json')).filter(isCheckId));
			} catch {
				return new Set();
			}
		},
		find(id) {
			const found = read(id);
			if (found.state === 'missing') return undefined;
			if (found.state === 'sound') return found.remark;
			if (found.state === 'closed') return found.error;
			const {thing, file} = placeOf(id);
			return new StoreError('damaged', {id: 'remark-damaged', values: {thing, file, damage: found.damage}});
		},
		async save(id, remark) {
			const place = placeOf(id);
			checkContent(place.thing, place.file, remark, codec);
			const found = read(id);
			if (found.state === 'closed') throw found.error;
			if (found.state === 'damaged') context.onNotice(moveAside(place.thing, place.file, found.damage, context.now()));
			const kept = found.state === 'sound' ? found.body : {};
			await placeDocument(place, {...kept, id, savedAt: context.now().toISOString(), remark}, context);
		},
		remove(ids) {
			for (const id of ids) removable(placeOf(id), read(id));
			removeFiles(ids.map(placeOf), folder);
		},
	};
};
