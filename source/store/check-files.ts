import fs from 'node:fs';
import path from 'node:path';
import {isCheckId} from './check-id.js';
import type {Codec, StoreContext} from './context.js';
import {codeOf, readFault, removeFault} from './describe-fault.js';
import {type FilePlace, placeDocument, readDocument, reportDamage} from './documents.js';
import {syncFolder} from './folder.js';
import type {Json} from './json.js';
import {moveAside} from './move-aside.js';
import {checkContent} from './plain-content.js';
import {practiceFault} from './practice-folder.js';
import {StoreError} from './store-error.js';
import type {Damage, StoreFault, Thing} from './store-fault.js';

const layouts = {
	/** The finished checks: written once and never again. */
	check: {folder: 'checks', field: 'record', savedAt: 'finishedAt', other: 'other-check', isFinal: true, all: 'checks'},
	/** Small later facts beside a finished check, whose own file never changes. */
	remark: {
		folder: 'remarks',
		field: 'remark',
		savedAt: 'savedAt',
		other: 'other-remark',
		isFinal: false,
		all: 'remarks',
	},
} as const;

/** What was found of one check. */
type Found<T> =
	| {
			readonly state: 'sound';
			readonly value: T;
			/** Fields of the document, the value as it lies in the file among them. */
			readonly body: Json;
			readonly json: unknown;
			readonly sizeBytes: number;
			readonly changedMs: number;
	  }
	| {readonly state: 'missing'}
	| {readonly state: 'damaged'; readonly damage: Damage}
	| {readonly state: 'closed'; readonly error: StoreError};

export type CheckFiles<T> = ReturnType<typeof createCheckFiles<T>>;

/** Files of one kind, one for each check, in a folder of their own. */
export const createCheckFiles = <T>(kind: keyof typeof layouts, codec: Codec<T>, context: StoreContext) => {
	const {field, savedAt, other, isFinal, all, ...layout} = layouts[kind];
	const folder = path.join(context.dataDir, layout.folder);
	const placeOf = (id: string): FilePlace => ({
		thing: {id: kind, values: {id}},
		kind: `armdrift-${kind}`,
		file: path.join(folder, `${id}.json`),
	});
	const find = (id: string): Found<T> => {
		const reading = readDocument(placeOf(id), context);
		if (reading.state !== 'sound') return reading;
		if (reading.body.id !== id) return {state: 'damaged', damage: {id: other, values: {}}};
		const json = reading.body[field];
		const parsed = codec.parse(json);
		if (!parsed.ok) return {state: 'damaged', damage: {id: 'content', values: parsed.misfit}};
		const misplaced = kind === 'check' ? practiceFault(placeOf(id), json, context.dataDir) : undefined;
		if (misplaced) return {state: 'closed', error: misplaced};
		return {...reading, value: parsed.value, json};
	};
	return {
		placeOf,
		find,
		/** All ids on file, newest first. @throws StoreError */
		ids(): string[] {
			try {
				const names = fs.readdirSync(folder).filter((name) => name.endsWith('.json'));
				return names
					.map((name) => name.slice(0, -'.json'.length))
					.filter(isCheckId)
					.sort()
					.reverse();
			} catch (error) {
				if (codeOf(error) === 'ENOENT') return [];
				throw readFault({id: all, values: {}}, folder, error);
			}
		},
		/**
		 * Writes what the codec takes: a finished check unless it is on file already, anything else in place of what is. To be
		 * called under the lock. @throws StoreError
		 */
		async write(id: string, value: unknown): Promise<void> {
			const place = placeOf(id);
			checkContent(place.thing, place.file, value, codec);
			const found = find(id);
			if (found.state === 'sound' && isFinal) return;
			if (found.state === 'closed') throw found.error;
			if (found.state === 'damaged') context.onNotice(moveAside(place.thing, place.file, found.damage, context.now()));
			const kept = found.state === 'sound' ? found.body : {};
			await placeDocument(place, {...kept, id, [savedAt]: context.now().toISOString(), [field]: value}, context);
		},
		/**
		 * Removes sound ones for good, and makes that last; one that is gone already is no fault. To be called under the lock.
		 * @throws StoreError; then some of them may be left
		 */
		remove(ids: readonly string[]): void {
			for (const id of ids) assertRemovable(placeOf(id), find(id));
			for (const {thing, file} of ids.map(placeOf)) removing(thing, file, () => fs.unlinkSync(file));
			removing({id: 'going', values: {}}, folder, () => syncFolder(folder));
		},
		/** Moves a damaged one aside if possible, and says so. */
		report: (id: string, damage: Damage): StoreFault => reportDamage(placeOf(id), damage, context),
	};
};

/** Makes sure that a file is what was kept elsewhere, before anything is removed. @throws StoreError */
const assertRemovable = ({thing, file}: FilePlace, found: Found<unknown>): void => {
	if (found.state === 'closed') throw found.error;
	if (found.state !== 'damaged') return;
	throw new StoreError('damaged', {id: 'not-removable', values: {thing, file, damage: found.damage}});
};

const removing = (thing: Thing, file: string, work: () => void): void => {
	try {
		work();
	} catch (error) {
		if (codeOf(error) !== 'ENOENT') throw removeFault(thing, file, error);
	}
};
