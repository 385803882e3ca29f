import {type UnitId, units} from '../../../units.js';
import {plainNumber} from '../../numbers.js';

type UpTo = {goodPct: number; usablePct: number};

/** How it was measured and how sure it is, in plain words. */
export const method = {
	gauge:
		'The gauge carries the arm where the stylus would be, and reads how hard the arm pushes sideways. The technician nudges the arm in small steps, toward the spindle, then toward the rim. Friction holds it until it lets go. The last reading that held on each side is a limit. Both limits make a round.',
	readings: ({isOfHand}: {isOfHand: boolean}) =>
		`${isOfHand ? 'The gauge shows the force of the hand that just starts the arm. So each reading was negated, and the two limits were swapped.' : 'Each reading is the force of the arm on the gauge.'} Positive, or "out", is toward the rim; negative, or "in", is toward the spindle. For the probe the bias is off, and the damping does not touch the arm. Where that was not so, the overridden steps say it. The guard stays on to protect the cantilever, and its mass counts in the tracking force.`,
	series:
		'Rounds with nothing changed between them are a series. Figures never mix series; the verdict is on the last one that was measured. A round with the gauge turned end for end tells its zero from the pull of the arm. The closing round, back at the first radius, counts like any other. It shows whether anything moved since the first.',
	sidePull: ({goodPct, usablePct}: UpTo) =>
		`Pull: the middle of both limits. Leads, bearings and level make it. Good to ${plainNumber(goodPct)} %, usable to ${plainNumber(usablePct)} %.`,
	holdBand: ({goodPct, usablePct}: UpTo) =>
		`Friction: the distance between the limits. Good to ${plainNumber(goodPct)} %, usable to ${plainNumber(usablePct)} %. Half of it, the breakaway, just moves the arm either way.`,
	tiltShare:
		"Tilt's share: what the tilt of the deck makes of the pull. It stands beside the pull and is never taken off.",
	percent:
		'All of them are percent of the playing force. How much is good and how much is usable is set in the program. Its defaults are from memory of trade practice; no published values were found.',
	intervals:
		'Every ± is for 95 %: about ninety-five of a hundred such intervals hold the true value. It counts only what is listed here. A verdict is given only where the figure and its whole ± lie on one side of a limit. Else it is undecided, and the report says what would decide it.',
	/** Of figures that an earlier version issued: they stay as they are. */
	issuedBefore:
		'An earlier version of the program issued these figures. Their ± leave out what setting up arm and gauge does to a pull (0.3 %). They also leave out how little a few rounds tell of the zero of the gauge.',
	squares:
		'These parts are added as squares (JCGM 100:2008). With few rounds, the Student factor for that many widens the ±.',
	/** What went into the ±, as it was stated or found. */
	budget: {
		step: 'reading step of the gauge',
		nudge: 'nudge',
		inGauge: ({value, unit}: {value: number; unit: UnitId}) => `${plainNumber(value)} ${units[unit].label}`,
		zero: 'zero of the gauge',
		zeroTurned: 'found by turning the gauge; its ± comes from the same rounds',
		zeroStated: ({value, unit}: {value: number; unit: UnitId}) =>
			`read free of the arm; standard uncertainty ${plainNumber(value)} ${units[unit].label}`,
		zeroUnchecked: 'not checked: half a percent, or a step, counts either way',
		scale: 'scale of the gauge',
		force: 'tracking force',
		ofFigure: ({pct}: {pct: number}) => `standard uncertainty ${plainNumber(pct)} % of the figure`,
		repeats: 'how well rounds repeat',
		repeatsPooled: 'from the rounds of all radii together',
		repeatsAssumed: 'assumed: 0.3 % for a middle, 0.6 % for the friction',
		settingUp: 'setting up',
		setAnew: 'the gauge was set again for each round, so the rounds show it',
		notSetAnew: '0.3 % of the playing force',
	},
};

/** What stands in every report, the same as in the manual. */
export const cautions: readonly string[] = [
	'People and amplifiers. Mute or switch off the amplifier before you touch the stylus. Keep the volume down when the stylus first meets a record again. Unplug the mains before you open anything.',
	"Licensed work. armdrift looks at mechanics only. Leave wiring, earthing and repair to licensed or authorised people, under your local codes. Follow the maker's instructions: the warranty may forbid touching a bearing. Adjust no bearing without the maker's procedure.",
	'Stylus and cantilever. The stylus is sharp, and its cantilever breaks at a touch. Keep the guard on until the very last step. Never press down on the guard of a unipivot arm.',
	"The deck. Until the put-back list is done, every screen says that the deck is not ready to play. The guard's mass must not stay in the tracking force.",
];

/** What the method cannot do, the same as in the manual. */
export const limitsOfMethod: readonly string[] = [
	'The probe sees pull and friction at rest. It does not see resonance, play in a bearing, or what a warped record does.',
	'Readings in percent are only as good as the tracking force that the gauge carries. The guard counts in it.',
	'A limit is read at the last nudge that held, so it falls short by half a nudge on average. The friction is corrected for that.',
	'Where nobody checked the zero of the gauge, the ± counts half a percent (or a step) either way. A gauge that is farther off deceives.',
	'The room matters: leads and oil stiffen in the cold. Tilt counts fully for an arm loaded by gravity, hardly at all for a spring-loaded one.',
	'A comparison takes the ± of two checks as independent. Where both share an error of the gauge, it does not show as a change.',
	'The drag behind the wanted reading is assumed. It changes with record, stylus and music. Readings with the bias on are usually one round a radius, and have no ± of their own.',
	'With one round at each radius the scatter is assumed. The ± may then hold the truth in far fewer than 95 of 100 cases.',
	'The ± covers reading step, nudge, scatter, setting up, zero and scale. It cannot cover a step that was confirmed but not done. Nor can it cover a force that wanders while the limits are sought (draught, a shaking table). A wander of 0.2 % takes 0.2 to 0.3 % off the friction (simulated, not measured).',
];
