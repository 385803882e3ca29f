import type {Remark} from './stored-forms.js';

export type Marked = {readonly ok: true; readonly remark: Remark} | {readonly ok: false; readonly sentence: string};

/** What is noted beside a check once it is void; what was noted before stays. */
export function markedVoid(remark: Remark | undefined, reason: string, at: string): Marked {
	if (remark?.void) return {ok: false, sentence: `That check is void already: ${remark.void.reason}.`};
	return {ok: true, remark: {...remark, void: {reason, at}}};
}

/** What is noted beside a check that counts again: the mark and its end stay on record. */
export function countingAgain(remark: Remark | undefined, at: string): Marked {
	if (!remark?.void) return {ok: false, sentence: 'That check is not void.'};
	const {void: mark, formerVoids = [], ...rest} = remark;
	return {ok: true, remark: {...rest, formerVoids: [...formerVoids, {...mark, takenBackAt: at}]}};
}
