import {formatISO} from 'date-fns/formatISO';
import type {Check} from '../check/check.js';
import type {PastCheck} from '../check/past-check.js';
import type {Profile} from '../procedure/facts.js';
import {isTakenBy} from '../results/profiles.js';
import {type ArmState, armStates} from '../results/years/arm-states.js';
import {checksOfArm, historyOf, notedOf} from '../results/years/arms.js';
import {type ArmsAtAGlance, armsAtAGlance} from '../results/years/at-a-glance.js';
import {type DueArm, dueArms} from '../results/years/due.js';
import {type DoneEvent, eventsOf} from '../results/years/events.js';
import {orThrow} from '../store/store-error.js';
import {words} from '../words/index.js';
import type {Archive, Saved} from '../workbench.js';
import {didYouMean} from './did-you-mean.js';
import {countingAgain, markedVoid} from './filing.js';
import {attempt, Hindrance} from './hindrance.js';
import {LatestChecks} from './latest-checks.js';
import {Shelf} from './shelf.js';

/** Past checks by arm, over the years, beside the rest of what is kept. */
export class OpenArchive extends Shelf implements Archive {
	readonly #now: () => string;
	readonly #latest: LatestChecks;

	constructor(dataDir: string, clock: () => Date) {
		super(dataDir, clock);
		this.#now = () => formatISO(clock());
		this.#latest = new LatestChecks(
			dataDir,
			this.store,
			() => this.all(),
			() => this.isListSound,
		);
	}

	override forget(): void {
		super.forget();
		this.#latest.forget();
	}

	/** Puts away what was left half done and keeps what makes the next start sooner, in a quiet moment. */
	async settle(): Promise<void> {
		await attempt(() => this.store.tidy());
		await this.#latest.keep();
	}

	due(): readonly DueArm[] {
		return dueArms(this.all(), this.profiles(), this.#now());
	}

	atAGlance(): ArmsAtAGlance {
		return armsAtAGlance(this.#latest.get(), this.profiles(), this.#now());
	}

	history(check: Check): readonly PastCheck[] {
		return historyOf(check, this.all(), this.profiles());
	}

	ofArm(armName: string): readonly PastCheck[] {
		return checksOfArm(this.all(), armName, this.profiles());
	}

	events(armName: string): readonly DoneEvent[] {
		return eventsOf(this.ofArm(armName), notedOf(armName, this.profiles()));
	}

	arms(): readonly ArmState[] {
		return armStates(this.all(), this.profiles(), this.#now());
	}

	markVoid(id: string, reason: string): Promise<Saved> {
		return this.note(id, (remark) => markedVoid(remark, reason, this.#now()));
	}

	/** Where it could not be read what there was, that the check counts is all there is to note. */
	countAgain(id: string): Promise<Saved> {
		return this.note(id, (remark, isKnown) => (isKnown ? countingAgain(remark, this.#now()) : {ok: true, remark: {}}));
	}

	checkedArms(): readonly string[] {
		const open = this.#openCheck()?.answers['arm-name']?.value;
		return [...new Set([...this.all().map(({arm}) => arm), ...(typeof open === 'string' ? [open] : [])])];
	}

	isTakenOver(profile: Profile): boolean {
		const open = this.#openCheck();
		return open !== undefined && isTakenBy(open, profile);
	}

	#openCheck(): Check | undefined {
		return this.asFarAsRead(() => this.noted(this.store.draft()).check);
	}

	/** The last check of an arm that counts; of the arm that is due first where none is named. @throws StoreError, Hindrance */
	lastOf(armName: string | undefined): Check {
		const named = armName === undefined ? this.due()[0]?.last : this.ofArm(armName)[0];
		if (named) return orThrow(this.store.record(named.id)).check;
		this.assertListed();
		throw new Hindrance('missing', this.dataDir, nothingToRepeat(armName, this.checkedArms()));
	}
}

/** That an arm, or any arm, has no past check to repeat, with the way out. */
export function nothingToRepeat(armName: string | undefined, known: readonly string[]): string {
	const {nothingToRepeat: none, nothingToRepeatOf} = words.commands.desk;
	if (armName === undefined) return none;
	// One that is known by that very name has no check that counts, and no other one is meant.
	const meant = known.includes(armName) ? undefined : didYouMean(armName, known);
	return nothingToRepeatOf({arm: armName, meant});
}
