import path from 'node:path';
import type {StoreContext} from './context.js';
import {type IndexRow, packRow, unpackRow} from './pack-row.js';
import {placeDocument} from './place-document.js';
import {type FilePlace, readDocument} from './read-document.js';

export type MonthRows = Map<string, IndexRow>;

const placeOf = (month: string, {dataDir}: StoreContext): FilePlace => ({
	thing: {id: 'month', values: {month}},
	kind: 'armdrift-index',
	file: path.join(dataDir, 'index', `${month}.json`),
});

/** The summaries on file for a month. Whatever is wrong with them, the checks themselves are the truth: then none. */
export const readMonth = (month: string, context: StoreContext): MonthRows => {
	const reading = readDocument(placeOf(month, context), context);
	const rows: MonthRows = new Map();
	if (reading.state !== 'sound' || !Array.isArray(reading.body.rows)) return rows;
	for (const packed of reading.body.rows) {
		const row = unpackRow(packed);
		if (row !== undefined) rows.set(row.summary.id, row);
	}
	return rows;
};

/** Writes the summaries of a month. To be called under the lock. @throws StoreError */
export const writeMonth = async (month: string, rows: MonthRows, context: StoreContext): Promise<void> => {
	const place = placeOf(month, context);
	const reading = readDocument(place, context);
	// A newer program's index is not ours to overwrite.
	if (reading.state === 'closed') throw reading.error;
	const sorted = [...rows.values()].sort((one, other) => (one.summary.id < other.summary.id ? -1 : 1));
	await placeDocument(place, {month, rows: sorted.map(packRow)}, context);
};
