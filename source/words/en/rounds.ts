import type {LimitAsked} from '../../procedure/steps-probe.js';

const nudged = {
	innerLimit: 'Nudge the headshell INWARD in small steps. Type the last reading that held.',
	outerLimit: 'Nudge the headshell OUTWARD in small steps. Type the last reading that held.',
};
const started = {
	innerLimit: 'Push slowly toward the RIM. Type the reading at which the arm starts to move.',
	outerLimit: 'Push slowly toward the SPINDLE. Type the reading at which the arm starts to move.',
};

/** What is said round by round. */
export const rounds = {
	/** How a limit is found, in the words of the gauge's convention. The place names the limit, not its sign. */
	limit: ({which, isTurned, showsHand}: LimitAsked): string => {
		const find = (showsHand ? started : nudged)[which];
		if (isTurned) return `${find} Type + or − as the turned gauge shows it.`;
		return showsHand ? `${find} Type + or − as the gauge shows it. Out and in: how the ARM pushes.` : find;
	},
	/** What the hands do before a round after the first at a place. */
	turned: 'Arm up, turn the gauge end for end, arm down.',
	turnedBack: 'Arm up, turn the gauge back, same place, arm down.',
	anew: 'Arm up, gauge away and back to the same place, arm down.',
	/** Where the gauge goes to another radius: dragged along under the arm it would bend the cantilever. */
	moved: 'Arm up by its lifter first.',
	/** The same with a gauge that is pushed by hand. */
	inHand: {
		turned: 'Arm to its rest. Turn the gauge end for end. Float the arm.',
		turnedBack: 'Arm to its rest. Turn the gauge back. Float the arm.',
		anew: 'Arm to its rest. Take the gauge up again. Float the arm.',
		moved: 'Move the floating arm to the other radius by its finger lift.',
	},
};
