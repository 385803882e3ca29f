import {beforeAndAfter} from '../../pages/before-and-after.js';
import {detailLines} from '../../pages/radius-lines.js';
import type {Issued} from '../../results/issued.js';
import {blocksOfShown} from '../blocks-of-shown.js';
import type {CheckSource} from '../check-source.js';
import type {Section} from '../report.js';

/** What it means, who acts, and what comes next. */
export function findingsPart({record: {issued}}: CheckSource): Section[] {
	if (!issued || issued.findings.length === 0) return [];
	return [{title: 'What it means, and what to do', blocks: [{kind: 'findings', findings: issued.findings}]}];
}

/** The smaller figures, for those who want to know more. */
export function detailsPart({figures}: Issued): Section {
	return {title: 'More figures', blocks: blocksOfShown(detailLines(figures), {table: '', picture: ''})};
}

/** Earlier series beside the last one: what each remedy did. */
export function beforeAndAfterPart({record: {check, issued}}: CheckSource): Section[] {
	const shown = issued ? beforeAndAfter(check, issued.figures) : [];
	if (shown.length === 0) return [];
	return [{title: 'Before and after', blocks: blocksOfShown(shown, {table: 'Before and now', picture: ''})}];
}
