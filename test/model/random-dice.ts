import {uniformFloat64} from 'pure-rand/distribution/uniformFloat64';
import {xoroshiro128plus} from 'pure-rand/generator/xoroshiro128plus';

/** Chance from a seed. */
export class Dice {
	private readonly source;

	constructor(seed: number) {
		this.source = xoroshiro128plus(Math.imul(seed, 0x9e3779b1));
		// The first draws of seeds in a row are much alike.
		for (let draw = 0; draw < 20; draw++) {
			uniformFloat64(this.source);
		}
	}

	between(low: number, high: number): number {
		return low + (high - low) * uniformFloat64(this.source);
	}

	/** Rounded to so many decimals, and never outside the two ends. */
	rounded(low: number, high: number, decimals: number): number {
		const value = Number(this.between(low, high).toFixed(decimals));
		return Math.min(high, Math.max(low, value));
	}

	whole(low: number, high: number): number {
		return Math.floor(this.between(low, high + 1));
	}

	chance(share: number): boolean {
		return this.between(0, 1) < share;
	}

	sign(): 1 | -1 {
		return this.chance(0.5) ? 1 : -1;
	}

	/** One of several, each as likely as its weight. */
	pick<T>(choices: readonly (readonly [weight: number, value: T])[]): T {
		let left = this.between(
			0,
			choices.reduce((total, [weight]) => total + weight, 0),
		);
		for (const [weight, value] of choices) {
			left -= weight;
			if (left < 0) {
				return value;
			}
		}
		const last = choices.at(-1);
		if (last === undefined) {
			throw new Error('nothing to pick from');
		}
		return last[1];
	}

	/** Roughly normal, spread 1. */
	wobble(): number {
		return this.between(-1, 1) + this.between(-1, 1) + this.between(-1, 1);
	}
}
