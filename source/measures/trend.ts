import {getQuarter} from 'date-fns/getQuarter';
import {parseISO} from 'date-fns/parseISO';
import limits from '../../shared/limits.json' with {type: 'json'};
import {isAbove} from './compare.js';
import {mean, rootSumSquares, squaredDeviations} from './statistics.js';
import {coverageFactor99} from './student-t.js';

/** One check in a trend: x in years or °C, y the figure. */
export type TrendPoint = {readonly x: number; readonly y: number};

/** A straight line through checks: y = intercept + slope·x, uncertainties for 99 %. */
export type Trend = {
	/** Units of y for each unit of x. */
	readonly slope: number;
	readonly slopeUncertainty: number;
	/** y at x = 0. */
	readonly intercept: number;
	readonly interceptUncertainty: number;
	/** Standard deviation of the checks about the line, with n − 2 degrees of freedom. */
	readonly residualSd: number;
	readonly n: number;
};

/**
 * Least-squares straight line with 99 % intervals by Student's t with n − 2 degrees of freedom (JCGM 100:2008 H.3).
 * Sums are taken about the means, else years such as 2026 lose digits. Null below five checks, and where all x are
 * equal within 1e-9.
 */
export const trendOf = (points: readonly TrendPoint[]): Trend | null => {
	const n = points.length;
	if (n < limits.trendChecks.value) return null;
	const xs = points.map(({x}) => x);
	if (!isAbove(Math.max(...xs) - Math.min(...xs), 0)) return null;
	const [meanX, meanY] = [mean(xs), mean(points.map(({y}) => y))];
	const spreadX = squaredDeviations(xs);
	const slope = points.reduce((sum, {x, y}) => sum + (x - meanX) * (y - meanY), 0) / spreadX;
	const residuals = points.map(({x, y}) => y - meanY - slope * (x - meanX));
	const residualSd = rootSumSquares(...residuals) / Math.sqrt(n - 2);
	const uncertainty = coverageFactor99(n - 2) * residualSd;
	return {
		slope,
		slopeUncertainty: uncertainty / Math.sqrt(spreadX),
		intercept: meanY - slope * meanX,
		interceptUncertainty: uncertainty * Math.sqrt(1 / n + meanX ** 2 / spreadX),
		residualSd,
		n,
	};
};

/** Whether a trend is seen: the 99 % interval of the slope does not hold zero, within 1e-9. */
export const isTrend = ({slope, slopeUncertainty}: Trend): boolean => isAbove(Math.abs(slope), slopeUncertainty);

/**
 * Whether a drift can be told from the season: the checks fall in at least three of the four calendar quarters, of
 * whatever years. Checks every six months meet the same two seasons for ever.
 *
 * @param dates days as yyyy-mm-dd, in any order
 */
export const isSeasonTold = (dates: readonly string[]): boolean =>
	new Set(dates.map((date) => getQuarter(parseISO(date)))).size >= limits.seasonQuarters.value;
