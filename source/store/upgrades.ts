import type {Json} from './json.js';
import {upgradeFrom1} from './upgrade-from-1.js';
import {upgradeFrom2} from './upgrade-from-2.js';
import {upgradeFrom3} from './upgrade-from-3.js';

/** Version of every document written today. Raise it, and add an upgrade, when an older program could misread a file. */
export const CURRENT_VERSION = 4;

/** Turns a document of version `from` into one of the next version. Pure: the file on disk is not touched by it. */
export type Upgrade = {readonly from: number; readonly apply: (body: Json) => Json};

/** All upgrades there are; version 1 is the first. */
export const UPGRADES: readonly Upgrade[] = [
	{from: 1, apply: upgradeFrom1},
	{from: 2, apply: upgradeFrom2},
	{from: 3, apply: upgradeFrom3},
];

/** Which versions are understood; tests bring their own. */
export type Versions = {readonly current: number; readonly upgrades: readonly Upgrade[]};

/** The document in today's version, or `undefined` where no chain of upgrades leads there. */
export const upgradeDocument = (body: Json, version: number, {current, upgrades}: Versions): Json | undefined => {
	let upgraded = body;
	for (let from = version; from < current; from++) {
		const step = upgrades.find((upgrade) => upgrade.from === from);
		if (step === undefined) return undefined;
		upgraded = {...step.apply(upgraded), version: from + 1};
	}
	return upgraded;
};

/** What a file of this kind holds under a field, brought from an earlier version to today's. */
export const upgradeContent = (kind: string, field: string, content: unknown, version: number): unknown =>
	upgradeDocument({kind, [field]: content}, version, {current: CURRENT_VERSION, upgrades: UPGRADES})?.[field];
