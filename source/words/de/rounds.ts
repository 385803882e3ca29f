import type {LimitAsked} from '../../procedure/steps-probe.js';

const nudged = {
	innerLimit: 'Headshell in kleinen Schritten nach INNEN stupsen. Letzten Wert eintippen, bei dem der Arm hielt.',
	outerLimit: 'Headshell in kleinen Schritten nach AUSSEN stupsen. Letzten Wert eintippen, bei dem der Arm hielt.',
};
const started = {
	innerLimit: 'Langsam zum RAND drücken. Messwert eintippen, bei dem der Arm sich bewegt.',
	outerLimit: 'Langsam zur TELLERACHSE drücken. Messwert eintippen, bei dem der Arm sich bewegt.',
};

/** What is said round by round. */
export const rounds = {
	/** How a limit is found, in the words of the gauge's convention. The place names the limit, not its sign. */
	limit: ({which, isTurned, showsHand}: LimitAsked): string => {
		const find = (showsHand ? started : nudged)[which];
		if (isTurned) return `${find} Vorzeichen so, wie der gedrehte Kraftmesser es zeigt.`;
		return showsHand
			? `${find} Vorzeichen so, wie der Kraftmesser es zeigt. Außen und innen: wohin der ARM drückt.`
			: find;
	},
	/** What the hands do before a round after the first at a place. */
	turned: 'Arm hoch, Kraftmesser um 180° drehen, Arm runter.',
	turnedBack: 'Arm hoch, Kraftmesser zurückdrehen, an dieselbe Stelle, Arm runter.',
	anew: 'Arm hoch, Kraftmesser weg und zurück an dieselbe Stelle, Arm runter.',
	/** Where the gauge goes to another radius: dragged along under the arm it would bend the cantilever. */
	moved: 'Erst den Arm mit dem Lift heben.',
	/** The same with a gauge that is pushed by hand. */
	inHand: {
		turned: 'Arm in die Stütze. Kraftmesser um 180° drehen. Arm schweben lassen.',
		turnedBack: 'Arm in die Stütze. Kraftmesser zurückdrehen. Arm schweben lassen.',
		anew: 'Arm in die Stütze. Kraftmesser neu ansetzen. Arm schweben lassen.',
		moved: 'Schwebenden Arm am Fingergriff zum anderen Radius führen.',
	},
};
