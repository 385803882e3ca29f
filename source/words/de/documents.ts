import limits from '../../../shared/limits.json' with {type: 'json'};
import type {FaultValues} from '../../results/document.js';
import type {DocumentKey} from '../../results/document-schema.js';
import type {Sentences} from '../../said.js';
import {escaped} from '../../visible-text.js';

const longest = 60;

/** A value of a JSON document as one short piece of a sentence. */
const shownValue = (value: unknown): string => {
	if (value === undefined) return 'nichts';
	if (typeof value === 'number') return String(value);
	if (Array.isArray(value)) return `eine Liste mit ${value.length}`;
	if (typeof value === 'object' && value !== null) return 'eine Gruppe von Schlüsseln';
	const text = escaped(JSON.stringify(value) ?? String(value));
	return text.length > longest ? `${text.slice(0, longest)}…` : text;
};

const innerLimit =
	'der letzte Messwert, bei dem der Arm hielt, nach innen angestupst, in der Einheit des Kraftmessers, plus heißt zum Rand';
const outerLimit =
	'der letzte Messwert, bei dem der Arm hielt, nach außen angestupst, in der Einheit des Kraftmessers, plus heißt zum Rand';
const round = 'eine Runde mit ihrer inneren und äußeren Grenze';
const radiusMm = 'der Abstand von der Tellerachse zur Nadel, in mm, über null';
const tilt = 'ein Wert auf der Skala der Wasserwaage, in Grad, nach beiden Seiten unter 45';
const tilts = 'eine Liste mit einem Wert der Wasserwaage, oder mit zweien, dazwischen umgedreht';
const relativeUncertaintyPct =
	'die relative Standardunsicherheit in Prozent (ein ± geteilt durch √3), null oder mehr; weggelassen 0';

/** What is wanted at each key: in the middle of a sentence. Where only some values are taken, they are told after it. */
const wanted: Readonly<Record<DocumentKey, string>> = {
	'': 'ein Dokument mit mindestens arm, gauge, trackingForce und probe',
	arm: 'eine Gruppe von Schlüsseln zum Arm: seine Geometrie und was seine Auflagekraft macht',
	'arm.effectiveLengthMm': 'die effektive Länge, Drehpunkt bis Nadel von oben gesehen, in mm, über null',
	'arm.pivotDistanceMm': 'der Montageabstand, Tellerachse bis Drehpunkt von oben gesehen, in mm, über null',
	'arm.loading': 'was die Auflagekraft macht',
	'arm.pivotDirectionDeg':
		'die Richtung von der Tellerachse zum Drehpunkt, in Grad von rechts nach hinten; weggelassen 45',
	gauge: 'eine Gruppe von Schlüsseln zum Kraftmesser, in seiner Einheit außer relativeUncertaintyPct und setAnew',
	'gauge.unit': 'die Einheit des Kraftmessers',
	'gauge.step': 'der kleinste Ableseschritt des Kraftmessers, in seiner Einheit, über null',
	'gauge.topOfScale': 'das Ende der Skala des Kraftmessers, ab dem er nicht mehr misst, in seiner Einheit, über null',
	'gauge.relativeUncertaintyPct': relativeUncertaintyPct,
	'gauge.zero':
		'was der Kraftmesser zeigt, wenn ihn nichts berührt, in seiner Einheit; weggelassen, wenn nicht abgelesen oder mit gedrehten Runden',
	'gauge.zeroUncertainty':
		'die Standardunsicherheit der Nullanzeige, in der Einheit des Kraftmessers, null oder mehr; weggelassen 0, nur mit zero',
	'gauge.nudge': 'die Größe eines Stupses, in der Einheit des Kraftmessers, null oder mehr; weggelassen 0',
	'gauge.setAnew':
		'true, wo Arm und Kraftmesser zwischen den Runden neu aufgestellt wurden, sonst false; weggelassen false',
	trackingForce: 'eine Gruppe von Schlüsseln zur Auflagekraft: wie abgespielt und wie für die Messung gewogen',
	'trackingForce.playingMn': 'die Abspielkraft, in mN, über null',
	'trackingForce.scaleReadingMn':
		'was die Tonarmwaage zeigte, in mN, null oder mehr; 0 (Arm schwebt) nur mit Kraftmesser in mN oder gf',
	'trackingForce.guard': 'wie der Nadelschutz gewogen wurde',
	'trackingForce.guardMassG':
		'die Masse des Nadelschutzes, in g, null oder mehr; nötig, wenn er nicht mitgewogen wurde',
	'trackingForce.relativeUncertaintyPct': relativeUncertaintyPct,
	level: 'eine Gruppe von Schlüsseln zur Neigung, in beiden Richtungen gemessen; weggelassen, wenn nicht gemessen',
	'level.stepDeg': 'der kleinste Ableseschritt der Wasserwaage, in Grad, null oder mehr',
	'level.leftRightDeg': tilts,
	'level.leftRightDeg[]': tilt,
	'level.frontBackDeg': tilts,
	'level.frontBackDeg[]': tilt,
	clearance: 'eine Gruppe von Schlüsseln zur Höhe der Nadel beim Messen',
	'clearance.stylusMm': 'die Höhe der Nadel über der Fläche unter ihr, in mm, null oder mehr',
	'clearance.matRemovedMm': 'die Dicke der abgenommenen Matte, in mm, null oder mehr; weggelassen 0',
	'clearance.guardDepthMm': 'wie weit der Nadelschutz unter die Nadel reicht, in mm, null oder mehr',
	cartridge: 'eine Gruppe von Schlüsseln zum Tonabnehmer',
	'cartridge.staticComplianceUmPerMn': 'die statische seitliche Nadelnachgiebigkeit, in µm/mN, über null',
	'cartridge.cantileverMm': 'die Länge des Nadelträgers, in mm, über null',
	probe: 'eine Liste der Radien: genau ein inner, genau ein outer, weitere nach Belieben',
	'probe[]': 'ein Radius mit seinen Runden',
	'probe[].place': 'der Ort der Messung',
	'probe[].radiusMm': radiusMm,
	'probe[].rounds': 'eine Liste mit mindestens einer nicht gedrehten Runde',
	'probe[].rounds[]': round,
	'probe[].rounds[].innerLimit': innerLimit,
	'probe[].rounds[].outerLimit': outerLimit,
	'probe[].rounds[].gauge':
		'"turned" für eine gedrehte Runde, ihre Grenzen mit dem Vorzeichen des Kraftmessers; sonst weggelassen',
	'probe[].rounds[].closing': 'true für die Schlussrunde, die zeigt, ob sich etwas verschob; sonst weggelassen',
	limits: 'was gut und was brauchbar ist, in Prozent der Auflagekraft; weggelassenes ist das übliche',
	'limits.pullGoodPct': 'der größte gute Zug, in Prozent der Auflagekraft, über null',
	'limits.pullUsablePct': 'der größte brauchbare Zug, in Prozent der Auflagekraft, über null',
	'limits.bandGoodPct': 'die größte gute Reibung, in Prozent der Auflagekraft, über null',
	'limits.bandUsablePct': 'die größte brauchbare Reibung, in Prozent der Auflagekraft, über null',
	bias: 'eine Gruppe von Schlüsseln zum Antiskating und den Messwerten damit',
	'bias.device': 'die Art der Antiskating-Vorrichtung',
	'bias.effectiveDrag': `die Rillenreibung, geteilt durch die Auflagekraft, von ${limits.effectiveDragLeast.value} bis ${limits.effectiveDragMost.value}; weggelassen ${limits.effectiveDrag.value}`,
	'bias.readings': 'eine Liste mit mindestens zwei Radien, mit Antiskating gemessen',
	'bias.readings[]': 'ein Radius mit seinen Runden, mit Antiskating gemessen',
	'bias.readings[].radiusMm': radiusMm,
	'bias.readings[].rounds': 'eine Liste mit mindestens einer Runde',
	'bias.readings[].rounds[]': round,
	'bias.readings[].rounds[].innerLimit': innerLimit,
	'bias.readings[].rounds[].outerLimit': outerLimit,
	'bias.readings[].leverClock': 'wo der Hebel steht, als Uhrzeit von 1:00 bis 12:59 ("8:30"); nur mit Gewichtshebel',
};

/** What is wanted at a key, and of which values it takes one; a single one is told in its words already. */
const wantedAt = (key: DocumentKey, oneOf: readonly unknown[]): string =>
	`${wanted[key]}${oneOf.length < 2 ? '' : `, eines von ${oneOf.map((one) => `"${one}"`).join(', ')}`}.`;

const faults: Sentences<FaultValues> = {
	shape: ({found, key, oneOf}) => `Gefunden: ${shownValue(found)}. Verlangt: ${wantedAt(key, oneOf)}`,
	'unknown-key': ({found}) => `Gefunden: ${shownValue(found)}. Verlangt: kein solcher Schlüssel.`,
	'usable-below-good': ({figure, usable, good}) =>
		`Gefunden: ${usable}, unter ${figure}GoodPct ${good}. Verlangt: brauchbar nicht kleiner als gut.`,
	'uncertainty-without-zero': ({zeroUncertainty}) => `Gefunden: ${zeroUncertainty} ohne zero. Verlangt: auch zero.`,
	'zero-beside-turned': ({zero}) =>
		`Gefunden: ${zero} neben gedrehten Runden. Verlangt: eines von beiden, denn diese Runden zeigen die Nullanzeige.`,
	'nothing-carried': ({scaleReadingMn}) =>
		`Gefunden: ${scaleReadingMn} bei einem Kraftmesser in Prozent, der den Arm trägt. Verlangt: was die Tonarmwaage zeigte, über null.`,
	'guard-mass-missing': () =>
		'Gefunden: nichts. Verlangt: die Masse des Nadelschutzes in g, denn gewogen wurde ohne ihn.',
	'place-twice': ({place}) => `Gefunden: ein zweites "${place}". Verlangt: von jedem Ort genau eines.`,
	'place-missing': ({place}) => `Gefunden: kein Radius "${place}". Verlangt: genau einer.`,
	'out-of-reach': (values) =>
		`Gefunden: ${values.radiusMm} mm, mit effectiveLengthMm ${values.effectiveLengthMm} und pivotDistanceMm ${values.pivotDistanceMm} nicht erreichbar. Verlangt: ein Radius von ${values.leastMm} bis ${values.mostMm} mm.`,
	'radius-twice': (values) => `Gefunden: ${values.radiusMm} mm ein zweites Mal. Verlangt: jeder Radius einmal.`,
	'limits-crossed': (values) =>
		`Gefunden: ${values.innerLimit}, über der äußeren Grenze ${values.outerLimit}. Verlangt: eine innere Grenze, nicht höher als die äußere.`,
	'turned-limits-crossed': (values) =>
		`Gefunden: ${values.innerLimit}, unter der äußeren Grenze ${values.outerLimit}. Verlangt: in einer gedrehten Runde eine innere Grenze, nicht niedriger als die äußere.`,
	'turned-without-used': () => 'Gefunden: "turned". Verlangt: an diesem Radius auch eine nicht gedrehte Runde.',
	'turned-at-two-radii': () => 'Gefunden: "turned". Verlangt: gedrehte Runden nur an einem Radius.',
	'closing-turned': () => 'Gefunden: true. Verlangt: eine nicht gedrehte Schlussrunde.',
	'closing-twice': () => 'Gefunden: true. Verlangt: insgesamt nur eine Schlussrunde.',
	'closing-alone': () => 'Gefunden: true. Verlangt: an ihrem Radius noch eine nicht gedrehte Runde.',
	'inner-outside-outer': ({innerMm, outerMm}) =>
		`Gefunden: ${innerMm} mm, außerhalb des äußeren Radius von ${outerMm} mm. Verlangt: ein innerer Radius, kleiner als der äußere.`,
	'clock-without-lever': ({leverClock, device}) =>
		`Gefunden: "${leverClock}" bei device "${device}". Verlangt: keine Hebelstellung ohne Gewichtshebel.`,
};

/** The document of figures: what is wanted at its keys, and what is wrong with one. */
export const documents = {
	shownValue,
	title: 'Dokument für armdrift compute',
	/** What a JSON Schema says of a key. */
	description: (key: DocumentKey, oneOf: readonly unknown[]): string => {
		const text = wantedAt(key, oneOf);
		return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
	},
	faults,
};
