import {useState} from 'react';
import type {Dialogue} from '../check/dialogue.js';
import {type Entry, respond} from '../check/respond.js';
import {afterSaving} from '../pages/after-saving.js';
import type {FinishedCheck} from '../results/record.js';
import type {Workbench} from '../workbench.js';
import {useKeys} from './keys-context.js';

export type CheckProps = {
	readonly workbench: Workbench;
	readonly initial: Dialogue;
	/** Back from the first step: home is shown. */
	readonly onHome: () => void;
	readonly onFinished: (record: FinishedCheck) => void;
};

/** An answer that is not on the disk yet, and why. */
type Unsaved = {
	readonly dialogue: Dialogue;
	readonly sentence: string;
	/** Only the filing failed. */
	readonly answerSaved: boolean;
};

export type OpenCheck = {
	readonly dialogue: Dialogue;
	readonly unsaved: Unsaved | undefined;
	readonly enter: (entry: Entry) => void;
	/** Tries to save the answer that could not be saved, or drops it. */
	readonly retry: () => void;
	readonly drop: () => void;
	/** Says something in place of a refusal. */
	readonly say: (sentence: string) => void;
};

/**
 * The conversation on the screen. An answer is on the disk before the next question shows: keys wait meanwhile.
 *
 * @param onNext called with each new question; what was typed for the last one is done with
 * @param onRefused called when the entry stays where it is
 */
export function useCheck(
	{workbench, initial, onHome, onFinished}: CheckProps,
	onNext: (dialogue: Dialogue) => void,
	onRefused: () => void,
): OpenCheck {
	const keys = useKeys();
	const [dialogue, setDialogue] = useState(initial);
	const [unsaved, setUnsaved] = useState<Unsaved>();

	const show = (next: Dialogue): void => {
		setDialogue(next);
		setUnsaved(undefined);
		onNext(next);
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
		const next = respond(dialogue, entry, workbench.now());
		if (!next) onHome();
		else if (next.check !== dialogue.check) void save(next);
		else if (next.refusal === undefined) show(next);
		else {
			setDialogue(next);
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
		say: (sentence) => setDialogue((now) => ({...now, refusal: {id: 'not-read', values: {sentence}}})),
	};
}
