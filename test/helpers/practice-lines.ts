import type {Lines} from '../../source/plain/ask.js';
import {fromBase} from '../../source/units.js';
import {questionsIn} from './conversation.js';
import {anything, isGoneBack, numbersIn, says, withAnything, words} from './said.js';
import {limitAsked} from './walk.js';

const {bench, hands, seen} = words.practice;
const sideWords = ['right', 'left', 'back', 'front'] as const;

/** What the gauge shows beside a question, its reading caught. */
const gauges = [false, true].map((isTurned) => {
	const said = bench.gauge({readingPct: 7, stepPct: 1, isTurned, state: anything});
	return {isTurned, shows: new RegExp(withAnything(said).source.replace('\\+7', '([+-]?[\\d.]+)'), 'g')};
});
const onTheBench = new RegExp(withAnything(bench.seen({seen: anything}), '(.*)').source, 'g');
const offers = [...Object.values(hands).map(({offer}) => offer), bench.reveal];
const forceMn = 7 / fromBase(1, 'gf');
/** Instruments that are typed as they show it: 7 in the unit that is asked for. */
const showing = [
	seen.temperature({celsius: 7}),
	seen.mat({lengthMm: 7}),
	seen.scale({forceMn}),
	seen.scaleAtHeight({forceMn}),
	seen.scaleUnguarded({forceMn}),
	seen.guardGap({lengthMm: 7}),
	seen.clearance({lengthMm: 7}),
];
const {marks, option, yesNo} = words.faces.plain;
const yesOrNo = [
	withAnything(yesNo({question: undefined})),
	withAnything(yesNo({question: anything})),
	withAnything(marks),
];
const firstOption = new RegExp(`^${withAnything(option({number: 1, label: anything})).source}`, 'm');

/** At the verdict the deck is put back, whatever else could be tried first. */
const endings = (['put-back', 'leave', 'to-maker'] as const).map((id) => {
	const said = option({number: 7, label: says.label({id, values: {}})});
	return new RegExp(`^${withAnything(said).source.replace('7', '(\\d)')}`, 'm');
});

const putBackIn = (shown: string): string | undefined =>
	endings.map((one) => one.exec(shown)?.[1]).find((digit) => digit !== undefined);

/** A reading as a gauge shows it, typed. */
const typedReading = (pct: number): string => (pct < 0 ? String(pct) : `+${pct}`);

const lastShown = (said: string): number =>
	Number(gauges.flatMap(({shows}) => [...said.matchAll(shows)].map(([, reading]) => reading)).at(-1));

/** Nudges toward a limit: in large steps until the arm lets go, then in fine ones; then the farthest reading that held. */
class LimitSearch {
	#size: 'large' | 'fine' = 'large';
	#farthestPct: number;
	/** Which way the reading grows toward the limit: end for end, the gauge counts the other way. */
	readonly #sign: 1 | -1;
	readonly #keys;

	constructor(limit: 'inner' | 'outer', isTurned: boolean, shownPct: number) {
		this.#sign = (limit === 'outer') === isTurned ? -1 : 1;
		this.#keys = limit === 'inner' ? {large: '<', fine: ','} : {large: '>', fine: '.'};
		this.#farthestPct = shownPct;
	}

	get key(): string {
		return this.#keys[this.#size];
	}

	/** @param said what came of the last nudge: also where it went back to, it holds */
	next(said: string): string {
		this.#farthestPct = this.#sign * Math.max(this.#sign * this.#farthestPct, this.#sign * lastShown(said));
		if (!isGoneBack(said)) return this.key;
		if (this.#size === 'fine') return typedReading(this.#farthestPct);
		this.#size = 'fine';
		return this.key;
	}
}

/**
 * A careful technician at the plain face of a practice check: does what can be done by hand, types what the invented
 * bench shows, and looks for every limit nudge by nudge.
 */
export class PracticeTechnician implements Lines {
	readonly piped = true;
	readonly answers: string[] = [];
	#said: string[] = [];
	#question = '';
	#search: LimitSearch | undefined;
	#isDeedDone = false;

	/** All that was said. */
	readonly heard: string[] = [];

	readonly say = (text: string): void => {
		this.heard.push(text);
		this.#said.push(text);
	};

	readonly read = async (): Promise<string> => {
		const said = this.#said.join('\n');
		this.#said = [];
		if (questionsIn(said.split('\n')).length > 0) {
			this.#question = said;
			this.#search = undefined;
			this.#isDeedDone = false;
		}
		const answer = this.#answerTo(said);
		this.answers.push(answer);
		return answer;
	};

	#answerTo(said: string): string {
		const limit = (['inner', 'outer'] as const).find((one) =>
			[false, true].some((isTurned) => this.#question.includes(limitAsked(one, isTurned))),
		);
		if (limit !== undefined) {
			if (this.#search) return this.#search.next(said);
			const isTurned = this.#question.search(gauges[1]?.shows ?? '') >= 0;
			this.#search = new LimitSearch(limit, isTurned, lastShown(said));
			return this.#search.key;
		}
		if (!this.#isDeedDone && this.#question.split('\n').some((line) => offers.includes(line.trim()))) {
			this.#isDeedDone = true;
			return '!';
		}
		if (!this.#isDeedDone) return this.#fromBench(this.#question);
		// What a deed has changed counts, also the numbers of a list that was told anew.
		return putBackIn(said) ?? this.#fromBench(`${this.#question}\n${said}`);
	}

	#fromBench(shown: string): string {
		const thing = [...shown.matchAll(onTheBench)].at(-1)?.[1] ?? '';
		for (const high of sideWords) {
			const [deg] = numbersIn(thing, seen.level({deg: 7, high}), 7);
			if (deg !== undefined) return `${deg} ${high}`;
		}
		if (thing === seen.level({deg: 0, high: 'left'})) return '0';
		const [number] = showing.flatMap((sentence) => numbersIn(thing, sentence, 7));
		if (number !== undefined) return String(number);
		if (numbersIn(thing, seen.matLies({lengthMm: 7}), 7).length > 0) return '3';
		if (yesOrNo.some((pattern) => pattern.test(shown))) return 'y';
		return putBackIn(shown) ?? (firstOption.test(shown) ? '1' : '');
	}
}
