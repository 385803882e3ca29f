import type {Limits} from '../../measures/verdict.js';
import type {OpenFigure} from '../../results/closing-rows.js';
import type {FindingCode, FindingValues} from '../../results/diagnose.js';
import {type GaugeUnit, units} from '../../units.js';
import {listed, mm, percent, plainNumber} from '../numbers.js';
import {bandAt, forceWithWay, limitInQuestion, pullAt, sideForce, sureFirst, wayOf, wouldDecideIt} from './figures.js';

/** What is said of a finding. */
type FindingWords<Values> = {
	/** What the arm does, in one short sentence. */
	readonly brief: string;
	/** What was found, with value, uncertainty and limit: in short sentences. */
	readonly found: (values: Values) => string;
	/** The likely cause, after a colon; empty where the figures name none. */
	readonly likely: string;
	/** Who does what next, in short sentences. */
	readonly next: (values: Values) => string;
};

const at = (radiiMm: readonly number[]): string => listed(radiiMm.map(mm));
const pulls = (radii: readonly Parameters<typeof pullAt>[0][]): string => listed(radii.map(pullAt));
const bands = (radii: readonly Parameters<typeof bandAt>[0][]): string => listed(radii.map(bandAt));
const top = (topOfScale: number, unit: GaugeUnit): string => `${plainNumber(topOfScale)} ${units[unit].label}`;
const shares = (all: FindingValues['not-level']['shares']): string =>
	listed(
		all.map(({radiusMm, sharePct, uncertaintyPct}) => `${sideForce(sharePct, uncertaintyPct)} bei ${mm(radiusMm)}`),
	);
const limits = ({good, usable}: Limits): string =>
	`gut bis ${plainNumber(good)} %, brauchbar bis ${plainNumber(usable)} %`;

const changed = ({radii, differencePct, leastPct}: FindingValues['spring-pull']): string =>
	`Der Zug ist ${pulls(radii)}. Nach Abzug der Neigung ändert er sich von Radius zu Radius um ${percent(differencePct, 1)} (erlaubt ${plainNumber(leastPct)} %).`;
const neutral = (radiusMm: number | null): string =>
	radiusMm === null ? '' : ` Kein Zug bei ${mm(Math.round(radiusMm))}.`;

const open = ({figure, at: radius, atWorst}: OpenFigure, limits: Limits): string =>
	`${figure === 'pull' ? `Zug ${pullAt(radius)}` : `Reibung ${bandAt(radius)}`} (${limitInQuestion(atWorst, limits)}): ${sureFirst(atWorst)}.`;

const decidedBy = ({wanted, atWorst}: OpenFigure): string => {
	if (wanted === 'three-rounds') return 'drei Runden messen';
	if (wanted === 'agreement') return 'die Runden passen nicht zusammen. Neu messen oder die abweichende streichen';
	return wouldDecideIt(wanted, atWorst);
};
const wayOn = (one: OpenFigure): string =>
	`${one.figure === 'pull' ? 'Zug' : 'Reibung'} bei ${mm(one.at.radiusMm)}: ${decidedBy(one)}.`;

const probeAgain = 'Dann einen Radius neu messen: Nadelschutz frei, keine Hand am Laufwerk.';
const toMaker = 'Bleibt es so: den Arm zum Hersteller einschicken.';
const levelFirst = 'Besitzer: Tonarmbasis waagrecht stellen, dann neu messen.';

/** What was found, in short and in full, its likely cause and what to do next, by code. */
export const findings: {readonly [Code in FindingCode]: FindingWords<FindingValues[Code]>} = {
	'off-scale': {
		brief: 'Ein Messwert erreichte das Skalenende. Dort keine Zahl.',
		found: ({radiiMm, topOfScale, unit}) =>
			`Bei ${at(radiiMm)} erreichte ein Messwert das Skalenende, ${top(topOfScale, unit)}. Dort keine Zahl.`,
		likely: 'ein schiefes Laufwerk, Antiskating noch an oder ein Fehler im Arm',
		next: () => `Techniker: Antiskating und Neigung nachsehen, Litzen neu legen. ${probeAgain} ${toMaker}`,
	},
	moved: {
		brief: 'Während der Runden hat sich etwas verschoben.',
		found: ({movedPct, allowedPct}) =>
			`Die Schlussrunde liegt ${percent(Math.abs(movedPct), 1)} weiter ${wayOf(movedPct)} als die anderen inneren Runden (erlaubt ${percent(allowedPct, 1)}).`,
		likely: 'Kraftmesser, Laufwerk oder eine Litze haben sich verschoben',
		next: () => 'Techniker: suchen, was sich verschoben hat, dann neu messen.',
	},
	'tilt-explains': {
		brief: 'Die Neigung des Laufwerks macht den Zug.',
		found: ({radii, shares: made, goodPct}) =>
			`Der Zug ist ${pulls(radii)} (gut bis ${plainNumber(goodPct)} %). Die Neigung allein macht ${shares(made)}.`,
		likely: 'die Neigung macht den Zug',
		next: () => levelFirst,
	},
	'not-level': {
		brief: 'Das Laufwerk steht nicht waagrecht. Seine Neigung steckt in jedem Messwert.',
		found: ({shares: made, allowedPct, own}) => {
			const without = listed(own.map((one) => `${forceWithWay(one.ownPullPct, '%', 1)} bei ${mm(one.radiusMm)}`));
			return `Die Neigung allein macht ${shares(made)} (erlaubt ${plainNumber(allowedPct)} %).${own.length === 0 ? '' : ` Ohne sie wäre der Zug ${without}.`}`;
		},
		likely: 'die Neigung steckt in jedem Messwert',
		next: () => levelFirst,
	},
	'pull-and-friction': {
		brief: 'Der Arm klemmt, und ein Zug drückt ihn zur Seite.',
		found: ({radii, pullUsablePct, bandUsablePct}) =>
			`Der Zug ist ${pulls(radii)} (brauchbar bis ${plainNumber(pullUsablePct)} %). Die Reibung ist ${bands(radii)} (brauchbar bis ${plainNumber(bandUsablePct)} %).`,
		likely: 'zwei Ursachen zugleich',
		next: ({finestPct}) =>
			`Techniker: Litzen neu legen. ${probeAgain} ${toMaker} Bis dahin das Antiskating nicht feiner als ± ${percent(finestPct, 1)} einstellen.`,
	},
	'constant-pull': {
		brief: 'Der Zug ist an beiden Radien etwa gleich.',
		found: ({radii, goodPct}) =>
			`Der Zug ist an beiden Radien etwa gleich: ${pulls(radii)} (gut bis ${plainNumber(goodPct)} %).`,
		likely: 'die Nullanzeige des Kraftmessers, Antiskating nicht aus oder eine am Lager verdrehte Litze',
		next: ({isTurned}) =>
			`Techniker: ${isTurned ? 'nachsehen' : 'eine gedrehte Runde messen. Nachsehen'}, ob das Antiskating aus ist, dann die Litzen neu legen. Im Arm selbst arbeitet nur der Hersteller.`,
	},
	'spring-pull': {
		brief: 'Der Zug ändert sich über die Platte wie bei einer Feder.',
		found: (values) => `${changed(values)} Er drückt zurück wie eine Feder.${neutral(values.neutralRadiusMm)}`,
		likely: 'die Litzen wirken als Feder',
		next: () => 'Techniker: Litzen so legen, dass sie locker hängen, wenn der Arm zwischen beiden Radien steht.',
	},
	'runaway-pull': {
		brief: 'Der Zug wächst über die Platte und läuft davon.',
		found: (values) =>
			`${changed(values)} Je weiter der Arm geht, desto mehr drückt er.${neutral(values.neutralRadiusMm)}`,
		likely: 'eine Litzenschleife, die umschlägt, Antiskating noch an oder ein Magnet',
		next: () => 'Techniker: am ganzen Schwenkweg suchen, was zieht.',
	},
	friction: {
		brief: 'Der Arm klemmt überall.',
		found: ({radii, usablePct}) => `Die Reibung ist ${bands(radii)} (brauchbar bis ${plainNumber(usablePct)} %).`,
		likely: 'Schmutz, Vorspannung, altes Öl, Dämpfung noch drin oder eine Litze, die reibt',
		next: () =>
			`Techniker: Dämpfung nachsehen, Litzen neu legen. ${probeAgain} ${toMaker} Nie ein Lager ohne Anleitung des Herstellers verstellen.`,
	},
	'friction-local': {
		brief: 'Der Arm klemmt an einem Ende mehr.',
		found: ({radii, differencePct, leastPct}) =>
			`Die Reibung ist ${bands(radii)}. Der Unterschied ist ${percent(differencePct, 1)} (erlaubt ${plainNumber(leastPct)} %).`,
		likely:
			'etwas streift, ein Lagerring ist beschädigt, eine Litze liegt dort an, oder das Gestänge der Abschaltung bremst',
		next: () => 'Techniker: Litzen, Lift, Stütze und Gestänge am ganzen Schwenkweg beobachten.',
	},
	'no-pattern': {
		brief: 'Zu viel, und keine einzelne Ursache zeigt sich.',
		found: ({radii, pullUsablePct, bandUsablePct}) =>
			`Der Zug ist ${pulls(radii)} (brauchbar bis ${plainNumber(pullUsablePct)} %). Die Reibung ist ${bands(radii)} (brauchbar bis ${plainNumber(bandUsablePct)} %). Keine einzelne Ursache zeigt sich.`,
		likely: '',
		next: () =>
			'Techniker: Runden an einem Radius dazwischen messen: Litzen neu gelegt, Nadelschutz frei, keine Hand am Laufwerk. Zeigt sich nichts: den Arm mit den Zahlen zum Hersteller einschicken.',
	},
	'bias-idle': {
		brief: 'Die Antiskating-Vorrichtung tut nichts.',
		found: ({radiiMm, leastPct}) =>
			`Das Antiskating ändert den Messwert bei ${at(radiiMm)} um weniger als ${plainNumber(leastPct)} %.`,
		likely: 'das Gewicht fehlt, der Faden ist nicht eingehängt, oder ein Anschlag ist im Weg',
		next: () => 'Techniker: Arm verriegeln, Nadelschutz drauf. Vorrichtung nachsehen, dann neu messen.',
	},
	'bias-off-scale': {
		brief: 'Mit Antiskating erreicht ein Messwert das Skalenende.',
		found: ({radiiMm, topOfScale, unit}) =>
			`Mit Antiskating erreichte ein Messwert bei ${at(radiiMm)} das Skalenende, ${top(topOfScale, unit)}. Dort keine Zahl.`,
		likely: 'zu viel Antiskating oder eine zu hoch angenommene Rillenreibung',
		next: () => 'Techniker: Antiskating verringern, dann neu messen.',
	},
	'bias-rubs': {
		brief: 'Die Antiskating-Vorrichtung bringt Reibung.',
		found: ({onPct, offPct, radiusMm, leastPct}) =>
			`Mit Antiskating ist die Reibung ${percent(onPct, 1)} bei ${mm(radiusMm)}. Ohne Antiskating ist sie höchstens ${percent(offPct, 1)} (erlaubt: ${plainNumber(leastPct)} % mehr).`,
		likely: 'Faden oder Rolle bremsen',
		next: () => 'Techniker: Faden und Rolle säubern und ausrichten, dann neu messen.',
	},
	'bias-uneven': {
		brief: 'Das Antiskating passt nicht über die ganze Platte.',
		found: ({left, allowedPct}) =>
			`Die beste Einstellung lässt noch einen Rest: ${listed(left.map(({radiusMm, leftPct}) => `${forceWithWay(leftPct, '%', 1)} bei ${mm(radiusMm)}`))} (erlaubt ${plainNumber(allowedPct)} %).`,
		likely: 'ein Hebel, der nicht über die ganze Platte waagrecht liegt, oder der Winkel des Fadens',
		next: () =>
			'Techniker: Faden oder Rolle versetzen, soweit der Hersteller es erlaubt, bis der Hebel an jedem Radius etwa waagrecht liegt.',
	},
	'playable-with-bias': {
		brief: 'Antiskating kann den Zug ausgleichen.',
		found: ({radii, worstAfterPct, goodPct, worstAfterDragPct, drag, usablePct}) =>
			`Antiskating kann den Zug von ${pulls(radii)} ausgleichen. Mit der besten Antiskating-Einstellung bleiben höchstens ${percent(worstAfterPct, 1)} Rest (gut bis ${plainNumber(goodPct)} %). Ist die Rillenreibung um ${plainNumber(drag)} kleiner oder größer, bleiben höchstens ${percent(worstAfterDragPct, 1)} Rest (brauchbar bis ${plainNumber(usablePct)} %).`,
		likely: 'ein gleichmäßiger Zug',
		next: () => 'Techniker: Antiskating so einstellen. Der Arm darf spielen, den Zug später beheben.',
	},
	undecided: {
		brief: 'Eine Zahl ist unentschieden.',
		found: ({open: all, pullLimits, bandLimits}) =>
			all.map((one) => open(one, one.figure === 'pull' ? pullLimits : bandLimits)).join(' '),
		likely: '',
		next: ({open: all}) => `Techniker: klären. ${all.map(wayOn).join(' ')}`,
	},
	sound: {
		brief: 'Der Arm schwenkt frei.',
		found: ({radii, atWorst, pullLimits, bandLimits}) =>
			`Der Arm ist ${atWorst === 'good' ? 'gut' : 'brauchbar oder besser'}. Der Zug ist ${pulls(radii)} (${limits(pullLimits)}). Die Reibung ist ${bands(radii)} (${limits(bandLimits)}).`,
		likely: '',
		next: () => 'Besitzer: Arm so lassen.',
	},
};
