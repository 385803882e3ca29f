import type {Workbench} from '../../workbench.js';
import {go, type Turn} from './page.js';
import type {BesidePlace, OtherCheck} from './places.js';

/** To another check; one that is open is put aside only when asked. */
export function toOther(workbench: Workbench, other: OtherCheck): Turn<BesidePlace> {
	const unfinished = workbench.unfinished();
	return unfinished ? go({at: 'check-open', unfinished, other}) : opening(workbench, other);
}

/** To the open check, or to another one. */
export const opening = (workbench: Workbench, other: OtherCheck | 'resume'): Turn<BesidePlace> => ({
	kind: 'open',
	open: () => {
		if (typeof other !== 'object') return workbench[other]();
		if ('reopen' in other) return workbench.reopen(other.reopen);
		return 'start' in other ? workbench.start(other.start) : workbench.recheck(other.recheck);
	},
});
