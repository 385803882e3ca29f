import {above, atMost, below} from './model-compare.js';
import type {AtWorst, ModelDocument, Verdict, WouldDecide, Zone} from './model-types.js';

export interface Limits {
	good: number;
	usable: number;
}

export interface Judged {
	verdict: Verdict;
	atWorst: AtWorst;
}

export const pullLimits = ({limits}: ModelDocument): Limits => ({
	good: limits?.pullGoodPct ?? 2,
	usable: limits?.pullUsablePct ?? 4,
});

export const bandLimits = ({limits}: ModelDocument): Limits => ({
	good: limits?.bandGoodPct ?? 3,
	usable: limits?.bandUsablePct ?? 6,
});

const zone = (size: number, {good, usable}: Limits): Zone => {
	if (atMost(size, good)) {
		return 'good';
	}
	return atMost(size, usable) ? 'usable' : 'beyond';
};

export const judge = (figure: number, expanded: number, limits: Limits): Judged => {
	const low = zone(Math.max(0, Math.abs(figure) - expanded), limits);
	const high = zone(Math.abs(figure) + expanded, limits);
	return {verdict: low === high ? low : 'undecided', atWorst: high};
};

const worstOrder: AtWorst[] = ['good', 'usable', 'beyond', 'off-scale'];

const rank = ({verdict, atWorst}: Judged): number => {
	switch (verdict) {
		case 'good':
			return 0;
		case 'usable':
			return 2;
		case 'beyond':
			return 4;
		case 'off-scale':
			return 5;
		case 'undecided':
			return atWorst === 'usable' ? 1 : 3;
	}
};

/** The verdict of the highest rank and the worst atWorst, each for itself. */
export const worstOf = (all: Judged[]): Judged => {
	const start: Judged = {verdict: 'good', atWorst: 'good'};
	return {
		verdict: all.reduce((worst, next) => (rank(next) > rank(worst) ? next : worst), start).verdict,
		atWorst: all.reduce(
			(worst, {atWorst}) => (worstOrder.indexOf(atWorst) > worstOrder.indexOf(worst) ? atWorst : worst),
			start.atWorst,
		),
	};
};

export interface Undecided {
	figure: number;
	expanded: number;
	limits: Limits;
	used: number;
	assumed: boolean;
	/** The expanded uncertainty with so many as-used rounds more, and perhaps without the hidden step. */
	expandedWith: (more: number, fineStep: boolean) => number;
}

export const wouldDecide = (given: Undecided): WouldDecide | null => {
	const {figure, expanded, limits, used, assumed, expandedWith} = given;
	const size = Math.abs(figure);
	const distances = [limits.good, limits.usable]
		.filter((limit) => above(limit, size - expanded) && below(limit, size + expanded))
		.map((limit) => Math.abs(size - limit));
	if (distances.length === 0) {
		return null;
	}
	const distance = Math.min(...distances);
	if (assumed || used < 3) {
		return {rounds: 3};
	}
	if (used >= 12) {
		return {onLimit: true};
	}
	for (let rounds = used + 1; rounds <= 12; rounds++) {
		if (atMost(expandedWith(rounds - used, false), distance)) {
			return {rounds};
		}
	}
	return atMost(expandedWith(12 - used, true), distance) ? {finerStep: true} : {onLimit: true};
};
