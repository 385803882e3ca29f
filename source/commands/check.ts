import {nothingToRepeat} from '../desk/archive.js';
import {Hindrance} from '../desk/hindrance.js';
import {OpenWorkbench} from '../desk/open-workbench.js';
import {readText} from '../procedure/read-answer.js';
import {namesOf} from '../results/years/arms.js';
import {armMeant, knownArms} from '../results/years/arms-named.js';
import {dataDirectory} from '../store/data-directory.js';
import {openOnDesktop} from '../terminal/open-on-desktop.js';
import {words} from '../words/index.js';
import {refusalText} from '../words/step-text.js';
import type {Opened, Workbench} from '../workbench.js';
import {type FaceFlags, onFace} from './face.js';
import {refuseWith, sayFault} from './print.js';
import {reportsBeside} from './report-file.js';
import {Seat, startedAs} from './seat.js';

export type CheckFlags = FaceFlags & {
	readonly arm?: string;
	/** The last check of the arm is repeated. */
	readonly recheck?: boolean;
	readonly data?: string;
	readonly version: string;
};

/** The check itself, on the face that the terminal can show. @returns exit status */
export function runCheck(flags: CheckFlags): Promise<number> {
	const {arm, recheck = false, data, version} = flags;
	const name = arm === undefined ? undefined : readText(arm.trim());
	if (name?.kind === 'refused') {
		const because = refusalText(name.refusal);
		return Promise.resolve(refuseWith(words.commands.optionRefused({option: '--arm', because})));
	}
	return onFace(flags, async () => {
		const dataDir = dataDirectory({flag: data, env: process.env});
		const workbench = new OpenWorkbench({dataDir, version});
		workbench.reports = reportsBeside(workbench.archive, {
			version,
			show: (file) => void openOnDesktop(file, {platform: process.platform, variables: process.env}),
		});
		workbench.look();
		const meant = arm === undefined ? {} : armMeantAt(workbench, arm.trim(), recheck);
		if (meant.refusal !== undefined) throw new Hindrance('missing', dataDir, meant.refusal);
		if (meant.taken !== undefined) sayFault(meant.taken);
		const {unknown, ...opening} = await openArm(workbench, {arm: meant.arm, recheck});
		// Those who come to the first screen read it there.
		if (unknown !== undefined || opening.opened) sayFault(...workbench.notices());
		if (unknown !== undefined) {
			workbench.archive.assertListed();
			throw new Hindrance('missing', dataDir, unknown);
		}
		const practise = async () => (await import('./practice-desk.js')).practiceDesk({data, version});
		return {seat: new Seat({workbench, goOn: startedAs(process.env, data), practise}), ...opening};
	});
}

type ArmMeantAt = {
	/** Its name of today, or a name that nothing is known of. */
	readonly arm?: string;
	/** To be said where it was named by a part of its name. */
	readonly taken?: string;
	/** One sentence, where it may be one of several. */
	readonly refusal?: string;
};

/** The arm that is meant by a name or a part of one. */
function armMeantAt(workbench: Workbench, typed: string, isRecheck: boolean): ArmMeantAt {
	const {several, taken, takenOrNew} = words.commands.armNamed;
	const kept = workbench.profiles();
	// The past checks need not be read where a profile has the name.
	const isKept = kept.some(({kind, name}) => kind === 'arm' && name === typed);
	const meant = armMeant(typed, knownArms(isKept ? [] : workbench.archive.checkedArms(), kept));
	if (meant.found === 'several') return {refusal: several({typed, arms: meant.arms})};
	if (meant.found === 'none') return {arm: typed};
	const {arm, isExact} = meant;
	return {arm, ...(isExact ? {} : {taken: (isRecheck ? taken : takenOrNew)({typed, arm})})};
}

/** What the command line asks for: a full check of a named arm, or the last check of an arm repeated. */
type OpeningWanted = {readonly arm?: string | undefined; readonly recheck?: boolean};

type OpenedArm = {
	readonly opened?: Opened;
	readonly notice?: string;
	/** One sentence: nothing of what was named is known. */
	readonly unknown?: string;
};

/**
 * What `--arm NAME` or `recheck` lead to: the open check of that arm is taken up again, else a new one starts. An open
 * check of another arm is never put aside without a question.
 */
export async function openArm(workbench: Workbench, {arm, recheck = false}: OpeningWanted): Promise<OpenedArm> {
	if (arm === undefined && !recheck) return {};
	const unfinished = workbench.unfinished();
	const isOpen =
		unfinished !== undefined && arm !== undefined && namesOf(arm, workbench.profiles()).includes(unfinished.arm);
	if (isOpen) return {opened: await workbench.resume()};
	const {archive} = workbench;
	// Said before anything else, an open check of another arm too: that would be in nobody's way.
	if (recheck && arm !== undefined && archive.ofArm(arm).length === 0)
		return {unknown: nothingToRepeat(arm, archive.checkedArms())};
	if (!unfinished) return {opened: await (recheck ? workbench.recheck(arm) : workbench.start(arm))};
	const {notRepeated, notStarted} = words.beside.home;
	return {notice: arm === undefined ? notRepeated(unfinished) : notStarted({arm: unfinished.arm, asked: arm})};
}
