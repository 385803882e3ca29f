import type {StepSentences} from '../../step-sentences.js';

export const radii = {
	'radius-inner': {
		title: 'Innerer Radius',
		ask: 'Inneren Radius eintippen, von der Tellerachse.',
		why: 'In allen Prüfungen gleich lassen, um sie zu vergleichen. Nahe am Etikett spannen die Litzen, und ein automatischer Stopp greift.',
		mistake: 'Unter 75 mm bei automatischem Stopp. Sein Gestänge hält dann den Arm.',
	},
	'radius-outer': {
		title: 'Äußerer Radius',
		ask: 'Äußeren Radius eintippen, von der Tellerachse.',
		why: 'Zwei Radien zeigen, ob sich der Zug über die Platte ändert.',
		mistake: 'So weit außen, dass der Arm die Stütze berührt.',
	},
	'radius-extra': {
		title: 'Dritter Radius',
		ask: 'Dritten Radius zum Messen eintippen, oder „-“ für keinen.',
		why: 'Schleift etwas dazwischen, zeigt es sich weder innen noch außen.',
		mistake: 'Immer einen dritten genommen. Zwei genügen für die meisten Arme.',
	},
} satisfies Partial<StepSentences>;
