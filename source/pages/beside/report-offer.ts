import {words} from '../../words/index.js';
import type {Workbench} from '../../workbench.js';
import {line, type Shown} from '../shown-lines.js';
import type {Offer} from './page.js';
import type {BesidePlace} from './places.js';

const say = words.beside.report;

/** Writes the report of a filed check, one key away, and comes back to its page; nothing where no reports are written. */
export const reportOffer = (
	{reports}: Workbench,
	id: string,
	written: BesidePlace & {readonly isReported: true},
): Offer<BesidePlace>[] =>
	reports ? [['report', say.write, () => ({kind: 'save', save: () => reports.write(id), to: written})]] : [];

/** Where it was written, before everything else on the page. */
export const reportLines = ({reports}: Workbench, id: string, isReported = false): Shown[] =>
	reports && isReported ? [line(say.written({file: reports.fileOf(id)}), 'good')] : [];
