// What must hold of every report wherever it is looked at, measured in headless Chromium: on a phone of 360 pixels nothing
// scrolls sideways and every text of a picture can be read, the customer's sheet fills one A4 page, every page names arm and day, and no heading ends a page.
import {spawnSync} from 'node:child_process';
import {readFileSync, writeFileSync} from 'node:fs';
import path from 'node:path';
import {pathToFileURL} from 'node:url';

const PHONE = 360;
/** Pixels of the smallest letters that are read at arm's length. */
const LETTERS = 12;

const entities = {amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'"};
const plain = (html) =>
	html
		.replaceAll(/<[^>]*>/g, '')
		.replaceAll(/&(amp|lt|gt|quot|#39);/g, (_whole, name) => entities[name])
		.replaceAll(/\s+/g, ' ')
		.trim();

const textsOf = (html, pattern) => [...html.matchAll(pattern)].map(([, text = '']) => plain(text));

/** A page in a frame as wide as a phone, since no window of Chromium is so narrow; written beside it. */
export function onPhone(file, height) {
	const framed = readFileSync(file, 'utf8')
		.replace(/<meta http-equiv="Content-Security-Policy"[^>]*>/, '')
		.replaceAll('&', '&amp;')
		.replaceAll('"', '&quot;');
	const probe = file.replace('.html', '-phone.htm');
	const size = `width="${PHONE}" height="${height}" style="border: 0"`;
	writeFileSync(
		probe,
		`<!DOCTYPE html><meta charset="utf-8"><body style="margin: 0"><iframe ${size} srcdoc="${framed}" onload="tell(this)"></iframe><script>${tell}</script>`,
	);
	return pathToFileURL(probe).href;
}

/** Puts into its title how wide a page wants to be, how tall letters of its pictures are, and what leaves them. */
const tell = `function tell({contentDocument: page, contentWindow}) {
	const texts = [...page.querySelectorAll('.picture text')];
	const tall = (one) => parseFloat(contentWindow.getComputedStyle(one).fontSize) * one.getScreenCTM().a;
	const out = texts.filter((one) => {
		const [own, whole] = [one, one.ownerSVGElement].map((of) => of.getBoundingClientRect());
		return own.left < whole.left - 1 || own.right > whole.right + 1;
	});
	document.title = JSON.stringify({
		width: page.scrollingElement.scrollWidth,
		letters: Math.min(99, ...texts.map(tall)),
		out: out.map((one) => one.textContent),
	});
}`;

/** What of a page cannot be read on a phone. */
function faultsOnPhone(chromium, file) {
	const [, told = ''] = /<title>(.*?)<\/title>/.exec(chromium('--dump-dom', onPhone(file, 800))) ?? [];
	const {width, letters, out} = JSON.parse(told.replaceAll('&quot;', '"').replaceAll('&amp;', '&'));
	return [
		...(width <= PHONE ? [] : [`is ${width} pixels wide on a phone of ${PHONE}`]),
		...(letters >= LETTERS ? [] : [`has letters of ${letters.toFixed(1)} pixels in its pictures on a phone`]),
		...out.map((text) => `has a text that leaves its picture: ${text}`),
	];
}

/** The text of each page of a printed report, line by line, without the empty ones. */
function pagesOf(pdf) {
	const {stdout} = spawnSync('pdftotext', ['-layout', pdf, '-'], {encoding: 'utf8'});
	const pages = stdout.split('\f').map((page) => page.split('\n').map((line) => line.replaceAll(/\s+/g, ' ').trim()));
	return pages.map((lines) => lines.filter((line) => line !== '')).filter((lines) => lines.length > 0);
}

/** Directions are marked in what is read from a PDF, and letters may come joined. */
const bare = (text) => text.normalize('NFKC').replaceAll(/[^\p{L}\p{N}]/gu, '');

function faultsOnPaper(html, pdf) {
	const pages = pagesOf(pdf);
	const headings = textsOf(html, /<(?:h[1-3]|caption)[^>]*>(.*?)<\/(?:h[1-3]|caption)>/gs);
	const [arm = '', day = ''] = [...html.matchAll(/@top-(?:left|right) \{ content: "(.*?)"/g)].map(([, text]) =>
		text.replaceAll(/\\([\da-f]+) /g, (_whole, code) => String.fromCodePoint(Number.parseInt(code, 16))),
	);
	const faults = pages.flatMap((lines, index) => {
		const [head = '', foot = ''] = [lines[0], lines.at(-1)];
		const last = lines.at(-2) ?? '';
		// What is written from right to left comes out of a PDF in another order.
		const isNamed = /\p{Script=Arabic}|\p{Script=Hebrew}/u.test(arm)
			? head.length > day.length
			: bare(head).includes(bare(arm));
		return [
			...(isNamed && head.includes(day) ? [] : [`page ${index + 1} does not name arm and day: ${head}`]),
			...(/^\d+ ?\/ ?\d+$/.test(foot) ? [] : [`page ${index + 1} has no number: ${foot}`]),
			...(headings.includes(last) ? [`page ${index + 1} ends with a heading: ${last}`] : []),
		];
	});
	const [, sheet = ''] = /<div class="sheet">(.*?)<\/div>\n<section/s.exec(html) ?? [];
	const onSheet = textsOf(sheet, /<h2[^>]*>(.*?)<\/h2>/gs);
	const [afterSheet] = textsOf(html.slice(html.indexOf(sheet) + sheet.length), /<h2[^>]*>(.*?)<\/h2>/gs);
	if (sheet !== '') {
		const missing = onSheet.filter((heading) => !pages[0]?.includes(heading));
		if (missing.length > 0) faults.push(`the customer's sheet is longer than its page: ${missing.join(', ')}`);
		if (pages[1]?.[1] !== afterSheet)
			faults.push(`the second page begins with ${pages[1]?.[1]}, not with ${afterSheet}`);
	}
	return faults;
}

/** @param chromium runs the browser with these arguments and gives what it prints */
export function faultsOf(chromium, file, pdf) {
	const faults = [...faultsOnPhone(chromium, file), ...faultsOnPaper(readFileSync(file, 'utf8'), pdf)];
	return faults.map((fault) => `${path.basename(file)} ${fault}`);
}
