import type {Dialogue} from '../check/dialogue.js';
import type {Shown} from '../pages/shown-lines.js';
import type {View} from '../pages/view.js';
import {words} from '../words/index.js';
import {says} from '../words/says.js';
import {type Lines, plainText, promptLines} from './ask.js';

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
};

const nothing: Heard = {deck: '', arm: '', stage: '', unit: '', lines: new Set()};

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
		const before = isNewStage ? {...nothing, deck: this.#heard.deck, arm: this.#heard.arm} : this.#heard;
		// Each question of a practice check says that it is one.
		const arm = dialogue.check.practice || view.arm !== before.arm ? view.arm : '';
		const {title, stage, progress} = view;
		const head = {number, title, arm, ...(isNewStage ? {stage, progress} : {stage: '', progress: ''})};
		const isAtBench = (one: Shown, text: string) => seen.includes(one) && text !== words.faces.nudge.lines;
		const notice = dialogue.notice && says.notice(dialogue.notice);
		const news = view.shown.flatMap((one) => {
			const text = plainText(one);
			return text !== '' && (text === notice || isAtBench(one, text) || isNews(one, text, before)) ? [text] : [];
		});
		const unit = view.unit === '' || view.unit === before.unit ? [] : [say.unit(view)];
		const ask = view.ask === '' || asWord(view.ask) === asWord(view.title) ? [] : [view.ask];
		const first = ['', ...(deck === before.deck ? [] : [deck]), say.question(head)];
		for (const text of [...first, ...ask, ...news, ...unit, ...promptLines(view.prompt)]) this.#lines.say(text);
		this.#heard = {
			deck,
			arm: view.arm,
			stage: view.stage,
			unit: view.unit === '' ? before.unit : view.unit,
			lines: new Set([...before.lines, ...news]),
		};
	}
}

/** What counts is always said, a note beside it once in a stage. */
function isNews(one: Shown, text: string, {lines}: Heard): boolean {
	const isNote = one.kind !== 'line' || one.tone === 'plain' || one.tone === 'dim' || one.tone === 'warn';
	return !isNote || !lines.has(text);
}

const asWord = (text: string): string => text.replace(/[.?]$/, '');
