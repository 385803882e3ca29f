import type {PastCheck} from '../workbench.js';
import {placeLabel, verdictWord, wayOf} from './wording.js';

type Probe = PastCheck['probe'][number];

/** A past check on one line: date, arm, pull and band at the radii, verdict. */
export function pastLabel({date, arm, outcome, verdict, probe}: PastCheck, columns: number): string {
	const words = Object.entries(verdictWord).find(([id]) => id === verdict)?.[1] ?? 'not measured';
	const state = outcome === 'complete' ? words : `${words}, ${outcome}`;
	const figures = probe.map((one) => figuresOf(one, columns >= 76)).join('  ');
	return columns >= 60
		? `${date}  ${cut(arm, 14).padEnd(14)}  ${figures}  ${state}`
		: `${date} ${cut(arm, 12)} ${state}`;
}

function figuresOf({place, pullPct, bandPct}: Probe, long: boolean): string {
	const name = long ? placeLabel(place) : placeLabel(place).charAt(0);
	if (pullPct === null || bandPct === null) return `${name} –`;
	return `${name} ${Math.abs(pullPct).toFixed(1)} ${wayOf(pullPct)}/${bandPct.toFixed(1)}`;
}

const cut = (text: string, length: number): string =>
	[...text].length > length ? `${[...text].slice(0, length - 1).join('')}…` : text;
