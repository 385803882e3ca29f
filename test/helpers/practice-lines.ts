import type {Lines} from '../../source/plain/ask.js';

/** A reading as a gauge shows it, typed. */
const typedReading = (pct: number): string => (pct < 0 ? String(pct) : `+${pct}`);

const lastShown = (said: string): number => Number([...said.matchAll(/shows ([+-]?[\d.]+) %; the arm/g)].at(-1)?.[1]);

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
		if (!said.includes('let go')) return this.key;
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
		if (said.includes('Question ')) {
			this.#question = said;
			this.#search = undefined;
			this.#isDeedDone = false;
		}
		const answer = this.#answerTo(said);
		this.answers.push(answer);
		return answer;
	};

	#answerTo(said: string): string {
		const limit = /(innermost|outermost) place/i.exec(this.#question)?.[1]?.toLowerCase();
		if (limit !== undefined) {
			if (this.#search) return this.#search.next(said);
			const isTurned = this.#question.includes('turned end for end');
			this.#search = new LimitSearch(limit === 'innermost' ? 'inner' : 'outer', isTurned, lastShown(said));
			return this.#search.key;
		}
		if (!this.#isDeedDone && /^ *Press ! to /m.test(this.#question)) {
			this.#isDeedDone = true;
			return '!';
		}
		return this.#fromBench(this.#isDeedDone ? `${this.#question}\n${said}` : this.#question);
	}

	#fromBench(shown: string): string {
		const seen = [...shown.matchAll(/On the bench: (.*)/g)].at(-1)?.[1] ?? '';
		const level = /shows ([\d.]+)°, high on the (\w+)/.exec(seen);
		if (level) return `${level[1]} ${level[2]}`;
		if (seen.includes('0°')) return '0';
		const number = /(?:shows|measures) ([\d.]+)/.exec(seen)?.[1];
		if (number !== undefined) return number;
		if (seen.startsWith('A mat')) return '3';
		if (shown.includes('Answer y or n')) return 'y';
		return /^ {2}1\. /m.test(shown) ? '1' : '';
	}
}
