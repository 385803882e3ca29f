import {otherArmOpen} from '../findings/home.js';
import type {Opened, Workbench} from '../workbench.js';

type OpenedArm = {readonly opened?: Opened; readonly notice?: string};

/**
 * What `--arm NAME` leads to: the open check of that arm is taken up again, else a new one starts. An open check of
 * another arm is never put aside without a question.
 */
export async function openArm(workbench: Workbench, arm: string | undefined): Promise<OpenedArm> {
	if (arm === undefined) return {};
	const unfinished = workbench.unfinished();
	if (!unfinished) return {opened: await workbench.start(arm)};
	if (unfinished.arm === arm) return {opened: await workbench.resume()};
	return {notice: otherArmOpen(arm, unfinished)};
}
