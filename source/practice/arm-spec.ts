import type {ArmGeometry} from '../measures/geometry.js';
import type {TiltAxes} from '../measures/tilt-share.js';
import type {BiasMechanism} from './bias-torque.js';

/** Dry friction of the yaw bearing (Coulomb; OpenStax University Physics vol. 1, 6.2). */
export type Friction = {
	/** Torque that it takes to start the arm, either way, in µN·m. */
	readonly staticMicroNm: number;
	/** Friction of the moving arm over that of the arm at rest, 0 to 1. */
	readonly kineticShare: number;
	/** A worn race: inside this radius friction is so many times as large. */
	readonly worn?: {readonly withinMm: number; readonly times: number};
};

/** The leads of the cartridge, where they leave the arm: a spring about a rest place, and a twist that is always there. */
export type Wire = {
	/** Torque back to the rest place, in µN·m for each degree of swing. */
	readonly springMicroNmPerDeg: number;
	/** Radius at which the spring is at rest, in mm. */
	readonly restRadiusMm: number;
	/** In µN·m, positive toward the rim. */
	readonly twistMicroNm: number;
};

/** A paddle in a trough of fluid. */
export type Damping = {
	readonly isIn: boolean;
	/** Torque for each rad/s, in µN·m·s. */
	readonly viscousMicroNmS: number;
	/** Torque below which the fluid and its skin do not give at all, in µN·m. */
	readonly yieldMicroNm: number;
};

/** A gauge that carries the stylus on a rocking rest and shows the force that the arm exerts on it. */
export type Gauge = {
	/** Smallest step shown, in percent of the force carried. */
	readonly stepPct: number;
	/** End of the scale either way, where the rest runs into its stops, in percent of the force carried. */
	readonly topPct: number;
	/** Restoring force, in percent of the force carried for each mm off the neutral place. */
	readonly restoringPctPerMm: number;
	/** What it shows when nothing pushes it, in its own sign, in percent of the force carried. */
	readonly zeroPct: number;
	/** How much too much it shows, in percent of what it shows. */
	readonly gainPct: number;
	/** How far the shown value trembles either way, in steps. */
	readonly trembleSteps: number;
};

/** An invented arm on an invented deck: everything that acts on it while it is probed. */
export type ArmSpec = {
	readonly geometry: ArmGeometry;
	/** Where the pivot stands seen from the spindle: degrees from the right, turning to the back. */
	readonly pivotDirectionDeg: number;
	readonly loading: 'gravity' | 'spring';
	/** Tracking force in play, in mN. */
	readonly playingMn: number;
	/** Mass of the guard, which stays on during the probe, in g; 0 for none. */
	readonly guardMassG: number;
	/** The counterweight was set with the guard on, so that the gauge carries the playing force. */
	readonly isSetGuarded: boolean;
	/**
	 * Moment of inertia about the pivot in kg·mm², so that a torque in µN·m gives rad/s². An arm of nine inches with its
	 * cartridge feels like 10 to 20 g at the stylus (from memory, no source), which times its length squared is 500 to 1000.
	 */
	readonly momentKgMm2: number;
	readonly friction: Friction;
	readonly wire: Wire;
	readonly tilt: TiltAxes;
	readonly bias?: {readonly isOn: boolean; readonly device: BiasMechanism};
	readonly damping?: Damping;
	readonly gauge: Gauge;
	/** What each setting up of arm and gauge makes of the side force: standard deviation in percent of the playing force. */
	readonly settingUpPct: number;
	/** How far the place of a limit scatters from one search to the next: standard deviation in percent of the playing force. */
	readonly scatterPct: number;
	/** How much the side force wanders with draught and settling wire: standard deviation in percent of the playing force. */
	readonly unrestPct: number;
};
