import type {BiasDeviceId} from './bias-devices.js';
import type {offPlaces} from './places.js';
import type {GaugeMount} from './readings.js';
import type {StepId} from './step-ids.js';

/** Where the rounds of a step are taken, from the spindle; undefined while the radius is not known. */
export type AtRadius = {readonly radiusMm: number | undefined};

/** The same, and how the gauge is held there. */
export type GaugeAtRadius = AtRadius & {readonly mount: GaugeMount};

type AtRadiusId = Extract<StepId, `bias-${'clock' | 'angle'}-${string}`>;
type RoundsId = Extract<StepId, `probe-${(typeof offPlaces)[number] | `bias-${string}`}`>;

/**
 * What the words of a step depend on, in base units: the step says these values, `words/` says the sentence. A step
 * that is not here has the same words always.
 */
export type StepValues = {readonly [Id in AtRadiusId]: AtRadius} & {readonly [Id in RoundsId]: GaugeAtRadius} & {
	readonly 'arm-offset': {readonly isWorkedOut: boolean};
	/** Undefined where the guard hangs no deeper than the mat allows. */
	readonly mat: {readonly deepGuardMm: number | undefined};
	readonly 'level-lr-1': {readonly isSprung: boolean};
	readonly 'bias-off': {readonly device: BiasDeviceId};
	readonly 'guard-on': {readonly isUnipivot: boolean};
	readonly 'guard-account': {readonly guardG: number};
	readonly 'force-reading': {
		readonly hasGuard: boolean;
		/** What the scale is to show. */
		readonly targetMn: number | undefined;
		/** Of the mat that was taken off: the pan stands that much higher. */
		readonly matMm: number | undefined;
	};
	readonly 'gauge-turns': {readonly isInHand: boolean};
	readonly 'arm-afloat': {readonly hasGuard: boolean; readonly hasSpring: boolean};
	readonly 'guard-gap': {readonly depthMm: number; readonly mount: GaugeMount};
	readonly 'first-swing': {readonly isUnipivot: boolean};
	readonly 'back-weight': {readonly playingMn: number | undefined; readonly guardMn: number};
	readonly 'back-guard': {readonly isUnipivot: boolean};
	readonly clearance: {readonly hangsFar: boolean; readonly mount: GaugeMount};
	readonly 'back-force': {
		/** Of an arm that still floats: what the scale is to show. */
		readonly setToMn: number | undefined;
	};
	readonly 'bias-drag': {readonly usualDrag: number; readonly hasDevice: boolean};
	readonly 'bias-on': {readonly device: BiasDeviceId};
	readonly 'back-bias': {
		readonly device: BiasDeviceId;
		/** The setting that was chosen after readings with the bias on, by its number and as it was noted. */
		readonly chosen: {readonly number: string; readonly setting: string} | undefined;
		/** How it was set before the check, as it was noted. */
		readonly setting: string | undefined;
	};
};
