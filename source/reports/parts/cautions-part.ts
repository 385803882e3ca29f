import type {Section} from '../report.js';
import {cautions} from '../texts.js';

export const cautionsPart: Section = {
	title: 'Cautions',
	blocks: [{kind: 'list', items: cautions.map(([about, caution]) => `${about} ${caution}`)}],
};
