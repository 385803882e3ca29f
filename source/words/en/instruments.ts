import {plainNumber, withSign} from '../numbers.js';

type Limits = {readonly goodPct: number; readonly usablePct: number};

/** What stands in the instruments of a screen: names of marks, sides and limits, as short as they can be. */
export const instruments = {
	/** Stands where a reading will be. */
	nothingTyped: '-',
	seconds: 's',
	bands: {
		/** Over the line of a limit of the pull. */
		good: ({pct}: {readonly pct: number}) => `good ${withSign(pct)}`,
		usable: ({pct}: {readonly pct: number}) => `usable ${withSign(pct)}`,
		/** At the end of an axis, with the unit of all its numbers. */
		end: ({pct}: {readonly pct: number}) => `${withSign(pct)} %`,
		limits: ({goodPct, usablePct}: Limits) =>
			`good to ±${plainNumber(goodPct)}, usable to ±${plainNumber(usablePct)} %`,
		judged: ({middle}: {readonly middle: string}) => `${middle} pull: only this middle is held against the limits`,
		earlier: ({middle}: {readonly middle: string}) => `${middle} last check`,
	},
	friction: {
		heading: 'friction',
		row: ({label, figure}: {readonly label: string; readonly figure: string}) => `friction, ${label}: ${figure}`,
		good: ({pct}: {readonly pct: number}) => `good ${plainNumber(pct)}`,
		usable: ({pct}: {readonly pct: number}) => `usable ${plainNumber(pct)} %`,
		limits: ({goodPct, usablePct}: Limits) => `good to ${plainNumber(goodPct)}, usable to ${plainNumber(usablePct)} %`,
	},
};
