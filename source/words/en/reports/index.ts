import {calendar} from './calendar.js';
import {about, captions, columns, sections, titles} from './frame.js';
import {cautions, limitsOfMethod, method} from './method.js';
import {conditions, deck, findings, maker, overridden, readings, verdict, years} from './parts.js';
import {ruledOut} from './ruled-out.js';

/** The reports. */
export const reports = {
	/** Of all that stands in them: a tag for pages (BCP 47). */
	language: 'en',
	about,
	calendar,
	captions,
	cautions,
	columns,
	conditions,
	deck,
	findings,
	limitsOfMethod,
	maker,
	method,
	overridden,
	readings,
	ruledOut,
	sections,
	titles,
	verdict,
	years,
};
