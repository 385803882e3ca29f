import {progressOf} from '../check/progress.js';
import {printable} from '../terminal/printable.js';
import type {OpenWorkbench} from './open-workbench.js';

/** The last line on the normal screen: what is saved and how to go on. */
export function partingLine(workbench: OpenWorkbench): string {
	const check = workbench.openCheck();
	if (!check) return workbench.farewell();
	const {current, facts} = progressOf(check, workbench.profiles());
	const arm = printable(facts.text('arm-name') ?? 'a new arm', 40);
	return `Saved: the check of ${arm} stands at '${current?.title ?? 'its end'}'. Deck not ready to play. Go on with: armdrift`;
}
