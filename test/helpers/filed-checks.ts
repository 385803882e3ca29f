import {storeOf} from '../../source/desk/stored-forms.js';
import type {Profile} from '../../source/procedure/facts.js';
import type {FinishedCheck} from '../../source/results/record.js';
import {idFor, played} from './invented-checks.js';
import {freshFolder} from './program-environment.js';
import {northDeck} from './sample-check.js';

let whole: FinishedCheck | undefined;

export type Filed = {
	/** Time of its start, with the offset of the place. */
	readonly at: string;
	readonly arm?: string;
	readonly next?: {readonly date: string; readonly because: string} | undefined;
	readonly outcome?: FinishedCheck['outcome'];
};

/** The invented check of `sample-check.ts`, played once, under other names and days. */
export function filed({at, arm = 'north deck', next, outcome = 'complete'}: Filed): FinishedCheck {
	whole ??= played({at: '2026-03-02T09:00:00Z', script: northDeck});
	const {nextCheck: _date, ...rest} = whole;
	const answers = {...whole.check.answers};
	const name = answers['arm-name'];
	if (name) answers['arm-name'] = {...name, value: arm, typed: arm};
	delete answers['arm-profile'];
	return {
		...rest,
		outcome,
		check: {...whole.check, id: idFor(at), startedAt: at, answers},
		...(next ? {nextCheck: next} : {}),
	};
}

type Beside = {
	readonly profiles?: readonly Profile[];
	/** Reasons by id of the check. */
	readonly voids?: Readonly<Record<string, string>>;
};

/** A data folder with these checks, and what stands beside them. */
export async function folderWith(
	records: readonly FinishedCheck[],
	{profiles = [], voids = {}}: Beside = {},
): Promise<string> {
	const dataDir = freshFolder();
	const store = storeOf(
		dataDir,
		() => new Date(),
		() => {},
	);
	for (const record of records) await store.finish(record.check.id, record);
	for (const [id, reason] of Object.entries(voids))
		await store.saveRemark(id, {void: {reason, at: '2026-03-03T09:00:00Z'}});
	if (profiles.length > 0) await store.saveProfiles({profiles: profiles.map((one) => ({...one}))});
	return dataDir;
}

/** The profile of an invented arm. */
export const armProfile = (name: string, more: Partial<Profile> = {}): Profile => ({
	id: `arm-${name}`,
	kind: 'arm',
	name,
	answers: {'arm-name': {value: name, typed: name}},
	usedAt: '2026-03-02T09:00:00Z',
	...more,
});
