import {visibleText} from '../../visible-text.js';

// What can begin markup anywhere in a line (CommonMark 0.31, section 2.4; tables and strikethrough of GitHub's dialect).
const MARKUP = /[\\`*_[\]<>&#|~$]/g;
// What can begin a list, a rule or an underlined heading at the start of a line; a number like 4.5 or -3 does not.
const LINE_START = /^([-+=](?=[-+=\s]|$)|\d+(?=[.)](?:\s|$)))/;

/** Any text as it may stand in Markdown: it is shown as it is, and nothing in it is markup. */
export const escapeMarkdown = (text: string): string =>
	visibleText(text)
		.replaceAll(MARKUP, '\\$&')
		.replace(LINE_START, (start) => (/\d/.test(start) ? `${start}\\` : `\\${start}`));
