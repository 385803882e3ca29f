import {differenceInMinutes} from 'date-fns/differenceInMinutes';
import {stepById} from '../procedure/index.js';
import type {StepId} from '../procedure/step-ids.js';
import {type Doubt, doubts} from '../procedure/steps-still.js';
import type {Answer, Check} from './check.js';
import {progressOf} from './progress.js';

/** After so long without an entry the deck may have been touched, program left or not. */
export const awayMinutes = 30;

/** Whether a check was left alone so long that its conditions are asked again. A clock that was set back counts too. */
export function wasLeft({touchedAt}: Check, at: string): boolean {
	if (touchedAt === undefined) return false;
	const minutes = differenceInMinutes(at, touchedAt);
	return minutes >= awayMinutes || minutes < 0;
}

/** What of a doubt applies here, was answered, and is not being asked anew already. */
export function itemsInDoubt(check: Check, doubt: Doubt): readonly Doubt['items'][number][] {
	const asked = new Set(progressOf(check).visible.map(({id}) => id));
	const isOpen = (id: StepId) => asked.has(id) && check.answers[id] !== undefined && !check.answers[id].again;
	return doubt.items
		.filter(({unless}) => unless === undefined || !check.answers[unless])
		.map((item) => ({...item, steps: item.steps.filter(isOpen)}))
		.filter(({steps}) => steps.length > 0);
}

const idsWhere = (check: Check, holds: (step: StepId) => boolean): string[] =>
	doubts
		.filter((doubt) => !doubt.offered && itemsInDoubt(check, doubt).some(({steps}) => steps.some(holds)))
		.map(({id}) => id);

/** Everything that could have changed. */
export const allDoubts = (check: Check): string[] => idsWhere(check, () => true);

/** What must be asked again when a check is taken up at a time, by the age of the last confirmation. */
const doubtsAfter = (check: Check, at: string): string[] =>
	check.stopped ? [] : idsWhere(check, (id) => isStale(check.answers[id], id, at));

/** With what must be asked again at a time, beside what was in doubt already. */
export const doubtedAfter = (check: Check, at: string): Check => ({
	...check,
	doubts: [...new Set([...check.doubts, ...doubtsAfter(check, at)])],
});

function isStale(answer: Answer | undefined, id: string, at: string): boolean {
	const limit = stepById(id)?.staysTrueMinutes;
	if (!answer || limit === undefined) return false;
	const minutes = differenceInMinutes(at, answer.confirmedAt ?? answer.at);
	return minutes >= limit || minutes < 0;
}

/** The doubts that a step belongs to. */
export const doubtsWithStep = (id: string): string[] =>
	doubts.filter(({items}) => items.some(({steps}) => steps.some((one) => one === id))).map((doubt) => doubt.id);

/** Whether anything of a doubt is left to be confirmed. */
export const isStillInDoubt = (check: Check, id: string): boolean =>
	doubts.some((doubt) => doubt.id === id && itemsInDoubt(check, doubt).length > 0);

/** Whether what was answered stays as an offer when it is no longer so. */
export const isOffered = (id: string): boolean => doubts.some((doubt) => doubt.id === id && doubt.offered === true);

/** Whether readings taken before and after a change of this kind must not be mixed. */
export const touchesReadings = (id: string): boolean => doubts.some((doubt) => doubt.id === id && doubt.newSeries);
