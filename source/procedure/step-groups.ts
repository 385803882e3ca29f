import type {Facts} from './facts.js';
import {offPlaces} from './places.js';
import {formerTickLines, type IdOf, newerTickLines, type StepId, tickLines} from './step-ids.js';

/** Steps that are asked anew together. */
export const levelSteps = ['level-lr-1', 'level-lr-2', 'level-fb-1', 'level-fb-2'] as const;
/** The pointer read free of the arm, where the gauge cannot be turned: read anew for each series. */
export const freeZeroSteps = ['zero-free-before', 'zero-free-after'] as const;
export const guardSteps = ['guard-on', 'weighed'] as const;
export const heightSteps = ['guard-gap', 'clearance'] as const;
export const forceSteps = ['force-reading', 'arm-afloat', 'force-at-height'] as const;

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

/** The lines of a list that are asked; a check that was ticked by the lines of an earlier order keeps to those. */
export function linesAsked(list: IdOf<'ticks'>, facts: Facts): readonly string[] {
	const isTicked = (line: string) => facts.list(list).some((mark) => mark.startsWith(`${line}=`));
	const isFormer = (line: string) => formerTickLines.includes(`${list}:${line}`);
	const isEarlier = tickLines[list].some((line) => isFormer(line) && isTicked(line));
	const isLeftOut = (line: string) => (isEarlier ? newerTickLines.includes(`${list}:${line}`) : isFormer(line));
	return tickLines[list].filter((line) => isTicked(line) || !isLeftOut(line));
}

/** Asked before the first round of a series; a check whose rounds were begun before this was asked goes on with them. */
export const isBeforeRounds =
	(step: StepId) =>
	(facts: Facts): boolean =>
		facts.everAnswered(step) || offPlaces.every((place) => facts.rounds(place).length === 0);
