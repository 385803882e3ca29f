import {htmlOfAnsi} from './ansi.js';
import type {Size} from './terminal.js';

/** A frame that was drawn, and what it is called. */
export type Drawn = {readonly title: string; readonly ansi: string; readonly size: Size};

// Colours of our own, near to what terminals usually have: dark with light letters, and the other way round.
const grounds = {
	dark: {
		ink: '#d8d8d2',
		ground: '#15171a',
		sixteen: ['#24272b', '#e06c60', '#83b96b', '#d9b24c', '#6d9fe0', '#cf84d6', '#55bcc4', '#d8d8d2'],
		bright: ['#71767d', '#f08a7f', '#9fd287', '#efcd72', '#8fb8ee', '#e2a4e8', '#7ad6dd', '#ffffff'],
	},
	light: {
		ink: '#22252a',
		ground: '#fbfaf5',
		sixteen: ['#22252a', '#b3261e', '#2f7a1f', '#8a6100', '#1f57a8', '#8d2f97', '#00727a', '#cfcfc8'],
		bright: ['#6b7078', '#c8443c', '#418f30', '#a37600', '#356fc2', '#a548af', '#0a8a93', '#ffffff'],
	},
} as const;
export type Ground = keyof typeof grounds;

// A cell of 10 by 19 pixels: the font's own proportion, so that blocks and lines join.
const style = (ground: Ground): string => {
	const {ink, ground: paper, sixteen, bright} = grounds[ground];
	const hues = [...sixteen, ...bright]
		.map((hue, index) => `.ink${index}{--ink:${hue}}.ground${index}{--ground:${hue}}`)
		.join('\n');
	return `
body{margin:0;padding:16px;background:#5b5f66;font:13px sans-serif;color:#fff;width:max-content}
h1{font-size:20px;margin:0 0 4px}p{margin:0 0 16px}
.sheet{display:grid;gap:14px;padding:10px;width:max-content}
figure{margin:0}figcaption{margin-bottom:3px;font:15px 'DejaVu Sans',sans-serif}
pre{--ink:${ink};--ground:${paper};margin:0;padding:4px 6px;overflow:hidden;background:var(--ground);color:var(--ink);
font:16.61px/19px 'DejaVu Sans Mono',monospace;font-variant-ligatures:none}
span{color:var(--ink);background:var(--ground)}
.bold{font-weight:700}.dim{color:color-mix(in srgb,var(--ink) 58%,var(--ground))}
.italic{font-style:italic}.underline{text-decoration:underline}
.inverse{color:var(--ground);background:var(--ink)}
i{font-style:normal;display:inline-block;overflow:hidden;vertical-align:top;text-align:center;height:19px}
.w1{width:10px}.w2{width:20px}
${hues}`;
};

const figure = ({title, ansi, size}: Drawn): string => {
	const height = Math.max(size.rows, ansi.split('\n').length);
	return `<figure id="${title.replaceAll(/[^\w-]/g, '-')}"><figcaption>${title}</figcaption><pre style="width:${
		size.columns
	}ch;height:${height * 19}px">${htmlOfAnsi(ansi)}</pre></figure>`;
};

/** How many stand side by side on a sheet, and under one another, so that it is about as wide as it is high. */
const across = ({columns}: Size): number => Math.max(1, Math.round(240 / columns));
const down = ({rows}: Size): number => Math.max(1, Math.round(100 / rows));

/** A page of pictures, on sheets that can each be photographed. */
export function pageOf(heading: string, drawn: readonly Drawn[], ground: Ground = 'dark'): string {
	const size = drawn[0]?.size ?? {columns: 80, rows: 24};
	const perSheet = across(size) * down(size);
	const sheets = Array.from({length: Math.ceil(drawn.length / perSheet)}, (_none, index) =>
		drawn.slice(index * perSheet, (index + 1) * perSheet),
	);
	const body = sheets
		.map(
			(sheet) =>
				`<section class="sheet" style="grid-template-columns:repeat(${across(size)},max-content)">${sheet
					.map(figure)
					.join('\n')}</section>`,
		)
		.join('\n');
	return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><title>${heading}</title><style>${style(ground)}</style></head>
<body><h1>${heading}</h1><p>Every check, arm and reading here is invented.</p>
${body}
</body></html>
`;
}
