import type {AtWorst} from '../../../results/figures-types.js';
import {listed, percent, plainNumber, printsAsZero, rounded, scaleAndMn} from '../../numbers.js';
import {wayOf} from '../figures.js';

/** What speaks against playing: the deck, the check, or what it found. */
type WhyNotPlayed = keyof typeof whyNotPlayed;
const whyNotPlayed = {
	deck: 'das Laufwerk ist nicht spielbereit',
	void: 'diese Prüfung zählt nicht',
	unfinished: 'der Arm ist nicht fertig gemessen',
	'off-scale': 'ein Messwert erreichte das Skalenende',
	pull: 'der Zug ist zu groß',
	band: 'die Reibung ist zu groß',
	undecided: 'erst weitere Messwerte zeigen, ob der Arm brauchbar ist',
};

/** What an issued finding may call who does it. */
const people: Readonly<Record<string, string>> = {owner: 'Besitzer', technician: 'Techniker', maker: 'Hersteller'};

const outcomes: Readonly<Record<string, string>> = {
	complete: 'fertig',
	stopped: 'vorzeitig beendet',
	interrupted: 'unterbrochen',
	open: 'noch offen',
};

/** A size with its uncertainty and its way, '0,39 mN ± 0,05 mN nach außen'; one that prints as zero has no way. */
const withWay = (value: number, uncertainty: number, unit: string, decimals: number): string => {
	const size = `${rounded(Math.abs(value), decimals)} ${unit} ± ${rounded(uncertainty, decimals)} ${unit}`;
	return printsAsZero(value, decimals) ? size : `${size} ${wayOf(value)}`;
};

/** Sentences and names of the parts of a report. */
export const parts = {
	verdict: {
		nextCheck: ({day, because}: {day: string; because: string}) => `Nächste Prüfung: ${day}. ${because}`,
		/** What was issued may name who does it. */
		doNext: ({who, next}: {who: string; next: string}) => {
			const person = people[who] ?? who;
			return `Als Nächstes${next.includes(person) || next.includes(who) ? '' : ` (${person})`}: ${next}.`;
		},
		finish: 'Als Nächstes (Techniker): die Prüfung fertig machen.',
		checkAgain: 'Als Nächstes (Techniker): den Arm noch einmal prüfen.',
		mayBePlayed: {
			no: ({because}: {because: readonly WhyNotPlayed[]}) =>
				`Spielen erlaubt: nein, denn ${listed(because.map((one) => whyNotPlayed[one]))}.`,
			good: 'Spielen erlaubt: ja, denn Zug und Reibung sind gut.',
			usable: 'Spielen erlaubt: ja, denn Zug und Reibung sind brauchbar.',
			withBias: 'Spielen erlaubt: ja, sobald das Antiskating eingestellt ist, denn es gleicht den Zug aus.',
		},
		limitsOfPull: ({caption, goodPct, usablePct}: {caption: string; goodPct: number; usablePct: number}) =>
			`${caption} Zug: gut bis ${plainNumber(goodPct)} %, brauchbar bis ${plainNumber(usablePct)} %.`,
	},

	deck: {
		ready: 'Das Laufwerk ist wieder spielbereit.',
		notReady: 'Das Laufwerk ist nicht spielbereit.',
		notReadyBesideVerdict: 'Laufwerk nicht spielbereit: Die Liste dafür ist nicht fertig.',
		ended: ({outcome}: {outcome: string}) => `Ende der Prüfung: ${outcome}.`,
		done: 'erledigt',
		notDone: 'nicht erledigt',
		leftSo: ({reason, answer}: {reason: string; answer: string}) => `so belassen: ${reason} (Antwort: ${answer})`,
	},

	findings: {
		likely: ({likely}: {likely: string}) => `Vermutlich: ${likely}.`,
	},

	overridden: {
		/** Beside the verdict, by the titles of the steps. */
		spoilsReadings: ({steps}: {steps: readonly string[]}) =>
			`Übergangen, daher stimmen die Messwerte vielleicht nicht: ${listed(steps)}.`,
		spoilsPlay: ({steps}: {steps: readonly string[]}) => `Beim Herrichten übergangen: ${listed(steps)}.`,
		still: 'gilt\u00A0noch',
		earlier: ({series}: {series: number}) => `früher, in Messreihe ${series}`,
	},

	readings: {
		placeWithSetting: ({place, setting}: {place: string; setting: string}) => `${place}, Einstellung ${setting}`,
		notRead: 'nicht gelesen',
		struck: ({reason}: {reason: string}) => `gestrichen: ${reason}`,
	},

	/** Under what it was measured. */
	conditions: {
		groups: {
			room: 'Raum, Matte und Neigung',
			prepared: 'Vorbereitet',
			force: 'Nadelschutz, Auflagekraft, Abstand',
			zero: 'Nullanzeige, ohne Arm gelesen',
			biasOn: 'Antiskating an',
			arm: 'Arm',
			cartridge: 'Tonabnehmer',
			tools: 'Kraftmesser, Werkzeug',
		},
		ticked: {yes: 'ja', no: 'nein', open: 'nicht beantwortet'},
		overridden: ({answer}: {answer: string}) => `${answer} (übergangen)`,
		carried: ({carriedMn, playingMn}: {carriedMn: number; playingMn: number}) =>
			carriedMn === 0
				? 'Der Arm schwebte: Der Kraftmesser trug nichts.'
				: `Der Kraftmesser trug ${scaleAndMn(carriedMn)}, ${percent((100 * carriedMn) / playingMn, 1)} der Abspielkraft.`,
	},

	/** For the maker of the arm. */
	maker: {
		purpose:
			'Für den Hersteller des Arms: die Zahlen einer Prüfung, und was ausgeschlossen wurde. Diese Seite sagt nicht, wer oder was schuld ist.',
		inWords: 'In Worten:',
		radius: ({place, radiusMm}: {place: string; radiusMm: number}) => `${place} ${plainNumber(radiusMm)} mm`,
		figures: {
			pull: 'Zug',
			force: 'derselbe als Kraft',
			torque: 'derselbe als Drehmoment',
			tiltShare: 'davon durch Neigung',
			band: 'Reibung',
			breakaway: 'Losbrechkraft, je Richtung',
			rounds: 'gezählte Runden',
		},
		force: ({mn, uncertaintyMn}: {mn: number; uncertaintyMn: number}) => withWay(mn, uncertaintyMn, 'mN', 2),
		torque: ({microNm, uncertaintyMicroNm}: {microNm: number; uncertaintyMicroNm: number}) =>
			withWay(microNm, uncertaintyMicroNm, 'µN·m', 0),
		offScale: 'Skalenende',
		notKnown: 'nicht bekannt',
	},

	/** An arm over its checks. */
	years: {
		onlyCheck: 'Bisher zählt nur diese eine Prüfung.',
		noFigures: ({outcome}: {outcome: string}) => `keine Zahlen (${outcomes[outcome] ?? outcome})`,
		voidBecause: ({reason}: {reason: string}) => `ungültig: ${reason}`,
		notKnown: 'nicht bekannt',
		radius: ({radiusMm}: {radiusMm: number}) => `${plainNumber(radiusMm)} mm`,
		offScale: 'Skalenende',
		noVerdict: 'keins',
		verdicts: {good: 'gut', usable: 'brauchbar', beyond: 'zu viel', 'off-scale': 'Skalenende'} satisfies Record<
			AtWorst,
			string
		>,
		undecided: {
			good: 'gut',
			usable: 'brauchbar bis gut',
			beyond: 'vielleicht zu viel',
			'off-scale': 'vielleicht Skalenende',
		} satisfies Record<AtWorst, string>,
	},
};
