import type {BecauseValues, LabelValues, NoticeValues, QuestionValues, RefusalValues} from '../../check/says.js';
import type {StepId} from '../../procedure/step-ids.js';
import type {Sentences} from '../../said.js';
import {found, speaker} from '../speaker.js';
import {signedTyped} from '../typed.js';
import {entries} from './entries.js';
import {options} from './options.js';
import {ways} from './problems.js';
import {reasons} from './reasons.js';
import {inQuotes, refusals as typedRefusals} from './refusals.js';
import {remedies} from './remedies.js';
import {steps} from './steps/index.js';

const titled = (step: StepId): string => found(steps, step)?.title ?? step;

const again = 'Den Messwert neu eintippen. Esc führt zurück zur anderen Grenze.';

/** Why a series was closed. */
const because: Sentences<BecauseValues> = {
	'as-said': ({sentence}) => sentence,
	'answer-changed': ({step}) => `„${titled(step)}“ geändert`,
	'other-profile': () => 'anderes Profil',
	'asked-anew': () => 'neu gefragt',
	'left-overnight': () => 'die Prüfung blieb zwölf Stunden oder länger liegen',
	'put-back-between': () => 'das Herrichten hatte begonnen',
	'changed-while-left': ({item}) => `„${found(entries.inDoubt, item) ?? item}“ geändert, während die Prüfung ruhte`,
	remedy: ({remedy}) => `gewählt wurde „${found(remedies, remedy)?.name ?? remedy}“`,
	'closing-off': () => 'die Schlussrunde wich ab',
	'put-right-by-hand': () => 'von Hand berichtigt',
};

const toldOf = speaker(because);

/** Why an entry was not taken. */
const refusals: Sentences<RefusalValues> = {
	...typedRefusals,
	'as-told': ({sentence}) => sentence,
	'time-passed': () => 'Die letzte Eingabe kam zu spät. Erst dies beantworten.',
	'doubts-first': () => 'Es ist Zeit vergangen. Erst sagen, was sich geändert hat, dann weiter.',
	'bias-off-first': () => 'Das Antiskating ist an. Erst abnehmen.',
	'bias-on-first': () => 'Erst das Antiskating anlegen.',
	'was-being-put-back': () =>
		'Das Herrichten zum Spielen hatte begonnen. Erst sagen, was sich geändert hat; dann beginnt eine neue Messreihe.',
	'off-the-scale': ({typed, top}) =>
		`${inQuotes(typed)} kann nicht stimmen: Die Skala des Kraftmessers endet bei ${top}. ${top} eintippen, wenn der Zeiger am Anschlag liegt.`,
	'crossed-turned': ({other}) =>
		`Das Vorzeichen passt nicht zur anderen Grenze, ${signedTyped(other)}. Nachsehen, ob der Kraftmesser gedreht ist. ${again}`,
	'crossed-pushes': ({other}) =>
		`Die äußere Grenze muss weiter außen liegen als die innere (${signedTyped(other)}). Sind die Drücke vertauscht? ${again}`,
	'crossed-limits': ({other}) =>
		`Die äußere Grenze muss weiter außen liegen als die innere (${signedTyped(other)}). Stimmt ein Vorzeichen nicht, oder sind beide Grenzen vertauscht? ${again}`,
	'signs-swapped': ({other}) =>
		`Die Vorzeichen scheinen vertauscht: Die äußere Grenze muss weiter außen liegen als die innere (${signedTyped(other)}). ${again}`,
	'press-side': ({plus, minus}) =>
		`${entries.written.sides[plus].charAt(0)} oder ${entries.written.sides[minus].charAt(0)} drücken.`,
	'one-round-at-least': () => 'Erst wenigstens eine ganze Runde messen.',
	'outer-limit-lacks': () =>
		'Die äußere Grenze dieser Runde fehlt. Sie eintippen, oder den letzten Messwert zurücknehmen.',
	'press-yes-or-no': () => 'j für ja, n für noch nicht.',
	'no-reading-here': ({typed}) => `Eine Zeile ${inQuotes(typed)} gibt es hier nicht. Die Nummer einer Zeile eintippen.`,
	'choose-by-number': () => 'Mit der Nummer aus der Liste wählen.',
	'press-still': () => 'j, wenn alles noch stimmt, oder die Nummer von dem, was sich geändert hat.',
	'few-words': () => 'Den Grund in wenigen Worten eintippen, höchstens 80 Zeichen.',
	'no-reading-yet': () => 'Diese Messreihe hat noch keinen Messwert.',
	'comes-first': ({step, first}) =>
		`„${titled(step)}“ muss warten: Erst kommt „${first === undefined ? '' : titled(first)}“.`,
};

/** What happened with an entry and is not to be seen otherwise. */
const notices: Sentences<NoticeValues> = {
	'as-told': ({sentence}) => sentence,
	'does-not-pass-any-more': ({step}) => `Nach „${titled(step)}“ genügt dies nicht mehr:`,
	'round-anew': () => 'Diese Runde beginnt neu: Kraftmesser wieder aufstellen. Ihre erste innere Grenze zählt nicht.',
	'setting-kept': ({number}) =>
		`Einstellung ${number} bleibt mit ihren Messwerten erhalten. Eine neue Einstellung beginnt.`,
	'series-kept': ({number, because: why}) => `Messreihe ${number} bleibt erhalten, eine neue beginnt: ${toldOf(why)}.`,
};

/** How far a stage or a step of the list is. */
const marks = {open: ' ', done: '✓', again: '?', problem: '✗', overridden: '~'};

/** What can be chosen. */
const labels: Sentences<LabelValues> = {
	named: ({name}) => name,
	way: ({way}) => ways[way],
	regardless: () => 'trotzdem weiter, mit Grund',
	reason: ({reason}) => reasons[reason],
	'other-reason': () => 'anderer Grund (eintippen)',
	'take-back': () => 'letzten Messwert zurücknehmen',
	'one-more-round': () => 'noch eine Runde',
	strike: () => 'eine Runde streichen',
	'probe-again': () => 'neu messen: eine neue Messreihe',
	'less-bias': () => 'weniger Antiskating, neu messen',
	'without-figures': () => 'an diesem Radius ohne Werte weiter',
	'to-verdict': () => 'weiter zum Urteil',
	enough: () => 'genug: weiter',
	'put-back': () => 'genug: Laufwerk spielbereit machen',
	leave: () => 'Arm so lassen: Laufwerk spielbereit machen',
	'to-maker': () => 'Arm zum Hersteller: Laufwerk spielbereit machen',
	'other-way': () => 'ein anderer Weg',
	'radius-between': () => 'Runden an einem Radius dazwischen',
	'look-at-bias': () => 'Antiskating einstellen und damit messen',
	'set-bias': () => 'Antiskating gegen Skating einstellen',
	'see-skating': () => 'ansehen, wie Skating auf den Arm wirkt',
	'more-rounds': ({place}) =>
		({
			inner: 'mehr Runden am inneren Radius',
			outer: 'mehr Runden am äußeren Radius',
			extra: 'mehr Runden am dritten Radius',
		})[place],
	'back-to-setting': ({setting}) => `zurück zu Einstellung ${setting}`,
	'adjust-bias': () => 'Antiskating neu einstellen, neu messen',
	'keep-setting': () => 'diese Einstellung behalten',
	'other-drag': () => 'andere Rillenreibung annehmen',
	'round-or-correction': () => 'noch eine Runde, oder berichtigen',
	round: ({place, number, innerLimit, outerLimit = ''}) =>
		`${entries.places[place]}${place === 'extra' ? ' Radius' : ''}, Runde ${number}: ${signedTyped(innerLimit)} / ${signedTyped(outerLimit)}`,
	'carry-on': () => 'die Prüfung doch fortsetzen',
	stop: () => 'hier aufhören und Laufwerk spielbereit machen',
	judge: () => 'restliche Runden messen, für ein Urteil',
	'fewer-rounds': () => 'mit diesen Runden weiter',
	option: ({step, option}) => found(found<Readonly<Record<string, string>>>(options, step) ?? {}, option) ?? option,
	side: ({side}) => entries.sides[side],
	remedy: ({remedy}) => remedies[remedy].name,
	'in-doubt': ({item}) => entries.inDoubt[item],
	stage: ({stage, state}) => `${marks[state]} ${entries.stages[stage]}`,
	step: ({step, state}) => `${marks[state]} ${titled(step)}`,
	'new-profile': () => 'neu eingeben',
};

const questions: Sentences<QuestionValues> = {
	tick: ({list, line}) => found(entries.ticks[list], line) ?? line,
	'all-still-so': () => 'Stimmt alles noch?',
	'all-lines-so': () => 'Alles erledigt?',
};

export const dialogue = {
	because,
	refusals,
	notices,
	labels,
	questions,
	/** Of something on file that this version does not know. */
	unknown: 'etwas, das diese Version nicht kennt',
};
