import {type UnitId, units} from '../../../units.js';
import {plainNumber} from '../../numbers.js';

type UpTo = {goodPct: number; usablePct: number};

/** How it was measured and how sure it is, in plain words. */
export const method = {
	gauge:
		'A gauge carries the arm where the stylus would be and reads the force with which the arm pushes sideways. Nudged in small steps toward the spindle and toward the rim, the arm still holds until friction lets it go: the last readings on both sides are the two hold limits. One pair of them is a round.',
	readings: ({isOfHand}: {isOfHand: boolean}) =>
		`${isOfHand ? 'The gauge shows the force of the hand that just starts the arm: each such reading was negated, and the two limits were exchanged.' : 'Each reading is the force that the arm exerts on the gauge.'} Positive, or "out", is toward the rim; negative, or "in", is toward the spindle. For the probe the bias is off and damping is out of action; where that was not so, it stands among what was overridden. The stylus guard stays on to protect the cantilever, and its mass counts in the tracking force.`,
	series:
		'Rounds taken with nothing changed in between are a series; figures never mix series, and the verdict is on the last one that was measured. With the gauge turned end for end, one round tells the zero of the gauge from the pull of the arm. The closing round, back at the first radius, counts like any other and shows whether anything moved meanwhile.',
	sidePull: ({goodPct, usablePct}: UpTo) =>
		`Pull: the middle of both limits, made by wiring, bearings and level; good to ${plainNumber(goodPct)} %, usable to ${plainNumber(usablePct)} %.`,
	holdBand: ({goodPct, usablePct}: UpTo) =>
		`Friction: the distance between the limits (hold band); good to ${plainNumber(goodPct)} %, usable to ${plainNumber(usablePct)} %. Half of it, the breakaway, just moves the arm either way.`,
	tiltShare:
		"Tilt's share: what the tilt of the deck makes of the pull. It is shown beside the pull and never taken off.",
	percent:
		'All of them are percent of the playing tracking force. The limits were set in the program; its own defaults are from memory of trade practice, no published limits were found.',
	intervals:
		'Every ± is for 95 %: of a hundred such intervals about ninety-five hold the true value, as far as what is listed here is all there is. A verdict is given only where the figure and its whole ± lie on one side of a limit; else it is undecided, and what would decide it is said.',
	/** Of figures that an earlier version issued: they stay as they are. */
	issuedBefore:
		'These figures were issued by an earlier version of the program: their ± leave out what setting up arm and gauge makes of a pull (0.3 %), and how little few rounds tell of the zero of the gauge.',
	squares:
		'These parts are added as squares (JCGM 100:2008). With few rounds the interval is widened by the Student factor that belongs to them.',
	/** What went into the ±, as it was stated or found. */
	budget: {
		step: 'reading step of the gauge',
		nudge: 'nudge',
		inGauge: ({value, unit}: {value: number; unit: UnitId}) => `${plainNumber(value)} ${units[unit].label}`,
		zero: 'zero of the gauge',
		zeroTurned: 'found by turning the gauge; its ± comes from the same rounds',
		zeroStated: ({value, unit}: {value: number; unit: UnitId}) =>
			`read free of the arm; standard uncertainty ${plainNumber(value)} ${units[unit].label}`,
		zeroUnchecked: 'not checked; half a percent, or a step, either way is counted',
		scale: 'scale of the gauge',
		force: 'tracking force',
		ofFigure: ({pct}: {pct: number}) => `standard uncertainty ${plainNumber(pct)} % of the figure`,
		repeats: 'how well rounds repeat',
		repeatsPooled: 'from the rounds of all radii together',
		repeatsAssumed: 'assumed: 0.3 % for a middle, 0.6 % for the friction',
		settingUp: 'setting up',
		setAnew: 'the gauge was set anew for each round, so the rounds show it',
		notSetAnew: '0.3 % of the playing force',
	},
};

/** What stands in every report, the same as in the manual. */
export const cautions: readonly string[] = [
	'People and amplifiers. Mute or switch off the amplifier before the stylus is touched, and keep the volume down when it first meets a record again. Unplug the mains before anything is opened.',
	"Licensed work. armdrift looks at mechanics only. Wiring, earthing and repair are for licensed or authorised people under your local codes. Follow the maker's instructions; the warranty may forbid touching a bearing, and bearings are not adjusted without the maker's procedure.",
	'Stylus and cantilever. A stylus is sharp and its cantilever breaks at a touch: keep the guard on until the very last step. Never press down on the guard of a unipivot arm.',
	"The deck. Until the put-back list is done, every screen says that the deck is not ready to play. The guard's mass must not stay in the tracking force.",
];

/** What the method cannot do, the same as in the manual. */
export const limitsOfMethod: readonly string[] = [
	'The probe is static. It sees pull and friction at rest, not resonance, not play in a bearing, not what a warped record does.',
	'Readings in percent are only as good as the tracking force that the gauge carries; the guard counts.',
	'A limit is read at the last nudge that held, so each falls short by half a nudge on average; the friction is corrected for it.',
	'Where nobody looked at the zero of the gauge, half a percent (or a step) either way is assumed for it and counted in the ±; a gauge that is farther off deceives.',
	'The room matters: wires and oil stiffen in the cold. A tilt counts fully for an arm loaded by gravity and hardly at all for a spring-loaded one.',
	'Comparisons take the uncertainties of two checks as independent; an error that both share (the same gauge out by the same amount) does not show as a change, and is not meant to.',
	'The drag behind the wanted reading is assumed; it changes with record, stylus and music. Readings with the bias on are usually one round a radius and carry no ± of their own.',
	'With one round at each radius the scatter is assumed, and the ± may hold the truth in far fewer than 95 of 100 cases.',
	'The uncertainty covers reading step, nudge, scatter, setting up, zero and scale. It cannot cover a step that was confirmed and not done, nor a force that wanders while the limits are sought (draught, a shaking table): a wander of 0.2 % takes 0.2 to 0.3 % off the friction. Simulated, not measured.',
];
