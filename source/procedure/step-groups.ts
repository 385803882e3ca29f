import type {Facts} from './facts.js';
import {formerTickLines, type IdOf, tickLines} from './step-ids.js';

/** Steps that are asked anew together. */
export const levelSteps = ['level-lr-1', 'level-lr-2', 'level-fb-1', 'level-fb-2'] as const;
/** The pointer read free of the arm, where the gauge cannot be turned: read anew for each series. */
export const freeZeroSteps = ['zero-free-before', 'zero-free-after'] as const;
export const guardSteps = ['guard-on', 'weighed'] as const;
export const heightSteps = ['guard-gap', 'clearance'] as const;
export const forceSteps = ['force-reading', 'force-at-height'] as const;

/** What belongs to one setting of the bias device and its readings; a new setting asks all of it anew. */
export const trialSteps = [
	'bias-weight',
	'bias-set',
	'bias-on',
	...(['outer', 'middle', 'inner'] as const).flatMap(
		(radius) => [`probe-bias-${radius}`, `bias-clock-${radius}`, `bias-angle-${radius}`] as const,
	),
	'bias-result',
] as const;

/** For how many minutes a reading of a deck holds that stands untouched: one sitting, not overnight. */
export const halfADay = 12 * 60;

/** The lines of a list that are asked; one of earlier checks only where it was ticked then. */
export const linesAsked = (list: IdOf<'ticks'>, facts: Facts): readonly string[] =>
	tickLines[list].filter(
		(line) =>
			!formerTickLines.includes(`${list}:${line}`) || facts.list(list).some((mark) => mark.startsWith(`${line}=`)),
	);
