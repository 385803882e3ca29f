import type {Limits} from '../../measures/verdict.js';
import type {OpenFigure} from '../../results/closing-rows.js';
import type {FindingCode, FindingValues} from '../../results/diagnose.js';
import {type GaugeUnit, units} from '../../units.js';
import {listed, mm, percent, plainNumber} from '../numbers.js';
import {bandAt, forceWithWay, pullAt, sideForce, sureFirst, wayOf, wouldDecideIt} from './figures.js';

/** What is said of a finding. */
type FindingWords<Values> = {
	/** What the arm does, in one short sentence. */
	readonly brief: string;
	/** What was found, with value, uncertainty and limit: a whole sentence. */
	readonly found: (values: Values) => string;
	/** The likely cause, in the middle of a sentence; empty where the figures name none. */
	readonly likely: string;
	/** What to do next and who does it, in the middle of a sentence. */
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
	`Der Zug ist ${pulls(radii)}; ohne die Neigung ändert er sich um ${percent(differencePct, 1)} (erlaubt ${plainNumber(leastPct)} %)`;
const neutral = (radiusMm: number | null): string =>
	radiusMm === null ? '' : ` (kein Zug bei ${mm(Math.round(radiusMm))})`;

const wayOn = ({wanted, atWorst}: OpenFigure): string => {
	if (wanted === 'three-rounds') return 'drei Runden messen';
	if (wanted === 'agreement') return 'die Runden passen nicht zusammen: neu messen oder die abweichende streichen';
	return wouldDecideIt(wanted, atWorst);
};

/** What was found, in short and in full, its likely cause and what to do next, by code. */
export const findings: {readonly [Code in FindingCode]: FindingWords<FindingValues[Code]>} = {
	'off-scale': {
		brief: 'Ein Messwert erreichte das Skalenende. Dort keine Zahl.',
		found: ({radiiMm, topOfScale, unit}) =>
			`Bei ${at(radiiMm)} erreichte ein Messwert das Skalenende, ${top(topOfScale, unit)}: dort keine Zahl.`,
		likely: 'ein schiefes Laufwerk, Antiskating noch an oder ein Fehler im Arm',
		next: () =>
			'der Techniker sieht Antiskating, Neigung und Litzen nach und misst dann einen Radius noch einmal: Litzen neu gelegt, Nadelschutz frei, keine Hand am Laufwerk; bleibt es so: den Arm zum Hersteller einschicken',
	},
	moved: {
		brief: 'Während der Runden hat sich etwas verschoben.',
		found: ({movedPct, allowedPct}) =>
			`Die Schlussrunde liegt ${percent(Math.abs(movedPct), 1)} weiter ${wayOf(movedPct)} als die anderen inneren Runden (erlaubt ${percent(allowedPct, 1)}).`,
		likely: 'Kraftmesser, Laufwerk oder eine Litze haben sich verschoben',
		next: () => 'der Techniker sucht, was sich verschoben hat, und misst dann noch einmal',
	},
	'tilt-explains': {
		brief: 'Die Neigung des Laufwerks macht den Zug.',
		found: ({radii, shares: made, goodPct}) =>
			`Der Zug ist ${pulls(radii)} (gut bis ${plainNumber(goodPct)} %); die Neigung allein macht ${shares(made)}.`,
		likely: 'die Neigung macht den Zug',
		next: () => 'der Besitzer stellt die Tonarmbasis waagrecht und misst dann noch einmal',
	},
	'not-level': {
		brief: 'Das Laufwerk steht nicht waagrecht. Seine Neigung steckt in jedem Messwert.',
		found: ({shares: made, allowedPct, own}) => {
			const without = listed(own.map((one) => `${forceWithWay(one.ownPullPct, '%', 1)} bei ${mm(one.radiusMm)}`));
			return `Die Neigung allein macht ${shares(made)} (erlaubt ${plainNumber(allowedPct)} %)${own.length === 0 ? '' : `; ohne sie wäre der Zug ${without}`}.`;
		},
		likely: 'die Neigung steckt in jedem Messwert',
		next: () => 'der Besitzer stellt die Tonarmbasis waagrecht und misst dann noch einmal',
	},
	'pull-and-friction': {
		brief: 'Der Arm klemmt, und ein Zug drückt ihn zur Seite.',
		found: ({radii, pullUsablePct, bandUsablePct}) =>
			`Der Zug ist ${pulls(radii)} (brauchbar bis ${plainNumber(pullUsablePct)} %); die Reibung ist ${bands(radii)} (brauchbar bis ${plainNumber(bandUsablePct)} %).`,
		likely: 'zwei Ursachen zugleich; ein einzelner Messwert zeigt keine von beiden',
		next: ({finestPct}) =>
			`der Techniker misst einen Radius noch einmal: Litzen neu gelegt, Nadelschutz frei, keine Hand am Laufwerk; bleibt es so: den Arm zum Hersteller einschicken; bis dahin das Antiskating auf ± ${percent(finestPct, 1)} einstellen, nicht feiner`,
	},
	'constant-pull': {
		brief: 'An beiden Enden drückt derselbe Zug.',
		found: ({radii, goodPct}) =>
			`Der Zug ist an beiden Enden etwa gleich: ${pulls(radii)} (gut bis ${plainNumber(goodPct)} %).`,
		likely: 'die Nullanzeige des Kraftmessers, Antiskating nicht aus oder eine am Lager verdrehte Litze',
		next: ({isTurned}) =>
			isTurned
				? 'der Techniker sieht nach, ob das Antiskating aus ist, und legt dann die Litzen neu; im Arm selbst arbeitet nur der Hersteller'
				: 'der Techniker misst eine gedrehte Runde, sieht nach, ob das Antiskating aus ist, und legt dann die Litzen neu; im Arm selbst arbeitet nur der Hersteller',
	},
	'spring-pull': {
		brief: 'Der Zug wirkt über die Platte wie eine Feder.',
		found: (values) => `${changed(values)} und drückt zurück wie eine Feder${neutral(values.neutralRadiusMm)}.`,
		likely: 'die Litzen wirken als Feder',
		next: () => 'der Techniker legt die Litzen so, dass sie in der Mitte der Platte locker hängen',
	},
	'runaway-pull': {
		brief: 'Der Zug wächst über die Platte und läuft davon.',
		found: (values) =>
			`${changed(values)} und drückt umso mehr, je weiter der Arm geht${neutral(values.neutralRadiusMm)}.`,
		likely: 'eine Litzenschleife, die umschlägt, Antiskating noch an oder ein Magnet',
		next: () => 'der Techniker sucht am ganzen Schwenkweg, was zieht',
	},
	friction: {
		brief: 'Der Arm klemmt überall.',
		found: ({radii, usablePct}) => `Die Reibung ist ${bands(radii)} (brauchbar bis ${plainNumber(usablePct)} %).`,
		likely: 'Schmutz, Vorspannung, altes Öl, Dämpfung noch drin oder eine Litze, die reibt',
		next: () =>
			'der Techniker sieht die Dämpfung nach und misst dann einen Radius noch einmal: Litzen neu gelegt, Nadelschutz frei, keine Hand am Laufwerk; bleibt es so: den Arm zum Hersteller einschicken und kein Lager ohne dessen Anleitung verstellen',
	},
	'friction-local': {
		brief: 'Der Arm klemmt an einem Ende mehr.',
		found: ({radii, differencePct, leastPct}) =>
			`Die Reibung ist ${bands(radii)}; der Unterschied ist ${percent(differencePct, 1)} (erlaubt ${plainNumber(leastPct)} %).`,
		likely:
			'etwas streift, ein Lagerring ist beschädigt, eine Litze liegt dort an, oder das Gestänge der Abschaltung bremst',
		next: () => 'der Techniker beobachtet Litzen, Lift, Stütze und Gestänge am ganzen Schwenkweg',
	},
	'no-pattern': {
		brief: 'Außerhalb der Grenzen, aber keine einzelne Ursache zeigt sich.',
		found: ({radii, pullUsablePct, bandUsablePct}) =>
			`Außerhalb der Grenzen, aber keine einzelne Ursache zeigt sich: Zug ${pulls(radii)} (brauchbar bis ${plainNumber(pullUsablePct)} %), Reibung ${bands(radii)} (brauchbar bis ${plainNumber(bandUsablePct)} %).`,
		likely: '',
		next: () =>
			'der Techniker misst Runden an einem Radius dazwischen: Litzen neu gelegt, Nadelschutz frei, keine Hand am Laufwerk; zeigt sich nichts: den Arm mit den Zahlen zum Hersteller einschicken',
	},
	'bias-idle': {
		brief: 'Die Antiskating-Vorrichtung tut nichts.',
		found: ({radiiMm, leastPct}) =>
			`Das Antiskating ändert den Messwert bei ${at(radiiMm)} um weniger als ${plainNumber(leastPct)} %.`,
		likely: 'das Gewicht fehlt, der Faden ist nicht eingehängt, oder ein Anschlag ist im Weg',
		next: () => 'der Techniker verriegelt den Arm, Nadelschutz drauf, sieht die Vorrichtung nach und misst noch einmal',
	},
	'bias-off-scale': {
		brief: 'Mit Antiskating erreicht ein Messwert das Skalenende.',
		found: ({radiiMm, topOfScale, unit}) =>
			`Mit Antiskating erreichte ein Messwert bei ${at(radiiMm)} das Skalenende, ${top(topOfScale, unit)}: dort keine Zahl.`,
		likely: 'zu viel Antiskating oder eine zu hoch angenommene Rillenreibung',
		next: () => 'der Techniker verringert das Antiskating und misst noch einmal',
	},
	'bias-rubs': {
		brief: 'Die Antiskating-Vorrichtung bringt Reibung.',
		found: ({onPct, offPct, radiusMm, leastPct}) =>
			`Mit Antiskating ist die Reibung ${percent(onPct, 1)} bei ${mm(radiusMm)}, ohne höchstens ${percent(offPct, 1)} (erlaubt ${plainNumber(leastPct)} % mehr).`,
		likely: 'Faden oder Rolle bremsen',
		next: () => 'der Techniker säubert Faden und Rolle, richtet sie aus und misst dann noch einmal',
	},
	'bias-uneven': {
		brief: 'Das Antiskating passt nicht über die ganze Platte.',
		found: ({left, allowedPct}) =>
			`Die beste Einstellung lässt noch einen Rest: ${listed(left.map(({radiusMm, leftPct}) => `${forceWithWay(leftPct, '%', 1)} bei ${mm(radiusMm)}`))} (erlaubt ${plainNumber(allowedPct)} %).`,
		likely: 'ein Hebel, der nicht über die ganze Platte waagrecht liegt, oder der Winkel des Fadens',
		next: () =>
			'der Techniker versetzt Faden oder Rolle, soweit der Hersteller es erlaubt, bis der Hebel an jedem Radius etwa waagrecht liegt',
	},
	'playable-with-bias': {
		brief: 'Antiskating kann den Zug ausgleichen.',
		found: ({radii, worstAfterPct, goodPct, worstAfterDragPct, drag, usablePct}) =>
			`Der Zug ist ${pulls(radii)}; die beste Antiskating-Einstellung lässt höchstens ${percent(worstAfterPct, 1)} Rest (gut bis ${plainNumber(goodPct)} %), oder ${percent(worstAfterDragPct, 1)} bei ${plainNumber(drag)} mehr oder weniger Rillenreibung (brauchbar bis ${plainNumber(usablePct)} %).`,
		likely: 'ein gleichmäßiger Zug',
		next: () => 'der Techniker stellt das Antiskating so ein; der Arm darf spielen, den Zug behebt er später',
	},
	undecided: {
		brief: 'Eine Zahl ist unentschieden.',
		found: ({open, pullLimits, bandLimits}) =>
			`Unentschieden ist ${listed(open.map((one) => `${one.figure === 'pull' ? `der Zug ${pullAt(one.at)}` : `die Reibung ${bandAt(one.at)}`} (${sureFirst(one.atWorst)})`))}; Zug ${limits(pullLimits)}; Reibung ${limits(bandLimits)}.`,
		likely: '',
		next: ({open}) =>
			`der Techniker klärt es: ${open.map((one) => `${one.figure === 'pull' ? 'Zug' : 'Reibung'} bei ${mm(one.at.radiusMm)}: ${wayOn(one)}`).join('; ')}`,
	},
	sound: {
		brief: 'Der Arm schwenkt frei.',
		found: ({radii, atWorst, pullLimits, bandLimits}) =>
			`Der Arm ist ${atWorst === 'good' ? 'gut' : 'brauchbar oder besser'}: Zug ${pulls(radii)} (${limits(pullLimits)}), Reibung ${bands(radii)} (${limits(bandLimits)}).`,
		likely: '',
		next: () => 'der Besitzer lässt den Arm, wie er ist',
	},
};
