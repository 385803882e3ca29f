import {deckOf} from '../check/deck-state.js';
import {isReadyToPlay, progressOf} from '../check/progress.js';
import {attempt} from '../desk/hindrance.js';
import type {OpenWorkbench} from '../desk/open-workbench.js';
import type {PracticeWorkbench} from '../desk/practice-workbench.js';
import type {Environment} from '../terminal/environment.js';
import {printable} from '../terminal/printable.js';
import {words} from '../words/index.js';
import {titleOf} from '../words/step-text.js';
import type {Opened, PracticeDesk, PracticeDoor, PracticeOpened} from '../workbench.js';
import {shellWord} from './shell-words.js';

const say = words.commands.parting;

/** Practice that was opened. */
export type OpenPractice = {readonly desk: PracticeWorkbench; readonly goOn: string};

type Sitting = {
	readonly workbench: OpenWorkbench;
	/** How to go on there later, as it is typed. */
	readonly goOn: string;
};

/** Where somebody sits first, and the way to practice. */
type Options = Sitting & {
	/** @throws StoreError where practice data cannot be kept */
	readonly practise?: () => Promise<OpenPractice>;
};

/** Nobody waits for the first save by then. */
const settleInMs = 300;

/** Where somebody sits: at the workbench of real checks, or at that of practice. What is said on leaving is about that one. */
export class Seat {
	readonly #practise: Options['practise'] | undefined;
	readonly #real: Sitting;
	#at: Sitting;
	#practising: OpenPractice | undefined;

	constructor({workbench, goOn, practise}: Options) {
		this.#real = {workbench, goOn};
		this.#at = this.#real;
		this.#practise = practise;
	}

	get workbench(): OpenWorkbench {
		return this.#at.workbench;
	}

	/** A check that is left open: a real one counts before one of practice. */
	get isLeftOpen(): boolean {
		return [this.#real, this.#at].some(({workbench}) => workbench.openCheck !== undefined);
	}

	/** The way to practice and back; undefined where practice is all there is. */
	get door(): PracticeDoor | undefined {
		const practise = this.#practise;
		return practise && {open: () => this.#open(practise), close: () => this.#close()};
	}

	/** What is said on the normal screen at the end; a real check that is still open is never passed over. */
	readonly parting = (): readonly string[] => {
		const isReal = this.#at === this.#real;
		return [...(!isReal && this.#real.workbench.openCheck ? partingLines(this.#real) : []), ...partingLines(this.#at)];
	};

	/** Gives the locks back; for every way out. */
	readonly release = (): void => {
		this.#real.workbench.release();
		this.#practising?.desk.release();
	};

	async #open(practise: () => Promise<OpenPractice>): Promise<PracticeOpened> {
		const opened = await attempt(async () => this.#practising ?? (await practise()));
		if (!opened.ok) return opened;
		this.#practising = opened.value;
		const {desk, goOn} = opened.value;
		this.#at = {workbench: desk, goOn};
		setTimeout(() => void desk.settleIn(), settleInMs).unref();
		return {ok: true, desk};
	}

	#close(): void {
		this.#at = this.#real;
	}
}

/** What a face begins with. */
export type Start = {
	readonly seat: Seat;
	/** The workbench, where practice comes first. */
	readonly desk?: PracticeDesk | undefined;
	/** A check to begin with, instead of the first screen; or why there is none. */
	readonly opened?: Opened;
	/** Something to say on the first screen. */
	readonly notice?: string;
};

export type InkStart = Start & {readonly environment: Environment};

/** The last lines on the normal screen: what is saved or filed, and how to go on. */
function partingLines({workbench, goOn}: Sitting): readonly string[] {
	const {openCheck, filed} = workbench;
	if (openCheck) {
		const progress = progressOf(openCheck, workbench.profiles());
		const {current, facts} = progress;
		const arm = printable(facts.text('arm-name') ?? words.commands.desk.newArm, 40);
		const step = current ? titleOf(current.id) : words.commands.desk.itsEnd;
		if (openCheck.practice) return [say.practiceSaved({arm, step}), say.goOn({goOn})];
		const deck = words.pages.deck.told(deckOf(openCheck, progress));
		return [say.saved({arm, step}), deck, say.goOnWithDeck({isReady: isReadyToPlay(progress), goOn})];
	}
	const unfinished = workbench.unfinished();
	if (!filed && unfinished) return [say.waiting({arm: printable(unfinished.arm, 40), step: unfinished.step, goOn})];
	if (!filed) return [say.nothingOpen];
	const {check, issued, outcome} = filed;
	const said = {id: check.id, verdict: issued?.figures.verdict};
	if (!check.practice) return [say.filed(said), outcome === 'interrupted' ? say.deckNotReady : say.deckReady];
	const command = goOn.replace(/practice$/, `report ${check.id} --practice --as html --out practice.html`);
	return [say.practiceFiled(said), say.practiceReport({command})];
}

/** How this program was started, to be typed again: through npm or npx, with its data folder, quoted for the platform. */
export function startedAs(
	variables: Readonly<Record<string, string | undefined>>,
	data: string | undefined,
	command = '',
	platform = process.platform,
): string {
	const isNpm = variables.npm_lifecycle_event === 'start';
	const words = `${data === undefined ? '' : ` --data ${printable(shellWord(data, platform))}`}${command === '' ? '' : ` ${command}`}`;
	if (isNpm) return words === '' ? 'npm start' : `npm start --${words}`;
	// npx runs a program that need not be installed.
	return `${variables.npm_command === 'exec' ? 'npx ' : ''}armdrift${words}`;
}
