import path from 'node:path';
import type {PastCheck} from '../check/past-check.js';
import type {CheckFiles} from './check-files.js';
import {monthOf} from './check-id.js';
import type {StoreContext} from './context.js';
import {type FilePlace, placeDocument, readDocument} from './documents.js';
import {dropViews} from './kept-view.js';
import {type IndexRow, packRow, unpackRow} from './pack-row.js';
import {isPracticeFolder} from './practice-folder.js';
import {fileStamp} from './read-plain-file.js';
import type {StoreFault} from './store-fault.js';

export type ListPage = {readonly offset: number; readonly limit: number};
export type Listing = {readonly total: number; readonly rows: PastCheck[]; readonly notices: StoreFault[]};

type MonthRows = Map<string, IndexRow>;

const monthPlace = (month: string, {dataDir}: StoreContext): FilePlace => ({
	thing: {id: 'month', values: {month}},
	kind: 'armdrift-index',
	file: path.join(dataDir, 'index', `${month}.json`),
});

/**
 * The summaries on file for a month. Whatever is wrong with them, the checks themselves are the truth: then none. Rows
 * do not tell whether they are of invented arms, so an index says what kind of folder it was made for.
 */
const readMonth = (month: string, isPractice: boolean, context: StoreContext): MonthRows => {
	const reading = readDocument(monthPlace(month, context), context);
	const rows: MonthRows = new Map();
	if (reading.state !== 'sound' || !Array.isArray(reading.body.rows)) return rows;
	if (reading.body.isPractice !== isPractice) return rows;
	for (const packed of reading.body.rows) {
		const row = unpackRow(packed);
		if (row !== undefined) rows.set(row.summary.id, row);
	}
	return rows;
};

/** Writes the summaries of a month. To be called under the lock. @throws StoreError */
const writeMonth = async (month: string, rows: MonthRows, context: StoreContext): Promise<void> => {
	const place = monthPlace(month, context);
	const reading = readDocument(place, context);
	// A newer program's index is not ours to overwrite.
	if (reading.state === 'closed') throw reading.error;
	const sorted = [...rows.values()].sort((one, other) => (one.summary.id < other.summary.id ? -1 : 1));
	const isPractice = isPracticeFolder(context.dataDir);
	await placeDocument(place, {month, isPractice, rows: sorted.map(packRow)}, context);
};

/** Up to so many rows, each is held against its file; more at once would take longer than the list itself. */
export const COMPARED_ROWS = 200;

/** The list of past checks, by month, from an index that is never the truth. */
export const createHistory = <R>(
	records: CheckFiles<R>,
	summaryOf: (record: R) => PastCheck,
	context: StoreContext,
) => {
	const changed = new Map<string, MonthRows>();

	const rowOf = (id: string, notices: StoreFault[]): IndexRow | undefined => {
		const found = records.find(id);
		if (found.state === 'sound') {
			const {sizeBytes, changedMs} = found;
			return {sizeBytes, changedMs, summary: {...summaryOf(found.value), id}};
		}
		if (found.state === 'damaged') notices.push(records.report(id, found.damage));
		if (found.state === 'closed') notices.push(found.error.fault);
		return undefined;
	};

	const isFresh = (id: string, row: IndexRow | undefined, compare: boolean): boolean => {
		if (row === undefined || !compare) return row !== undefined;
		const stamp = fileStamp(records.placeOf(id).file);
		return stamp?.sizeBytes === row.sizeBytes && stamp.changedMs === row.changedMs;
	};

	const write = async (month: string, rows: MonthRows, ids: ReadonlySet<string>) => {
		dropViews(context.dataDir);
		for (const id of rows.keys()) if (!ids.has(id)) rows.delete(id);
		await writeMonth(month, rows, context);
		changed.delete(month);
	};

	return {
		/** Newest first. Reads the index of the months on the page, and the checks that it does not know. @throws StoreError */
		list({offset, limit}: ListPage): Listing {
			const notices: StoreFault[] = [];
			const ids = records.ids();
			const page = ids.slice(offset, offset + limit);
			const isPractice = isPracticeFolder(context.dataDir);
			const months = new Map<string, MonthRows>();
			const rows: PastCheck[] = [];
			for (const id of page) {
				const month = monthOf(id);
				const known = months.get(month) ?? changed.get(month) ?? readMonth(month, isPractice, context);
				months.set(month, known);
				let row = known.get(id);
				if (!isFresh(id, row, page.length <= COMPARED_ROWS)) {
					row = rowOf(id, notices);
					if (row === undefined) known.delete(id);
					else known.set(id, row);
					changed.set(month, known);
				}
				if (row !== undefined) rows.push(row.summary);
			}
			return {total: ids.length - (page.length - rows.length), rows, notices};
		},
		/** Adds a check just written. To be called under the lock. */
		async add(id: string): Promise<void> {
			const month = monthOf(id);
			const rows = changed.get(month) ?? readMonth(month, isPracticeFolder(context.dataDir), context);
			const row = rowOf(id, []);
			if (row !== undefined) rows.set(id, row);
			await write(month, rows, new Set(rows.keys()));
		},
		/** Takes removed checks out of the index, where the list no longer finds them in any case. To be called under the lock. */
		async remove(ids: readonly string[]): Promise<void> {
			for (const month of new Set(ids.map(monthOf))) {
				const rows = changed.get(month) ?? readMonth(month, isPracticeFolder(context.dataDir), context);
				for (const id of ids) rows.delete(id);
				await write(month, rows, new Set(rows.keys()));
			}
		},
		/** Whether listing had to make something good. */
		isPending: () => changed.size > 0,
		/** Writes what listing had to make good. To be called under the lock. */
		async settle(): Promise<void> {
			if (changed.size === 0) return;
			const ids = new Set(records.ids());
			for (const [month, rows] of [...changed]) await write(month, rows, ids);
		},
	};
};
