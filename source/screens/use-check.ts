import {useState} from 'react';
import type {Dialogue} from '../check/dialogue.js';
import type {Entry} from '../check/entry.js';
import type {Filed} from '../pages/beside/page.js';
import {afterSaving, checkTurn} from '../pages/check-turn.js';
import type {Workbench} from '../workbench.js';
import {useKeys} from './keys-context.js';

export type CheckProps = {
	readonly workbench: Workbench;
	readonly initial: Dialogue;
	/** The check is left for the first page: by going back from its first question, or where it could not be filed. */
	readonly onHome: () => void;
	readonly onFinished: (record: Filed) => void;
};

/** What could not be put on the disk, and why. */
export type NotSaved = {
	readonly dialogue: Dialogue;
	readonly sentence: string;
	/** The answer is there; only the check as a whole could not be filed. */
	readonly answerSaved: boolean;
};

export type OpenCheck = {
	readonly dialogue: Dialogue;
	readonly unsaved: NotSaved | undefined;
	readonly enter: (entry: Entry) => void;
	/** Tries once more to save what could not be saved. */
	readonly retry: () => void;
	/** Goes back to the question without that answer; where only the filing failed, leaves the check open. */
	readonly drop: () => void;
	/** Shows a sentence where it would be told why an entry is not taken. */
	readonly say: (sentence: string) => void;
};

/**
 * The conversation on the screen. An answer is on the disk before the next question shows: keys wait meanwhile.
 *
 * @param onNext called when something else is asked
 * @param onRefused called when an entry is not taken: the question stays, and what was typed
 */
export function useCheck(
	{workbench, initial, onHome, onFinished}: CheckProps,
	onNext: () => void,
	onRefused: () => void,
): OpenCheck {
	const keys = useKeys();
	const [dialogue, setDialogue] = useState(initial);
	const [unsaved, setUnsaved] = useState<NotSaved>();

	const show = (next: Dialogue): void => {
		setDialogue(next);
		setUnsaved(undefined);
		onNext();
	};
	const save = async (next: Dialogue): Promise<void> => {
		keys?.hold();
		try {
			const saved = await workbench.save(next);
			if (!saved.ok) setUnsaved({dialogue: next, sentence: saved.sentence, answerSaved: saved.answerSaved ?? false});
			else if (saved.finished) onFinished(saved.finished);
			else show(afterSaving(next, saved, workbench));
		} finally {
			keys?.release();
		}
	};
	const enter = (entry: Entry): void => {
		const turn = checkTurn(dialogue, entry, workbench.now());
		if (turn.kind === 'home') onHome();
		else if (turn.kind === 'save') void save(turn.dialogue);
		else if (turn.kind === 'go') show(turn.dialogue);
		else {
			setDialogue(turn.dialogue);
			onRefused();
		}
	};
	return {
		dialogue,
		unsaved,
		enter,
		retry: () => {
			if (unsaved) void save(unsaved.dialogue);
		},
		drop: () => {
			if (unsaved?.answerSaved) onHome();
			else setUnsaved(undefined);
		},
		say: (sentence) => setDialogue((now) => ({...now, refusal: {id: 'as-told', values: {sentence}}})),
	};
}
