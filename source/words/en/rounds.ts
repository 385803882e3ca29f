import type {LimitAsked} from '../../procedure/steps-probe.js';

const nudged = {
	innerLimit: 'Nudge INWARD in small steps. Type the last reading at which the arm still held.',
	outerLimit: 'Nudge OUTWARD in small steps. Type the last reading at which the arm still held.',
};
const started = {
	innerLimit: 'Push the arm gently toward the RIM. Type the reading at which it just starts.',
	outerLimit: 'Push the arm gently toward the SPINDLE. Type the reading at which it just starts.',
};

/** What is said round by round. */
export const rounds = {
	/** How a limit is found, in the words of the gauge's convention. The place names the limit, not its sign. */
	limit: ({which, isTurned, showsHand}: LimitAsked): string => {
		const find = (showsHand ? started : nudged)[which];
		if (isTurned) return `${find} Its sign is + or − as the turned gauge stands.`;
		return showsHand ? `${find} Its sign is + or − as the gauge stands; out and in mean the way the ARM pushes.` : find;
	},
	/** What the hands do before a round after the first at a place. */
	turned: 'Lift the arm. Turn the gauge end for end on its mark. Lower the arm onto it.',
	turnedBack: 'Lift the arm. Turn the gauge back and set it on its mark. Lower the arm onto it.',
	anew: 'Lift the arm. Take the gauge away and set it anew on its mark. Lower the arm onto it.',
	/** Where the gauge goes to another radius: dragged along under the arm it would bend the cantilever. */
	moved: 'Lift the arm with its lifter, move the gauge, lower the arm onto it.',
};
