import {calendar} from './calendar.js';
import {frame} from './frame.js';
import {cautions, limitsOfMethod, method} from './method.js';
import {parts} from './parts.js';
import {ruledOut} from './ruled-out.js';
import {sheet} from './sheet.js';

/** The reports. */
export const reports = {
	/** Of all that stands in them: a tag for pages (BCP 47). */
	language: 'de',
	...frame,
	...parts,
	calendar,
	cautions,
	limitsOfMethod,
	method,
	ruledOut,
	sheet,
};
