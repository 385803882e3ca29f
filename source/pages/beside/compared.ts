import type {PastCheck, PastProbe} from '../../check/past-check.js';
import {summaryOf} from '../../results/record.js';
import {probeAt} from '../../results/years/comparison.js';
import {doneBetween} from '../../results/years/events.js';
import {words} from '../../words/index.js';
import {span} from '../../words/numbers.js';
import type {Workbench} from '../../workbench.js';
import {type Shown, table} from '../shown-lines.js';
import {twoCompared} from '../years/comparison-lines.js';
import {type FaceRoom, go, listStop, type Stop} from './page.js';
import {hasFigures, pastLabels} from './past-labels.js';
import type {BesidePlace, PastCheckPlace} from './places.js';
import {turnedList} from './turned-list.js';

const say = words.beside.past.compared;

/** A past check beside another one of the same arm: which one, and how the two stand against each other. */
export function comparedAt(
	{archive}: Workbench,
	room: FaceRoom,
	place: Extract<PastCheckPlace, {at: 'compare-with' | 'compared'}>,
): Stop<BesidePlace> {
	const {id, offset, only, from} = place;
	const here = {id, offset, ...(only && {only})};
	const toCheck = go<BesidePlace>({at: 'past-check', ...here});
	const found = archive.record(id);
	const arm = found.ok ? summaryOf(found.record).arm : '';
	const checks = archive.ofArm(arm);
	const one = checks.find((each) => each.id === id);
	const others = checks.filter((each) => each.id !== id);
	if (place.at === 'compare-with') {
		const rows = others.slice(from, from + room.listRows);
		const labels = pastLabels(rows, room);
		return turnedList<BesidePlace>({
			title: say.which({arm, date: one?.date ?? ''}),
			room,
			offset: from,
			total: others.length,
			told:
				others.length === 0
					? words.beside.past.none
					: (span) => words.beside.past.span({...span, hasFigures: hasFigures(room)}),
			notices: [],
			offers: [],
			rows: rows.map((each, index) => ({id: each.id, label: labels[index] ?? each.id})),
			older: words.beside.past.older,
			turnTo: (to) => ({...place, from: to}),
			choose: (other) => go({at: 'compared', ...here, other, from}),
			back: toCheck,
		});
	}
	const other = others.find((each) => each.id === place.other);
	const toOthers = go<BesidePlace>({at: 'compare-with', ...here, from});
	return listStop<BesidePlace>(
		{title: say.title({arm}), shown: one && other ? sideBySide(one, other, [one, ...others]) : []},
		toCheck,
		[
			['other', say.other, () => toOthers],
			['back', words.beside.back, () => toCheck],
		],
	);
}

/** Whether anything changed; the earlier one to the left; then what moved and how surely. */
function sideBySide(one: PastCheck, other: PastCheck, ofArm: readonly PastCheck[]): readonly Shown[] {
	const [then, now] = one.startedAt < other.startedAt ? [one, other] : [other, one];
	const rows = now.probe.flatMap((probe) => {
		const before = probeAt(then, probe.radiusMm);
		const {place} = probe;
		return [
			[say.pull({place}), pullOf(before), pullOf(probe)],
			[say.band({place}), bandOf(before), bandOf(probe)],
		];
	});
	const {state} = words.beside.past;
	const columns = say.columns({before: then.date, now: now.date});
	// The word first: on a small screen the table is a page further.
	const [word, ...sizes] = twoCompared(now, then, doneBetween(ofArm, then, now));
	return [...(word ? [word] : []), table(columns, [[say.verdict, state(then), state(now)], ...rows]), ...sizes];
}

const pullOf = (probe: PastProbe | undefined): string =>
	probe?.pullPct == null || probe.pullUncertaintyPct === null
		? say.notMeasured
		: words.figures.sideForce(probe.pullPct, probe.pullUncertaintyPct);

const bandOf = (probe: PastProbe | undefined): string =>
	probe?.bandPct == null || probe.bandUncertaintyPct === null
		? say.notMeasured
		: span(probe.bandPct, probe.bandUncertaintyPct);
