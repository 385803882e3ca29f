import type {ArmState} from '../../results/years/arm-states.js';
import {words} from '../../words/index.js';
import type {Workbench} from '../../workbench.js';
import {judgedTone} from '../band-rows.js';
import {line, type Shown} from '../shown-lines.js';
import {yearsOf} from '../years/years-lines.js';
import {toOther} from './other-check.js';
import {backOffer, go, listStop, type Stop, type Turn} from './page.js';
import type {ArmPlace, BesidePlace} from './places.js';

const say = words.beside.arms.one;

/** An arm: where it stands, how it came there, and all that can be done about it. */
export function armStop(
	workbench: Workbench,
	state: ArmState | undefined,
	place: Extract<ArmPlace, {at: 'arm'}>,
	toArms: Turn<BesidePlace>,
): Stop<BesidePlace> {
	const {arm, isReported = false} = place;
	const {reports} = workbench;
	// Renamed or deleted meanwhile, by another copy.
	if (!state) return listStop({title: arm, shown: [line(words.beside.arms.none, 'warn')]}, toArms, [backOffer(toArms)]);
	const {deckOpenAfter, profileId, last, checks, formerNames} = state;
	const written =
		reports && isReported && last
			? [line(words.beside.report.written({file: reports.fileOfArm(last.id)}), 'good')]
			: [];
	return listStop<BesidePlace>(
		{title: arm, shown: [...written, ...stateLines(state), ...historyLines(workbench, state)]},
		toArms,
		[
			[
				'put-back',
				deckOpenAfter === undefined ? undefined : say.putBack,
				() => toOther(workbench, {reopen: deckOpenAfter ?? ''}),
			],
			['recheck', last && say.recheck, () => toOther(workbench, {recheck: arm})],
			['start', say.start, () => toOther(workbench, {start: arm})],
			[
				'past',
				checks === 0 ? undefined : say.past({checks}),
				() => go({at: 'past', offset: 0, only: {armNames: [arm, ...formerNames]}}),
			],
			[
				'report',
				reports && last ? say.report : undefined,
				() =>
					reports && last
						? {kind: 'save', save: () => reports.writeArm(arm), to: {...place, isReported: true}}
						: go(place),
			],
			['events', profileId === undefined ? undefined : say.events, () => go({at: 'events', id: profileId ?? ''})],
			['profile', profileId === undefined ? undefined : say.profile, () => go({at: 'profile', id: profileId ?? ''})],
			backOffer(toArms),
		],
	);
}

function stateLines({last, due, isAside, deckOpenAfter, formerNames}: ArmState): Shown[] {
	return [
		last
			? line(
					say.last({verdict: words.beside.past.state(last), date: last.date}),
					judgedTone(last.verdict, last.atWorst),
				)
			: line(say.noVerdict),
		...(deckOpenAfter === undefined ? [] : [line(say.deckOpen, 'bad')]),
		isAside
			? line(say.aside)
			: due
				? line(say.nextCheck(due), due.inDays <= 0 ? 'warn' : 'strong')
				: line(say.noNextCheck),
		...(formerNames.length === 0 ? [] : [line(say.formerly({names: formerNames}), 'aside')]),
	];
}

/** What changed, how it goes over the years, and what was done to it, by the checks that count. */
function historyLines({archive}: Workbench, {last}: ArmState): readonly Shown[] {
	const found = last && archive.record(last.id);
	if (!found?.ok) return [];
	const {check, issued} = found.record;
	const years = yearsOf(check, archive.history(check), issued);
	if (!years) return [];
	// Whether anything changed comes first; by how much, after the pictures that show it.
	const [change, ...changes] = years.changes;
	return [...(change ? [change] : []), ...years.pictures, ...changes, ...years.trend];
}
