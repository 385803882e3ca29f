import {namesOf} from '../results/years/arms.js';
import {words} from '../words/index.js';
import type {Opened, Workbench} from '../workbench.js';
import {nothingToRepeat} from './archive.js';

/** What the command line asks for: a full check of a named arm, or the last check of an arm repeated. */
export type Asked = {readonly arm?: string | undefined; readonly recheck?: boolean};

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
export async function openArm(workbench: Workbench, {arm, recheck = false}: Asked): Promise<OpenedArm> {
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
