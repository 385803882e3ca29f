import type {Check} from '../check/check.js';
import type {MeasuredWith, PastCheck, PastProbe} from '../check/past-check.js';
import {factsOfSeries} from '../check/progress.js';
import {openSeries} from '../check/series.js';
import {places} from '../procedure/places.js';
import {severalOptions} from '../procedure/step-ids.js';
import {documentOfCheck} from './document-of-check.js';
import type {RadiusFigures} from './figures.js';
import {figuresOfCheck, type IssuedFigures} from './issued.js';

/** Under what name checks without one stand in the index, on the disk too: a name and no sentence. */
const unnamedArm = 'unnamed arm';

/** A check as a row among the past ones, with the figures that were issued or, while it goes on, those of now. */
export const rowOf = (check: Check, issued: IssuedFigures | null = figuresOfCheck(check)): PastCheck => ({
	id: check.id,
	date: check.startedAt.slice(0, 10),
	startedAt: check.startedAt,
	arm: factsOfSeries(check, openSeries(check)).text('arm-name') ?? unnamedArm,
	outcome: 'open',
	verdict: issued?.figures.verdict ?? null,
	atWorst: issued?.figures.atWorst ?? null,
	probe: (issued?.figures.probe ?? []).map(probeOf),
	measuredWith: measuredWith(check, issued),
	...doneSince(check),
	nextDate: null,
	tookMinutes: minutesTaken(check),
});

/** Minutes between the answers and readings of a check; a silence that is longer was no work. */
function minutesTaken({answers, series, startedAt}: Check): number {
	const rounds = series.flatMap((one) => places.flatMap((place) => one[place]));
	const stamps = [
		startedAt,
		...Object.values(answers).map(({at}) => at),
		...rounds.flatMap(({innerLimit, outerLimit}) => [innerLimit.at, ...(outerLimit ? [outerLimit.at] : [])]),
	];
	const times = stamps.map((at) => Date.parse(at)).toSorted((one, other) => one - other);
	const ms = times.slice(1).reduce((sum, at, index) => {
		const gap = at - (times[index] ?? at);
		return gap > longestStepMs ? sum : sum + gap;
	}, 0);
	return Math.round(ms / 60_000);
}

const longestStepMs = 10 * 60_000;

/** What was done since the check before; nothing is no event. */
export function doneSince({answers, recheckOf, follows}: Check): Pick<PastCheck, 'doneSince' | 'doneNote'> {
	const done = answers['done-since']?.value;
	const [nothing] = severalOptions['done-since'];
	const note = answers['done-since-note']?.value;
	const isAsked = (recheckOf ?? follows) !== undefined;
	const kinds = isAsked && Array.isArray(done) ? done.filter((one) => one !== nothing) : [];
	return {doneSince: kinds, doneNote: kinds.includes('other') && typeof note === 'string' ? note : null};
}

const probeOf = ({place, radiusMm, pullPct, pullUncertaintyPct, ...rest}: RadiusFigures): PastProbe => ({
	place,
	radiusMm,
	pullPct,
	pullUncertaintyPct,
	bandPct: rest.bandPct,
	bandUncertaintyPct: rest.bandUncertaintyPct,
	tiltPct: rest.tiltSharePct,
	tiltUncertaintyPct: rest.tiltShareUncertaintyPct,
});

/** Under what the series that counts was measured. */
function measuredWith(check: Check, issued: IssuedFigures | null): MeasuredWith | null {
	const found = documentOfCheck(check);
	if (!found.ok) return null;
	const {arm, trackingForce} = found.document;
	const facts = factsOfSeries(check, openSeries(check));
	return {
		playingMn: trackingForce.playingMn,
		effectiveLengthMm: arm.effectiveLengthMm,
		loading: arm.loading,
		guard: trackingForce.guard,
		tools: facts.text('tools-name') ?? '',
		temperatureC: facts.number('room-temperature') ?? null,
		withoutSettingUp: issued?.form === 1,
	};
}
