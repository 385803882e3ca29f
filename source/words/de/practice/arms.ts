import type {LessonId, Looks} from '../../../practice/arms.js';

/** What an invented arm is called, and what it teaches; the lesson is told at the end. */
export const arms: Readonly<Record<LessonId, {readonly name: string; readonly lesson: string}>> = {
	'twisted-lead': {
		name: 'Arm mit verdrehter Litze',
		lesson:
			'Eine verdrehte Litze drückt ihn zur Tellerachse, an beiden Radien gleich. Nur die Mitte beider Grenzen zeigt das.',
	},
	'well-behaved': {
		name: 'Gesunder Arm',
		lesson: 'Auch ein gesunder Arm hat etwas Zug und etwas Reibung, weit unter zu viel.',
	},
	'stiff-wire': {
		name: 'Arm mit steifen Litzen',
		lesson:
			'Die Litzen wirken wie eine Feder: Am inneren Radius drücken sie nach außen, am äußeren kaum. Die Reibung ist klein.',
	},
	'sticky-bearing': {
		name: 'Arm mit klemmendem Lager',
		lesson: 'Der Arm klemmt überall: Innere und äußere Grenze liegen weit auseinander, der Zug in der Mitte ist klein.',
	},
	'sticks-and-pulls': {
		name: 'Arm, der klemmt und zieht',
		lesson: 'Der Arm klemmt, und er zieht auch zur Tellerachse. Nur beide Grenzen zusammen trennen das.',
	},
	'tilted-deck': {
		name: 'Guter Arm auf schiefem Laufwerk',
		lesson: 'Der Arm ist gesund. Er neigt sich mit dem Laufwerk, und die Wasserwaage sagt, wie sehr.',
	},
	'bias-left-on': {
		name: 'Arm, bei dem zuletzt jemand etwas vergaß',
		lesson: 'Das Antiskating war noch an. Es macht einen gleichmäßigen Zug zum Rand.',
	},
	'paddle-left-in': {
		name: 'Arm mit Wanne und Öl',
		lesson: 'Das Paddel stand im Öl. Der Arm kriecht, und das Öl hält ihn wie ein schlechtes Lager.',
	},
	'lever-badly-set': {
		name: 'Arm mit Gewichtshebel',
		lesson:
			'Der Hebel steht am äußeren Radius auf 8:30, am inneren auf 7:15. Dort gehen zwei Fünftel seines Gewichts verloren.',
	},
	'worn-race': {
		name: 'Arm mit verschlissenem Lagerring',
		lesson: 'Die Reibung ist am inneren Radius 2,5-mal so groß: Dort ist das Lager beschädigt.',
	},
};

/** What is to be seen by looking at an arm, as it came and once something was done to it. */
export const looks: {readonly [Part in keyof Looks]: Readonly<Record<Looks[Part], string>>} = {
	wires: {
		'easy-loop': 'Die Litzen verlassen den Arm in lockerem Bogen und berühren nichts.',
		twisted: 'Die Litzen sind dünn; eine ist verdreht und drückt den Arm zu einer Seite.',
		'stiff-bow': 'Die Litzen sind dick und stehen in steifem Bogen hinter dem Drehpunkt.',
		tied: 'Die Litzen sind dick, und ein Band hält sie straff an der Säule.',
		dressed: 'Die Litzen liegen in weitem, lockerem Bogen, ohne Drall.',
	},
	bias: {
		none: 'Der Arm hat kein Antiskating.',
		'weight-on-thread': 'Ein kleines Gewicht hängt an seinem Faden, und der Faden ist straff.',
		'lever-unweighted': 'Der Faden läuft über eine Rolle zum Gewichtshebel; das Gewicht liegt neben dem Laufwerk.',
		on: 'Das Gewicht hängt, und der Faden ist straff.',
		off: 'Das Gewicht liegt neben dem Laufwerk, der Faden hängt durch.',
	},
	damping: {
		none: 'Der Arm hat keine Dämpfung.',
		in: 'Das Paddel taucht in das Öl der Wanne.',
		out: 'Das Paddel hängt frei über dem Öl.',
	},
};
