import path from 'node:path';
import {createInterface} from 'node:readline';
import {hindranceOf} from '../desk/hindrance.js';
import {type CheckStore, storeOf} from '../desk/shelf.js';
import {Addition} from '../exchange/addition.js';
import {ImportFile} from '../exchange/import-file.js';
import {addsNothing, checkedIds, type ImportPlan, importPlan} from '../exchange/import-plan.js';
import {dataDirectory} from '../store/data-directory.js';
import type {StoreErrorCode} from '../store/store-error.js';
import {EXIT, ExitPaths} from '../terminal/exit-paths.js';
import {words} from '../words/index.js';
import {storeText} from '../words/store-text.js';
import {canAsk, printLines, printOut, refuseWith, sayFault} from './print.js';

const say = words.commands.exchange;

type Options = {readonly file: string; readonly yes?: boolean | undefined; readonly data?: string | undefined};

/** Broken or foreign content is bad input; everything else could not be read or written. */
const statusOf = (code: StoreErrorCode): number => {
	if (code === 'damaged' || code === 'missing') return EXIT.usage;
	return code === 'locked' ? EXIT.locked : EXIT.cannotReadOrWrite;
};

/**
 * `armdrift import`: shows what of an export is new here, and adds it after a yes. The whole file is looked at before
 * anything is written, and nothing that is here is ever replaced.
 * @returns exit status
 */
export async function runImport({file, yes = false, data}: Options): Promise<number> {
	try {
		const dataDir = dataDirectory({flag: data, env: process.env});
		const opened = new ImportFile(file);
		try {
			const store = storeOf(dataDir, () => new Date(), sayFault);
			return await imported({opened, name: path.basename(file), store, yes});
		} finally {
			opened.close();
		}
	} catch (error) {
		const {code, sentence} = hindranceOf(error);
		return refuseWith(sentence, statusOf(code));
	}
}

type Import = {readonly opened: ImportFile; readonly name: string; readonly store: CheckStore; readonly yes: boolean};

async function imported(one: Import): Promise<number> {
	const ids = checkedIds(one.opened);
	if (one.yes || canAsk()) return underLock(one, ids);
	const plan = importPlan(one.opened, ids, one.store);
	const shown = await printLines(planLines(one.name, one.opened, plan));
	if (shown !== EXIT.done || addsNothing(plan)) return shown;
	return refuseWith(say.nobodyToAsk);
}

/** From the look at the data folder to the last write nobody else writes. */
async function underLock({opened, name, store, yes}: Import, ids: readonly string[]): Promise<number> {
	const addition = new Addition(opened, store);
	const paths = new ExitPaths({partingText: () => addition.stoppedText()});
	paths.install();
	const lock = store.lock();
	if (!lock.held) throw lock.error;
	paths.onLeave(lock.release);
	try {
		sayFault(...lock.notices.map(storeText));
		const plan = importPlan(opened, ids, store);
		const shown = await printLines(planLines(name, opened, plan));
		if (shown !== EXIT.done || addsNothing(plan)) return shown;
		if (!yes && !(await isConfirmed())) return await printLines([say.nothingChanged]);
		await addition.run(plan);
		return await printLines([say.added(newPartsOf(plan))]);
	} finally {
		lock.release();
	}
}

/** Asks until there is a y or an n; the end of input is a no. */
async function isConfirmed(): Promise<boolean> {
	// Not in raw mode, so that the terminal itself makes a signal of Ctrl+C.
	const reader = createInterface({input: process.stdin, terminal: false});
	try {
		await printOut(say.addIt);
		for await (const line of reader) {
			if (/^\s*y(es)?\s*$/i.test(line)) return true;
			if (/^\s*no?\s*$/i.test(line)) return false;
			await printOut(say.addIt);
		}
		return false;
	} finally {
		reader.close();
	}
}

/** What an import would add, what is here already, and what is left out and why. */
export function planLines(name: string, file: ImportFile, plan: ImportPlan): string[] {
	const {same, profiles, settings} = plan;
	const {count: checks, exportedAt, program} = file;
	const here = {checks: same, profiles: profiles.same, settings: settings === 'same'};
	return [
		say.head({name, checks, exportedAt, program}),
		addsNothing(plan) ? say.nothingNew : say.newParts(newPartsOf(plan)),
		...(here.checks + here.profiles > 0 || here.settings ? [say.hereAlready(here)] : []),
		...plan.clashes.map((id) => say.checkClash({id})),
		...(plan.openHere === undefined ? [] : [say.openHere({id: plan.openHere})]),
		...plan.remarkClashes.map((id) => say.remarkClash({id})),
		...profiles.clashes.map(say.profileClash),
		...(settings === 'own' ? [say.ownSettings] : []),
		...[...file.unknownKeys].map((key) => say.unknownKey({key})),
	];
}

const newPartsOf = ({newChecks, newRemarks, profiles, settings}: ImportPlan) => ({
	checks: newChecks.length,
	remarks: newRemarks.length,
	profiles: profiles.added.length,
	settings: settings === 'new',
});
