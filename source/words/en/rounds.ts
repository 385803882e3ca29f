import type {LimitAsked} from '../../procedure/steps-probe.js';

const nudged = {
	innerLimit: 'Nudge INWARD in small steps. Type the last reading at which the arm still held.',
	outerLimit: 'Nudge OUTWARD in small steps. Type the last reading at which the arm still held.',
};
const started = {
	innerLimit: 'Push slowly toward the RIM. Type the reading at which the arm starts.',
	outerLimit: 'Push slowly toward the SPINDLE. Type the reading at which the arm starts.',
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
	turned: 'Arm up; turn the gauge end for end on its mark; arm down.',
	turnedBack: 'Arm up; turn the gauge back, on its mark; arm down.',
	anew: 'Arm up; gauge away and back on its mark; arm down.',
	/** Where the gauge goes to another radius: dragged along under the arm it would bend the cantilever. */
	moved: 'Arm up by its lifter; move the gauge; arm down.',
	/** The same with a gauge that is pushed by hand. */
	inHand: {
		turned: 'Arm to its rest; turn the gauge end for end in your hand; let the arm float.',
		turnedBack: 'Arm to its rest; turn the gauge back in your hand; let the arm float.',
		anew: 'Arm to its rest; take the gauge up anew; let the arm float at its mark.',
		moved: 'Bring the floating arm to the other radius by its finger lift.',
	},
};
