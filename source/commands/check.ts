import {readText} from '../procedure/read-answer.js';
import {dataDirectory} from '../store/data-directory.js';
import {StoreError} from '../store/store-error.js';
import {EXIT} from '../terminal/exit-paths.js';
import {refusalText} from '../words/step-text.js';
import {openArm} from './open-arm.js';
import {OpenWorkbench} from './open-workbench.js';
import {startedAs} from './parting-lines.js';
import {Seat} from './seat.js';
import {type FaceFlags, onFace, refuse} from './show-face.js';

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
	if (name?.kind === 'refused') return Promise.resolve(refuse(`--arm: ${refusalText(name.refusal)}`, EXIT.usage));
	return onFace(flags, async () => {
		const dataDir = dataDirectory({flag: data, env: process.env});
		const workbench = new OpenWorkbench({dataDir, version});
		workbench.look();
		const {unknown, ...opening} = await openArm(workbench, {arm: arm?.trim(), recheck});
		if (unknown !== undefined) throw new StoreError('missing', dataDir, unknown);
		const practise = async () => (await import('./practice-desk.js')).practiceDesk({data, version});
		return {seat: new Seat({workbench, goOn: startedAs(process.env, data), practise}), ...opening};
	});
}
