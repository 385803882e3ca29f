import type {GaugeMount} from '../../../procedure/readings.js';
import {inUnit, scaleText} from '../../numbers.js';
import type {StepSentences} from '../../step-sentences.js';

/** Gauge first, arm after. */
const placed: Readonly<Record<GaugeMount, string>> = {
	stands: 'Erst den Kraftmesser stellen, dann den Arm darauf.',
	hangs: 'Erst den Kraftmesser hängen, dann den Arm darauf.',
	clamped: 'Erst den Kraftmesser klemmen, dann den Arm darauf.',
	hand: '',
};

/** How the arm comes onto the gauge. */
const neverUnder =
	'Kraftmesser nie unter einen hängenden Arm schieben. Arm mit dem Lift absenken. Kein Lift: am Fingergriff, Handgelenk auf einem Klotz.';

export const weighing = {
	'guard-on': {
		title: 'Nadelschutz',
		short: 'Nadelschutz drauf?',
		ask: ({isUnipivot}) =>
			isUnipivot
				? 'Arm verriegelt. Nadelschutz gerade aufschieben. Einpunktlager nie nach unten drücken.'
				: 'Arm verriegelt. Nadelschutz gerade aufschieben.',
		why: 'Er schützt den Nadelträger, bis das Laufwerk wieder spielbereit ist.',
		mistake: 'Nadelschutz bei losem Arm aufgeschoben. Dann trifft der Druck die Nadel.',
		caution:
			'Eine Nadel ist spitz; ihr Nadelträger bricht bei einer Berührung. Ohne Nadelschutz ist die Nadel ungeschützt: langsam arbeiten.',
	},
	weighed: {
		title: 'Wie gewogen wird',
		ask: 'Leere Waage auf null stellen. Wie wird gewogen?',
		why: 'Der Kraftmesser trägt Arm und Nadelschutz. Also beide wiegen.',
		mistake: 'Waage mit aufgelegtem Nadelschutz auf null gestellt. Dann fehlt der Nadelschutz.',
	},
	'guard-account': {
		title: 'Der Nadelschutz fehlte',
		ask: ({guardG}) => `Gewogen wurde ohne den Nadelschutz (${inUnit(guardG, 'g')}). Was tun?`,
		why: 'Neu wiegen mit Nadelschutz ist sicherer.',
		mistake: 'Übersehen. Ein halbes Gramm sind 28 % von 1,8 g.',
	},
	'force-reading': {
		title: 'Auflagekraft',
		ask: ({hasGuard, targetMn, matMm}) =>
			[
				matMm === undefined
					? 'Waagschale auf Höhe der Platte stellen.'
					: `Die Matte ist ab: Tonarmwaage ${inUnit(matMm, 'mm')} höher stellen.`,
				targetMn === undefined || !hasGuard
					? 'Arm wiegen.'
					: `Gegengewicht stellen, bis Arm und Nadelschutz ${scaleText(targetMn)} wiegen.`,
				'Arm verriegeln, dann eintippen, was die Waage zeigte.',
			].join(' '),
		why: 'Ein Kraftmesser in Prozent zeigt Prozent dieser Kraft.',
		mistake:
			'Gegengewicht gedreht, während die Nadel auf der Waage lag. Erst den Arm in die Stütze. Stahl nahe einem starken Magneten verfälscht.',
	},
	'arm-afloat': {
		title: 'Arm schwebt',
		short: 'Arm schwebt waagrecht?',
		ask: ({hasGuard, hasSpring}) =>
			`${hasSpring ? 'Feder auf null. ' : ''}Gegengewicht stellen, bis der Arm waagrecht schwebt${hasGuard ? ', Nadelschutz drauf' : ''}. Arm verriegeln. Erledigt?`,
		why: 'Ein schwebender Arm hat keine Auflagekraft. So zeigt der Kraftmesser nur den Druck zur Seite.',
		mistake: 'Gegengewicht am schwebenden Arm gedreht. Erst den Arm in die Stütze.',
		caution: 'Ein schwebender Arm schwenkt bei jeder Berührung. Am Fingergriff halten, bis er verriegelt ist.',
	},
	clearance: {
		title: 'Höhe',
		ask: ({hangsFar, mount}) =>
			`${placed[mount]} Wie hoch steht die Nadel über Matte oder Teller?${hangsFar ? ' Diesen Arm tief stellen.' : ''}`,
		why: 'Zu tief, und der Nadelschutz schleift. Zu hoch, und der Arm steht nicht wie beim Abspielen.',
		mistake: 'Klotz unter die Nadel geschoben. Lineal dahinter halten.',
		caution: neverUnder,
	},
	'guard-gap': {
		title: 'Abstand unterm Nadelschutz',
		ask: ({mount}) => `${placed[mount]} Fühlerlehre unter den Nadelschutz schieben. Wie groß ist der Abstand?`,
		why: 'Zu tief, und der Nadelschutz schleift. Zu hoch, und der Arm steht nicht wie beim Abspielen.',
		mistake: 'Fühlerlehre unter die Nadel geschoben.',
		caution: neverUnder,
	},
	'lifter-clear': {
		title: 'Lift',
		short: 'Papier geht an beiden Radien durch?',
		ask: 'An jedem Radius: Arm auf dem Kraftmesser, Lift unten. Geht Papier zwischen Lift und Arm durch?',
		why: 'Berührt der Lift den Arm, sieht das aus wie Reibung.',
		mistake: 'Nur an einem Radius nachgesehen. Kein Lift: j.',
	},
	'force-at-height': {
		title: 'Neu gewogen in Messhöhe',
		ask: 'In Messhöhe neu wiegen. Nadelschutz drauf oder ab: wie beim ersten Wiegen. „-“ eintippen, um den ersten Wert zu behalten.',
		why: 'Liegt das Gegengewicht hoch oder tief, oder ein Magnet nahe an Stahl, ändert sich die Kraft mit der Höhe.',
		mistake: 'Höhe geschätzt. Waage unterlegen, bis der Arm so hoch steht wie auf dem Kraftmesser.',
	},
} satisfies Partial<StepSentences>;
