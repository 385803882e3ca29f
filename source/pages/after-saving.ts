import type {Dialogue} from '../check/dialogue.js';
import type {Saved, Workbench} from '../workbench.js';

/** A dialogue whose answer is on the disk: with what the workbench has noted beside it, and with what is on file by now. */
export const afterSaving = (
	next: Dialogue,
	{kept = next.check, notice}: Extract<Saved, {ok: true}>,
	workbench: Workbench,
): Dialogue => ({
	...next,
	check: kept,
	...(notice === undefined ? {} : {notice}),
	profiles: workbench.profiles(),
	history: workbench.archive.history(kept),
});
