import type {BiasFit} from '../measures/bias-fit.js';
import type {WindowMm} from '../measures/clearance.js';
import type {ClosingRound} from '../measures/closing-round.js';
import type {Tilt} from '../measures/level.js';
import type {WallShare} from '../measures/skating.js';
import type {WouldDecide, Zone} from '../measures/verdict.js';
import type {PlaceName} from './document-schema.js';

export type Verdict = Zone | 'undecided' | 'off-scale';
export type AtWorst = Zone | 'off-scale';

export type LevelFigures = {
	readonly leftRight: Tilt;
	readonly frontBack: Tilt;
	readonly passes: boolean;
};

export type ClearanceFigures = {
	readonly stylusWindowMm: WindowMm;
	/** Null without a guard, or with its depth unknown. */
	readonly guardWindowMm: WindowMm | null;
	readonly passes: boolean;
};

type Placed = {
	readonly place: PlaceName;
	readonly radiusMm: number;
	/** Null without level readings; positive toward the rim. */
	readonly tiltSharePct: number | null;
	readonly tiltShareUncertaintyPct: number | null;
};

/** Figures at a probe radius. Uncertainties are for 95 %; percent is of the playing tracking force. */
export type MeasuredRadius = Placed & {
	/** Positive toward the rim. */
	readonly pullPct: number;
	readonly pullUncertaintyPct: number;
	readonly bandPct: number;
	readonly bandUncertaintyPct: number;
	/** Half the band: the force that just moves the arm either way. */
	readonly breakawayPct: number;
	readonly torqueMicroNm: number;
	/** Those of the pull; null for infinite. */
	readonly effectiveDegreesOfFreedom: number | null;
	/** 'assumed': no radius has two rounds alike, so how well they repeat is an assumption. */
	readonly repeatability: 'pooled' | 'assumed';
	readonly pullVerdict: Zone | 'undecided';
	readonly pullAtWorst: Zone;
	readonly bandVerdict: Zone | 'undecided';
	readonly bandAtWorst: Zone;
	/** The pull less what the tilt makes of it; null without level readings. */
	readonly ownPullPct: number | null;
	/** Null unless undecided. */
	readonly pullWouldDecide: WouldDecide | null;
	readonly bandWouldDecide: WouldDecide | null;
	readonly wallShare: WallShare;
	/** Null without a compliance; the angle null without the cantilever's length. */
	readonly lean: {readonly micrometres: number; readonly degrees: number | null} | null;
};

/** A probe radius where a reading reached the top of the scale: no figures. */
export type OffScaleRadius = Placed & {
	readonly [Key in Exclude<keyof MeasuredRadius, keyof Placed | VerdictKey>]: null;
} & {readonly [Key in Exclude<VerdictKey, `${string}WouldDecide`>]: 'off-scale'} & {
	readonly pullWouldDecide: null;
	readonly bandWouldDecide: null;
};

type VerdictKey = 'pullVerdict' | 'pullAtWorst' | 'bandVerdict' | 'bandAtWorst' | 'pullWouldDecide' | 'bandWouldDecide';

export type RadiusFigures = MeasuredRadius | OffScaleRadius;

export const isMeasured = (figures: RadiusFigures): figures is MeasuredRadius => figures.pullPct !== null;

/** The zero of the gauge, in its own unit, its uncertainty for 95 %: known by turning it, stated, or not looked at. */
export type ZeroFigures = {
	readonly source: 'turned' | 'stated' | 'unchecked';
	readonly zero: number | null;
	readonly zeroUncertainty: number | null;
};

export type ClosingFigures = ClosingRound;

/** Differences are outer less inner, of the arm's own pulls and of the hold bands; uncertainties for 95 %. */
export type BetweenRadii = {
	readonly pullDifferencePct: number;
	readonly pullDifferenceUncertaintyPct: number;
	readonly bandDifferencePct: number;
	readonly bandDifferenceUncertaintyPct: number;
	readonly en: number;
	readonly differs: boolean;
	readonly bandEn: number;
	readonly bandDiffers: boolean;
	readonly torqueSlopeMicroNmPerDeg: number;
	readonly neutralRadiusMm: number | null;
};

/** What is wanted, and was read, at a radius with the bias on; percent of tracking force, positive toward the rim. */
export type BiasRow = {
	readonly radiusMm: number;
	/** Skating torque over drag torque. */
	readonly fraction: number;
	readonly wantedPct: number;
	/** Null where nothing was read with the bias on, or off scale. */
	readonly pullOnPct: number | null;
	readonly biasPct: number | null;
	readonly leftoverPct: number | null;
};

export type BiasFitFigures = BiasFit & {
	/** Half the widest hold band: no setting can be read finer. */
	readonly frictionFloorPct: number;
	/** What to set the gauge to. */
	readonly targets: readonly {readonly radiusMm: number; readonly targetPct: number}[];
};

export type BiasFigures = {
	readonly effectiveDrag: number;
	readonly leastRadiusMm: number | null;
	readonly rows: readonly BiasRow[];
	readonly fit: BiasFitFigures | null;
	readonly lever: readonly {readonly radiusMm: number; readonly clock: string; readonly share: number}[] | null;
};

export type Figures = {
	readonly scaleFactor: number;
	readonly carriedMn: number;
	readonly level: LevelFigures | null;
	readonly clearance: ClearanceFigures | null;
	readonly zero: ZeroFigures;
	readonly probe: readonly RadiusFigures[];
	/** Null without a closing round, and where its radius is off scale. */
	readonly closing: ClosingFigures | null;
	readonly verdict: Verdict;
	readonly atWorst: AtWorst;
	readonly betweenRadii: BetweenRadii | null;
	readonly bias: BiasFigures | null;
};
