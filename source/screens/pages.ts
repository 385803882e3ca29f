import type {Row} from './body.js';

/** The lines of one page, how many pages there are, and what the next one is called where it has a name. */
export function pageOf(
	rows: readonly Row[],
	page: number,
	height: number,
): {readonly rows: readonly Row[]; readonly page: number; readonly pages: number; readonly next?: string | undefined} {
	const pages = pagesOf(rows, Math.max(1, height));
	const shown = Math.min(Math.max(0, page), pages.length - 1);
	return {rows: pages[shown] ?? [], page: shown, pages: pages.length, next: pages[shown + 1]?.[0]?.leaf};
}

/** Whether all of it is one page: it fits, and nothing in it begins a page of its own. */
export const isOnePage = (rows: readonly Row[], room: number): boolean =>
	rows.length <= room && rows.slice(1).every(({leaf}) => leaf === undefined);

/** Sentences, tables and pictures stay whole where a page can hold them. */
function pagesOf(rows: readonly Row[], room: number): readonly (readonly Row[])[] {
	const pages: Row[][] = [[]];
	for (const block of blocksOf(rows)) {
		const left = room - (pages.at(-1)?.length ?? 0);
		const isTooLong = block.length > left && block.length <= room;
		if (left < room && (isTooLong || block[0]?.leaf !== undefined)) pages.push([]);
		for (const row of block) {
			if ((pages.at(-1)?.length ?? 0) === room) pages.push([]);
			pages.at(-1)?.push(row);
		}
	}
	return pages;
}

function blocksOf(rows: readonly Row[]): readonly (readonly Row[])[] {
	const blocks: Row[][] = [];
	for (const row of rows) {
		const last = blocks.at(-1);
		if (row.goesOn && last) last.push(row);
		else blocks.push([row]);
	}
	return blocks;
}
