import type {Body} from './document.js';

/** Version of every document written today. Raise it, and add an upgrade, when an older program could misread a file. */
export const CURRENT_VERSION = 1;

/** Turns a document of version `from` into one of the next version. Pure: the file on disk is not touched by it. */
export type Upgrade = {readonly from: number; readonly apply: (body: Body) => Body};

/** All upgrades there are; version 1 is the first. */
export const UPGRADES: readonly Upgrade[] = [];

/** Which versions are understood; tests bring their own. */
export type Versions = {readonly current: number; readonly upgrades: readonly Upgrade[]};

/** The document in today's version, or `undefined` where no chain of upgrades leads there. */
export const upgradeDocument = (body: Body, version: number, {current, upgrades}: Versions): Body | undefined => {
	let upgraded = body;
	for (let from = version; from < current; from++) {
		const step = upgrades.find((upgrade) => upgrade.from === from);
		if (step === undefined) return undefined;
		upgraded = {...step.apply(upgraded), version: from + 1};
	}
	return upgraded;
};
