// The document and the output of section 11, written down from the page once more.

export type Place = 'inner' | 'outer' | 'other';
export type Zone = 'good' | 'usable' | 'beyond';
export type AtWorst = Zone | 'off-scale';
export type Verdict = Zone | 'undecided' | 'off-scale';

export interface ModelBiasRound {
	innerLimit: number;
	outerLimit: number;
}

export interface ModelRound extends ModelBiasRound {
	gauge?: 'turned';
	closing?: true;
}

export interface ModelProbe {
	place: Place;
	radiusMm: number;
	rounds: ModelRound[];
}

export interface ModelBiasReading {
	radiusMm: number;
	rounds: ModelBiasRound[];
	leverClock?: string;
}

export interface ModelArm {
	effectiveLengthMm: number;
	pivotDistanceMm: number;
	loading: 'gravity' | 'spring';
	pivotDirectionDeg?: number;
}

export interface ModelGauge {
	unit: 'percent' | 'mN' | 'gf';
	step: number;
	topOfScale: number;
	relativeUncertaintyPct?: number;
	nudge?: number;
	setAnew?: boolean;
	zero?: number;
	zeroUncertainty?: number;
}

export interface ModelTrackingForce {
	playingMn: number;
	scaleReadingMn: number;
	guard: 'included' | 'left-out' | 'none';
	guardMassG?: number;
	relativeUncertaintyPct?: number;
}

export interface ModelLevel {
	stepDeg: number;
	leftRightDeg: number[];
	frontBackDeg: number[];
}

export interface ModelLimits {
	pullGoodPct?: number;
	pullUsablePct?: number;
	bandGoodPct?: number;
	bandUsablePct?: number;
}

export interface ModelDocument {
	arm: ModelArm;
	gauge: ModelGauge;
	trackingForce: ModelTrackingForce;
	level?: ModelLevel;
	clearance?: {stylusMm: number; matRemovedMm?: number; guardDepthMm?: number};
	cartridge?: {staticComplianceUmPerMn?: number; cantileverMm?: number};
	probe: ModelProbe[];
	limits?: ModelLimits;
	bias?: {
		effectiveDrag?: number;
		device: 'none' | 'weight-on-thread' | 'weighted-lever' | 'spring' | 'magnet' | 'other';
		readings?: ModelBiasReading[];
	};
}

export interface AxisOutput {
	tiltDeg: number;
	zeroErrorDeg: number | null;
}

export type WouldDecide = {rounds: number} | {finerStep: true} | {onLimit: true};

export interface ProbeOutput {
	place: Place;
	radiusMm: number;
	tiltSharePct: number | null;
	tiltShareUncertaintyPct: number | null;
	pullPct: number | null;
	pullUncertaintyPct: number | null;
	bandPct: number | null;
	bandUncertaintyPct: number | null;
	breakawayPct: number | null;
	torqueMicroNm: number | null;
	effectiveDegreesOfFreedom: number | null;
	repeatability: 'pooled' | 'assumed' | null;
	pullVerdict: Verdict;
	pullAtWorst: AtWorst;
	bandVerdict: Verdict;
	bandAtWorst: AtWorst;
	ownPullPct: number | null;
	pullWouldDecide: WouldDecide | null;
	bandWouldDecide: WouldDecide | null;
	wallShare: {inner: number; outer: number} | null;
	lean: {micrometres: number; degrees: number | null} | null;
}

export interface BetweenRadiiOutput {
	pullDifferencePct: number;
	pullDifferenceUncertaintyPct: number;
	bandDifferencePct: number;
	bandDifferenceUncertaintyPct: number;
	en: number;
	differs: boolean;
	bandEn: number;
	bandDiffers: boolean;
	torqueSlopeMicroNmPerDeg: number;
	neutralRadiusMm: number | null;
}

export interface BiasRowOutput {
	radiusMm: number;
	fraction: number;
	wantedPct: number;
	pullOnPct: number | null;
	biasPct: number | null;
	leftoverPct: number | null;
}

export interface FitOutput {
	factor: number;
	worstBeforePct: number;
	worstAfterPct: number;
	worstAfterDragPct: number;
	rmsBeforePct: number;
	rmsAfterPct: number;
	frictionFloorPct: number;
	targets: {radiusMm: number; targetPct: number}[];
}

export interface BiasOutput {
	effectiveDrag: number;
	leastRadiusMm: number | null;
	rows: BiasRowOutput[];
	fit: FitOutput | null;
	lever: {radiusMm: number; clock: string; share: number}[] | null;
}

export interface ClosingOutput {
	movedPct: number;
	allowedPct: number;
	moved: boolean;
}

export interface ModelOutput {
	scaleFactor: number;
	carriedMn: number;
	level: {leftRight: AxisOutput; frontBack: AxisOutput; passes: boolean} | null;
	clearance: {
		stylusWindowMm: [number, number];
		guardWindowMm: [number, number] | null;
		passes: boolean;
	} | null;
	zero: {source: 'turned' | 'stated' | 'unchecked'; zero: number | null; zeroUncertainty: number | null};
	probe: ProbeOutput[];
	closing: ClosingOutput | null;
	verdict: Verdict;
	atWorst: AtWorst;
	betweenRadii: BetweenRadiiOutput | null;
	bias: BiasOutput | null;
	findings: {code: string}[];
}
