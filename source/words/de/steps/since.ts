import type {StepSentences} from '../../step-sentences.js';

export const since = {
	'done-since': {
		title: 'Seit der letzten Prüfung',
		ask: 'Was wurde seitdem an Arm oder Laufwerk gemacht?',
		short: 'Was seit der letzten Prüfung gemacht?',
		why: 'Eine Änderung mit bekannter Ursache ist keine Drift. Der Trend beginnt hier neu.',
		mistake: 'Neuen Tonabnehmer oder versetztes Laufwerk weggelassen.',
	},
	'done-since-note': {
		title: 'Was gemacht wurde',
		ask: 'Mit wenigen Worten eintippen, was gemacht wurde.',
		why: 'Es steht im Verlauf des Arms.',
		mistake: 'Eingetippt, wann es war, nicht was.',
	},
} satisfies Partial<StepSentences>;
