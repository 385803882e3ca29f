import {monthOf} from './check-id.js';
import type {StoreContext} from './context.js';
import {type MonthRows, readMonth, writeMonth} from './month-index.js';
import type {IndexRow} from './pack-row.js';
import {fileStamp} from './read-plain-file.js';
import type {Records} from './records.js';
import type {StoreFault} from './store-fault.js';
import type {Summary} from './summary.js';

export type ListPage = {readonly offset: number; readonly limit: number};
export type Listing = {readonly total: number; readonly rows: Summary[]; readonly notices: StoreFault[]};

/** The list of past checks, by month, from an index that is never the truth. */
export type History = {
	/** Newest first. Reads the index of the months on the page, and the checks that it does not know. @throws StoreError */
	readonly list: (page: ListPage) => Listing;
	/** Adds a check just written. To be called under the lock. */
	readonly add: (id: string) => Promise<void>;
	/** Takes removed checks out of the index, where the list no longer finds them in any case. To be called under the lock. */
	readonly remove: (ids: readonly string[]) => Promise<void>;
	/** Whether listing had to make something good. */
	readonly isPending: () => boolean;
	/** Writes what listing had to make good. To be called under the lock. */
	readonly settle: () => Promise<void>;
};

/** Up to so many rows, each is held against its file; more at once would take longer than the list itself. */
const COMPARED_ROWS = 200;

export const createHistory = <R>(
	records: Records<R>,
	summaryOf: (record: R) => Summary,
	context: StoreContext,
): History => {
	const changed = new Map<string, MonthRows>();

	const rowOf = (id: string, notices: StoreFault[]): IndexRow | undefined => {
		const found = records.find(id);
		if (found.state === 'sound') {
			const {sizeBytes, changedMs} = found;
			return {sizeBytes, changedMs, summary: {...summaryOf(found.record), id}};
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
		for (const id of rows.keys()) if (!ids.has(id)) rows.delete(id);
		await writeMonth(month, rows, context);
		changed.delete(month);
	};

	return {
		list({offset, limit}) {
			const notices: StoreFault[] = [];
			const ids = records.ids();
			const page = ids.slice(offset, offset + limit);
			const months = new Map<string, MonthRows>();
			const rows: Summary[] = [];
			for (const id of page) {
				const month = monthOf(id);
				const known = months.get(month) ?? changed.get(month) ?? readMonth(month, context);
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
		async add(id) {
			const month = monthOf(id);
			const rows = changed.get(month) ?? readMonth(month, context);
			const row = rowOf(id, []);
			if (row !== undefined) rows.set(id, row);
			await write(month, rows, new Set(rows.keys()));
		},
		async remove(ids) {
			for (const month of new Set(ids.map(monthOf))) {
				const rows = changed.get(month) ?? readMonth(month, context);
				for (const id of ids) rows.delete(id);
				await write(month, rows, new Set(rows.keys()));
			}
		},
		isPending: () => changed.size > 0,
		async settle() {
			if (changed.size === 0) return;
			const ids = new Set(records.ids());
			for (const [month, rows] of [...changed]) await write(month, rows, ids);
		},
	};
};
