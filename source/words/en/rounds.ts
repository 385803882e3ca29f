import type {LimitAsked} from '../../procedure/steps-probe.js';

const nudged = {
	innerLimit: 'Nudge the arm INWARD in small steps. At the INNERMOST place where it still holds:',
	outerLimit: 'Nudge the arm OUTWARD in small steps. At the OUTERMOST place where it still holds:',
};
const started = {
	innerLimit: 'Push slowly toward the RIM until the arm starts:',
	outerLimit: 'Push slowly toward the SPINDLE until the arm starts:',
};

/** What is said round by round. */
export const rounds = {
	/** How a limit is found, in the words of the gauge's convention. The place names the limit, not its sign. */
	limit: ({which, isTurned, showsHand}: LimitAsked): string => {
		const find = (showsHand ? started : nudged)[which];
		if (isTurned) return `${find} what does the turned gauge show, + or − as it stands there?`;
		return showsHand
			? `${find} what does the gauge show, + or − as it stands there? (out and in mean the way the ARM pushes.)`
			: `${find} what does the gauge show?`;
	},
	/** What the hands do before a round after the first at a place. */
	turned: 'Lift the arm. Turn the gauge end for end on its mark. Lower the arm onto it.',
	turnedBack: 'Lift the arm. Turn the gauge back and set it on its mark. Lower the arm onto it.',
	anew: 'Lift the arm. Take the gauge away and set it anew on its mark. Lower the arm onto it.',
	/** Where the gauge goes to another radius: dragged along under the arm it would bend the cantilever. */
	moved: 'Lift the arm with its lifter, move the gauge, lower the arm onto it.',
	/** The same with a gauge that is pushed by hand. */
	inHand: {
		turned: 'Arm to its rest. Turn the gauge end for end in your hand. Let the arm float again.',
		turnedBack: 'Arm to its rest. Turn the gauge back in your hand. Let the arm float again.',
		anew: 'Arm to its rest. Take the gauge up anew. Let the arm float at its mark again.',
		moved: 'Bring the floating arm to the other radius by its finger lift.',
	},
};
