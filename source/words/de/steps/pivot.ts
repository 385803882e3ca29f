import type {StepSentences} from '../../step-sentences.js';

export const pivot = {
	'arm-pivot-way': {
		title: 'Montageabstand, berechnet',
		ask: 'Rechenweg für den Montageabstand wählen.',
		why: 'Am Nullradius steht der Tonabnehmer tangential zur Rille. Zwei Nullradien ergeben den Montageabstand; einer und der Kröpfungswinkel auch.',
		mistake: 'Nullradien einer anderen Schablone eingetippt.',
	},
	'arm-null-radius': {
		title: 'Nullradius',
		ask: 'Einen Nullradius eintippen: Dort steht der Tonabnehmer tangential zur Rille.',
		why: 'Von der Schablone ablesen, mit der justiert wurde. Oder suchen, wo die Linie des Tonabnehmers quer zum Radius steht.',
		mistake: 'Vom Etikett aus gemessen, nicht von der Tellerachse.',
	},
	'arm-null-other': {
		title: 'Der andere Nullradius',
		ask: 'Den anderen Nullradius eintippen.',
		why: 'Ihre Summe ergibt den Kröpfungswinkel, ihr Produkt den Montageabstand.',
		mistake: 'Nullradien zweier Schablonen gemischt.',
	},
} satisfies Partial<StepSentences>;
