import path from 'node:path';
import {type CheckStore, storeOf} from '../desk/stored-forms.js';
import {Addition} from '../exchange/addition.js';
import {ImportFile} from '../exchange/import-file.js';
import {addsNothing, checkedIds, hasClashes, type ImportPlan, importPlan} from '../exchange/import-plan.js';
import {yesOrNo} from '../spellings.js';
import {dataDirectory} from '../store/data-directory.js';
import {EXIT, ExitPaths} from '../terminal/exit-paths.js';
import {words} from '../words/index.js';
import {storeText} from '../words/store-text.js';
import {canAsk, orRefuse, printLines, refuseWith, sayFault} from './print.js';
import {typedLines} from './typed-lines.js';

const say = words.commands.exchange;

type Options = {readonly file: string; readonly yes?: boolean | undefined; readonly data?: string | undefined};

/**
 * `armdrift import`: shows what of an export is new here, and adds it after a yes. The whole file is looked at before
 * anything is written, and nothing that is here is ever replaced.
 * @returns exit status
 */
export function runImport({file, yes = false, data}: Options): Promise<number> {
	// Broken or foreign content is bad input; everything else could not be read or written.
	return orRefuse(
		async () => {
			const dataDir = dataDirectory({flag: data, env: process.env});
			const opened = new ImportFile(file);
			try {
				const store = storeOf(dataDir, () => new Date(), sayFault);
				return await imported({opened, name: path.basename(file), store, yes});
			} finally {
				opened.close();
			}
		},
		({code}) => code === 'damaged' || code === 'missing',
	);
}

type Import = {readonly opened: ImportFile; readonly name: string; readonly store: CheckStore; readonly yes: boolean};

async function imported(one: Import): Promise<number> {
	const ids = checkedIds(one.opened);
	if (one.yes || canAsk()) return underLock(one, ids);
	const plan = importPlan(one.opened, ids, one.store);
	const shown = await printLines(planLines(one.name, one.opened, plan));
	if (shown !== EXIT.done) return shown;
	if (addsNothing(plan)) return statusOf(plan);
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
		if (shown !== EXIT.done) return shown;
		if (addsNothing(plan)) return statusOf(plan);
		if (!yes && !(await isConfirmed())) return await printLines([say.nothingChanged]);
		await addition.run(plan);
		const told = await printLines([say.added(newPartsOf(plan))]);
		return told === EXIT.done ? statusOf(plan) : told;
	} finally {
		lock.release();
	}
}

/** How an import ends that could do all it wanted: another content that was left out must not go unnoticed. */
const statusOf = (plan: ImportPlan): number => (hasClashes(plan) ? EXIT.leftOut : EXIT.done);

/** Asks until there is a yes or a no; the end of input is a no. */
async function isConfirmed(): Promise<boolean> {
	for await (const line of typedLines(say.addIt)) {
		const answer = yesOrNo(line);
		if (answer !== undefined) return answer === 'yes';
	}
	return false;
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
		...plan.remarksUnread.map(({id, fault}) => say.remarkUnread({id, sentence: storeText(fault)})),
		...profiles.named.map(({theirs, ours, next: {kind, name}, isTwofold}) =>
			say.profileNamed({kind, name, here: ours.name, there: theirs.name, isTwofold}),
		),
		...profiles.clashes.map(say.profileClash),
		...(settings === 'own' ? [say.ownSettings] : []),
		...[...file.unknownKeys].map((key) => say.unknownKey({key})),
	];
}

const newPartsOf = ({newChecks, newRemarks, profiles, settings}: ImportPlan) => ({
	checks: newChecks.length,
	remarks: newRemarks.length,
	profiles: profiles.added.length,
	named: profiles.named.length,
	noted: profiles.noted.length,
	settings: settings === 'new',
});
