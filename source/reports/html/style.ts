import {visibleText} from '../../visible-text.js';
import {darkPalette, lightPalette, propertiesOf} from './palette.js';

/**
 * How a report looks: on a screen, light or dark, on a phone, and on A4 paper. No meaning in a colour alone: every colour
 * goes with a word and a shape. Figures, tables and findings are not torn apart at the end of a page, and no heading
 * stands alone there.
 *
 * @param arm the name of the arm, for the head of every printed page
 * @param day the day of its figures, beside it
 */
export const pageStyle = ({arm, day}: {readonly arm: string; readonly day: string}): string => `
:root { color-scheme: light dark; ${propertiesOf(lightPalette)} }
@media screen and (prefers-color-scheme: dark) { :root { ${propertiesOf(darkPalette)} } }
* { box-sizing: border-box; }
html { font: 100%/1.5 system-ui, sans-serif; color: var(--ink); background: var(--paper); -webkit-text-size-adjust: 100%; }
body { max-width: 50rem; margin: 0 auto; padding: 1.5rem 1rem 3rem; overflow-wrap: break-word; }
bdi { overflow-wrap: anywhere; }
h1 { font-size: 1.7rem; line-height: 1.2; margin: 0 0 .75rem; }
h2 { font-size: 1.25rem; line-height: 1.25; margin: 2.25rem 0 .75rem; padding-bottom: .25rem; border-bottom: 2px solid var(--line); }
h3 { font-size: 1.05rem; margin: 1.5rem 0 .5rem; }
p, ul, ol { margin: .5rem 0; }
ul { padding-left: 1.25rem; }
p.good, p.warn, p.bad { border-left: 4px solid currentcolor; padding-left: .6rem; }
.sheet h2 { border: 0; margin-top: 1.5rem; }
.sheet + section h2 { margin-top: 3rem; }
.about { display: flex; flex-wrap: wrap; gap: .25rem 1.75rem; margin: 0; color: var(--soft); }
.about div { display: flex; gap: .4rem; }
.about dt::after { content: ":"; }
.about dd { margin: 0; color: var(--ink); }
.verdict, .notice { border: 1px solid currentcolor; border-left-width: 8px; border-radius: 4px; padding: .6rem .9rem; }
.verdict { margin: .5rem 0; }
.verdict p { color: var(--ink); margin: .35rem 0 0; }
.verdict .word { color: inherit; font-size: 1.35rem; line-height: 1.3; margin: 0; }
.good { color: var(--good); } .warn { color: var(--warn); } .bad { color: var(--bad); }
.aside { color: var(--soft); font-size: .92rem; }
.strong { font-weight: 600; }
.verdict.good, .notice.good { background: var(--goodGround); }
.verdict.warn, .notice.warn { background: var(--warnGround); }
.verdict.bad, .notice.bad { background: var(--badGround); }
.judged { display: inline-flex; gap: .3em; }
.judged .mark { flex: none; margin-top: .25em; }
.mark { width: 1em; height: 1em; vertical-align: -.12em; fill: currentcolor; }
.mark .ink { fill: none; stroke: var(--paper); stroke-width: 1.8; }
.mark .ink.dark { stroke: currentcolor; }
table { border-collapse: collapse; width: 100%; margin: 1rem 0; font-variant-numeric: tabular-nums; }
caption { text-align: left; font-weight: 600; padding: 0 0 .35rem; }
th, td { text-align: left; vertical-align: top; padding: .3rem .6rem .3rem 0; border-bottom: 1px solid var(--line); }
thead th { color: var(--soft); font-weight: 600; }
tbody th { font-weight: 500; }
.columns { columns: 20rem; column-gap: 2rem; margin: 1rem 0; }
.columns table { margin: 0 0 1rem; break-inside: avoid; }
.facts th { width: 55%; font-weight: 400; color: var(--soft); }
.findings { padding-left: 1.5rem; }
.findings li { margin: 0 0 1rem; }
.findings p { margin: .15rem 0; }
.pictures { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 21rem), 1fr)); gap: .5rem 1.5rem; }
figure { margin: .75rem 0; max-width: 27rem; }
figcaption { color: var(--soft); font-size: .92rem; }
.picture { display: block; width: 100%; height: auto; font: 12.5px system-ui, sans-serif; }
.picture text { fill: var(--ink); paint-order: stroke; stroke: var(--paper); stroke-width: 3px; stroke-linejoin: round; }
.picture .soft { fill: var(--soft); }
.picture line, .picture polyline { fill: none; stroke: var(--ink); stroke-width: 1; }
.picture .limit-good { stroke: var(--good); stroke-width: 1.75; }
.picture .limit-usable { stroke: var(--warn); stroke-width: 1.75; }
.picture .name-good { fill: var(--good); } .picture .name-usable { fill: var(--warn); }
.picture .zero, .picture .axis, .picture .face { stroke: var(--soft); } .picture .grid { stroke: var(--line); }
.picture .band { fill: var(--band); stroke: var(--bandEdge); }
.picture .band.earlier { fill: var(--paper); stroke: var(--soft); stroke-dasharray: 4 3; }
.picture .band-end { stroke: var(--bandEdge); stroke-width: 2; }
.picture .done { stroke: var(--ink); stroke-width: 1; stroke-dasharray: 2 3; }
.picture .done-mark { font-weight: bold; }
.picture .whisker { stroke: var(--ink); stroke-width: 1.5; }
.picture .point { fill: var(--ink); }
.picture .point-open { fill: var(--paper); stroke: var(--ink); stroke-width: 1.75; }
.picture .wanted { stroke: var(--bandEdge); stroke-width: 2.5; }
.picture .drag { fill: var(--band); }
.picture .own { stroke: var(--soft); stroke-dasharray: 2 4; stroke-width: 1.5; }
.picture .left-over { stroke: var(--bad); stroke-width: 2; stroke-dasharray: 5 2; }
.picture .least, .picture .way { fill: var(--soft); }
.picture .face { fill: var(--paper); }
footer { margin-top: 2.5rem; border-top: 1px solid var(--line); color: var(--soft); font-size: .88rem; }
@media (max-width: 34rem) {
	body { padding-top: 1rem; }
	.about { display: block; }
	th, td { padding-right: .4rem; overflow-wrap: anywhere; }
	table { font-size: .93rem; }
	.wide, .wide caption, .wide tbody, .wide tr, .wide th, .wide td { display: block; }
	.wide thead { display: none; }
	.wide tr { border-bottom: 1px solid var(--line); padding: .3rem 0; }
	.wide th, .wide td { border: 0; padding: .05rem 0; }
	.wide td:empty { display: none; }
	.wide td::before { content: attr(data-of) ": "; color: var(--soft); }
}
@page {
	size: A4; margin: 18mm 16mm; font: 9pt sans-serif; color: ${lightPalette.soft};
	@top-left { content: ${cssString(arm)}; width: 75%; }
	@top-right { content: ${cssString(day)}; }
	@bottom-right { content: counter(page) " / " counter(pages); }
}
@media print {
	html { font-size: 9.5pt; line-height: 1.4; print-color-adjust: exact; -webkit-print-color-adjust: exact; }
	body { max-width: none; padding: 0; }
	h1, h2, h3, caption { break-after: avoid; }
	.sheet { break-after: page; font-size: 11pt; }
	.sheet figure { max-width: 30rem; }
	.sheet + section h2 { margin-top: 0; }
	h2 { margin-top: 1.4rem; }
	th, td { padding-top: .18rem; padding-bottom: .18rem; }
	.columns { columns: 2; }
	figure, tr, .findings li, .verdict, .notice, .about { break-inside: avoid; }
	thead { display: table-header-group; }
	tbody tr:first-child { break-before: avoid; }
	.short { break-inside: avoid; }
	p, li { orphans: 3; widows: 3; }
	.pictures { grid-template-columns: 1fr 1fr; }
	.pictures:has(> :only-child) { grid-template-columns: 1fr; }
}
`;

/** The whole name would push the page down; the first page has it. */
const longest = 60;

/** Any text as a string of CSS: all but plain letters, digits and blanks by their numbers, so that nothing in it ends it. */
function cssString(text: string): string {
	const letters = [...visibleText(text)];
	const kept = letters.length > longest ? [...letters.slice(0, longest), '…'] : letters;
	return `"${kept.map((one) => (/[\dA-Za-z ]/.test(one) ? one : `\\${one.codePointAt(0)?.toString(16)} `)).join('')}"`;
}
