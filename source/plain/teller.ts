import type {Dialogue} from '../check/dialogue.js';
import type {Shown} from '../pages/shown-lines.js';
import {type View, viewOf} from '../pages/view.js';
import {words} from '../words/index.js';
import {says} from '../words/says.js';
import {type Lines, plainText, plainTexts, promptLines} from './ask.js';

const say = words.faces.plain;

/** What a listener knows already. */
type Heard = {
	readonly deck: string;
	readonly arm: string;
	readonly stage: string;
	/** Of the last number that was asked for in this stage. */
	readonly unit: string;
	/** Word for word, in this stage. */
	readonly lines: ReadonlySet<string>;
	/** As it was when the last question was told. */
	readonly check: Dialogue['check'] | undefined;
};

const nothing: Heard = {deck: '', arm: '', stage: '', unit: '', lines: new Set(), check: undefined};

/** Tells questions to someone who only hears them: what was said and still stands is not said again. */
export class Teller {
	readonly #lines: Lines;
	#heard = nothing;

	constructor(lines: Lines) {
		this.#lines = lines;
	}

	/** The next question is told with all that stands beside it. */
	forget(): void {
		this.#heard = nothing;
	}

	/** @param seen what an invented bench shows, which is typed and so said each time */
	tell(number: number, view: View, dialogue: Dialogue, seen: readonly Shown[]): void {
		const deck = words.pages.deck.told(view.deck);
		const isNewStage = view.stage !== this.#heard.stage;
		const {check} = dialogue;
		const before = isNewStage ? {...nothing, deck: this.#heard.deck, arm: this.#heard.arm} : this.#heard;
		const isAskedAgain = check === before.check;
		// Each question of a practice check says that it is one.
		const arm = check.practice || view.arm !== before.arm ? view.arm : '';
		const {title, stage, progress} = view;
		const head = {number, title, arm, ...(isNewStage ? {stage, progress} : {stage: '', progress: ''})};
		const isAtBench = (one: Shown, text: string) => seen.includes(one) && text !== words.faces.nudge.lines;
		const notice = dialogue.notice && says.notice(dialogue.notice);
		const news = view.shown.flatMap((one) => {
			const text = plainText(one);
			return text !== '' && (text === notice || isAtBench(one, text) || isNews(one, text, before, isAskedAgain))
				? [text]
				: [];
		});
		const unit = view.unit === '' || view.unit === before.unit ? [] : [say.unit(view)];
		const isTitle = asWord(view.ask) === asWord(view.title);
		// In short words it says how keys tick a list.
		const isOfKeys = dialogue.isBrisk && view.prompt.kind === 'yes-no' && view.prompt.lines !== undefined;
		const ask = view.ask === '' || isTitle || isOfKeys ? [] : [view.ask];
		const first = ['', ...(deck === before.deck ? [] : [deck]), say.question(head)];
		for (const text of [...first, ...ask, ...news, ...unit, ...promptLines(view.prompt)]) this.#lines.say(text);
		this.#heard = {
			deck,
			arm: view.arm,
			stage: view.stage,
			unit: view.unit === '' ? before.unit : view.unit,
			lines: new Set([...before.lines, ...news]),
			check,
		};
	}

	/** What a number that passes came to: a screen shows it while it is typed. */
	tellOutcome({prompt, title}: View, dialogue: Dialogue, typed: string, next: Dialogue): void {
		if (prompt.kind !== 'field' || viewOf(next).title === title) return;
		const {lines} = this.#heard;
		const {shown} = viewOf(dialogue, typed.trim() === '' ? prompt.initial : typed);
		const outcome = plainTexts(shown.filter(isOutcome)).filter((text) => !lines.has(text));
		for (const text of outcome) this.#lines.say(text);
		this.#heard = {...this.#heard, lines: new Set([...lines, ...outcome])};
	}
}

const isOutcome = (one: Shown): boolean => one.kind === 'level' || (one.kind === 'line' && one.tone === 'good');

/** Once in a stage; what is put in words for a voice, or judges, with each answer. */
function isNews(one: Shown, text: string, {lines}: Heard, isAskedAgain: boolean): boolean {
	const judges = one.kind === 'line' && (one.tone === 'good' || one.tone === 'bad');
	return !lines.has(text) || (!isAskedAgain && (judges || one.heard !== undefined));
}

const asWord = (text: string): string => text.replace(/[.?]$/, '');
