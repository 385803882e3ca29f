import type {Row} from './body.js';

/** The lines of one page, and how many pages there are. A body that fits has one. */
export function pageOf(
	rows: readonly Row[],
	page: number,
	height: number,
): {readonly rows: readonly Row[]; readonly page: number; readonly pages: number} {
	const pages = pagesOf(rows, Math.max(1, height));
	const shown = Math.min(Math.max(0, page), pages.length - 1);
	return {rows: pages[shown] ?? [], page: shown, pages: pages.length};
}

/** Sentences, tables and pictures stay whole where a page can hold them. */
function pagesOf(rows: readonly Row[], room: number): readonly (readonly Row[])[] {
	const pages: Row[][] = [[]];
	for (const block of blocksOf(rows)) {
		const left = room - (pages.at(-1)?.length ?? 0);
		if (block.length > left && block.length <= room && left < room) pages.push([]);
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
