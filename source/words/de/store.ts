import type {Sentences} from '../../said.js';
import type {Damage, DamageValues, StoreFaultValues, Thing, ThingValues} from '../../store/store-fault.js';
import {saidBack} from '../../visible-text.js';
import {speaker} from '../speaker.js';
import {misfitText, valueText} from './misfits.js';
import {meaningOf} from './system.js';

/** What a fault is about, in the singular; each begins a sentence. */
const things: Sentences<ThingValues> = {
	'back-up': () => 'Die Sicherung',
	calendar: () => 'Der Kalender',
	check: ({id}) => `Die fertige Prüfung ${id}`,
	checks: () => 'Die Liste der fertigen Prüfungen',
	data: () => 'Der Datenbestand',
	draft: () => 'Die offene Prüfung',
	export: () => 'Der Export',
	going: () => 'Der Rest des gelöschten Arms',
	'last-number': () => 'Die Nummer des letzten Speicherns',
	lock: () => 'Die Sperre gegen ein zweites armdrift',
	month: ({month}) => `Die Liste der Prüfungen von ${month}`,
	practice: () => 'Der Bestand der Übungen',
	profiles: () => 'Die Liste der Profile',
	remark: ({id}) => `Die Notiz zur Prüfung ${id}`,
	remarks: () => 'Der Ordner der Notizen zu Prüfungen',
	report: () => 'Der Bericht',
	settings: () => 'Die Datei der Einstellungen',
};
const the: (thing: Thing) => string = speaker(things);

const damages: Sentences<DamageValues> = {
	checksum: () => 'etwas anderes als armdrift hat die Datei geändert (die Prüfsumme passt nicht)',
	content: (misfit) => misfitText(misfit),
	empty: () => 'die Datei ist leer',
	'no-number': () => 'der Datei fehlt die Nummer ihres Speicherns',
	'no-time': () => 'in der Datei steht nicht, wann sie gespeichert wurde',
	'no-version': () => 'in der Datei steht keine Version',
	'not-json': ({line}) => `die Datei ist kein vollständiges JSON (Zeile ${line})`,
	'not-upgraded': () => 'die Datei ließ sich nicht auf den heutigen Stand bringen',
	'not-utf-8': ({line}) =>
		`die Datei enthält Bytes, die kein UTF-8 sind${line === undefined ? '' : ` (Zeile ${line})`}`,
	'not-object': ({line}) => `die Datei ist kein vollständiges JSON-Objekt (Zeile ${line})`,
	'other-check': () => 'in der Datei steht eine andere Prüfung, als ihr Name sagt',
	'other-hand': () =>
		'etwas anderes hat die Datei geändert, während armdrift lief; armdrift arbeitet mit dem eigenen Stand weiter',
	'other-kind': () => 'die Datei ist von anderer Art',
	'other-remark': () => 'die Datei gehört zu einer anderen Prüfung',
	'part-too-large': () => 'ein Teil der Datei ist viel größer als jede Datei dieses Programms',
	'twofold-key': ({key}) => `der Schlüssel „${key}“ steht zweimal in einem Objekt`,
	'too-deep': ({line}) => `die Datei ist zu tief verschachtelt${line === undefined ? '' : ` (Zeile ${line})`}`,
	'too-large': () => 'die Datei ist viel größer als jede Datei dieses Programms',
	'unknown-version': ({version}) => `die Datei hat Version ${version}, die dieses Programm nicht kennt`,
	unreadable: () => 'die Datei ließ sich nicht lesen',
	'whole-too-large': ({mostMb}) =>
		`die Datei ist ein einziges JSON-Dokument von mehr als ${mostMb} MB. Mit einem neueren armdrift noch einmal exportieren`,
	'utf-16': () => 'die Datei ist in UTF-16 statt in UTF-8',
	'forbidden-key': ({at}) => `die Datei hat einen Schlüssel „${at}“, den keine Datei dieses Programms hat`,
};
const damageOf: (damage: Damage) => string = speaker(damages);

const standing = {
	folder: 'ein Ordner',
	link: 'ein Verweis',
	device: 'eine Pipe oder ein Gerät',
	other: 'etwas anderes',
};

/** What a person reads of each trouble of the store. Names and paths in it are as they came: whoever prints it makes it safe. */
export const store: Sentences<StoreFaultValues> = {
	'not-plain': ({thing, file, found}) =>
		`${the(thing)} braucht „${file}“, aber dort liegt ${standing[found]}. Das verschieben, dann erneut versuchen.`,
	unusable: ({file, damage}) => `Der Export in „${file}“ ist nicht verwendbar: ${damageOf(damage)}.`,
	'set-aside': ({thing, file, damage, aside}) =>
		`${the(thing)} in „${file}“ ist nicht verwendbar: ${damageOf(damage)}. Diese Datei liegt jetzt als „${aside}“ daneben.`,
	'left-there': ({thing, file, damage}) =>
		`${the(thing)} in „${file}“ ist nicht verwendbar: ${damageOf(damage)}. Die Datei bleibt dort, weil jetzt nichts geschrieben werden kann.`,
	'remark-damaged': ({thing, file, damage}) =>
		`${the(thing)} in „${file}“ ist nicht verwendbar: ${damageOf(damage)}. Die Prüfung unter „frühere Prüfungen“ öffnen und angeben, ob sie zählt.`,
	'not-removable': ({thing, file, damage}) =>
		`${the(thing)} wurde nicht aus „${file}“ entfernt: ${damageOf(damage)}. Diese Datei verschieben, dann erneut versuchen.`,
	'not-set-aside': ({thing, file, damage, system}) =>
		`${the(thing)} ist beschädigt (${damageOf(damage)}) und wurde nicht in „${file}“ gespeichert: ${meaningOf(system)}`,
	locked: ({file, dataDir, pid, since, host, isSure = true}) =>
		host === undefined
			? `Ein anderes armdrift (Prozess ${pid}, seit ${since}) schreibt in „${dataDir}“. Zuerst jenes beenden. ${isSure ? 'Frühere Prüfungen bleiben trotzdem lesbar.' : `Läuft keines, die Datei „${file}“ löschen.`}`
			: `Ein anderes armdrift (Prozess ${pid} auf dem Rechner ${host}, seit ${since}) schreibt in „${dataDir}“. Zuerst jenes beenden. Läuft es nicht mehr, die Datei „${file}“ löschen.`,
	'no-check': ({dataDir, id}) =>
		`Die fertige Prüfung ${id} liegt nicht in „${dataDir}“. Ihre Kennung in der Liste der früheren Prüfungen suchen.`,
	'no-id': ({file, id}) =>
		`„${saidBack(id)}“ ist keine Kennung einer Prüfung in „${file}“. Ihre Kennung in der Liste der früheren Prüfungen suchen.`,
	'no-file': ({file}) => `Die Datei „${file}“ gibt es nicht.`,
	newer: ({thing, file, version}) =>
		thing.id === 'export'
			? `Der Export in „${file}“ stammt von einem neueren armdrift (Version ${version} seiner Dateien). Nichts wurde übernommen. Das neuere armdrift nehmen.`
			: `${the(thing)} in „${file}“ stammt von einem neueren armdrift (Version ${version} seiner Dateien). Die Datei blieb, wie sie ist. Das neuere armdrift nehmen.`,
	'folder-unnamed': () =>
		'Der angegebene Datenordner hat keinen brauchbaren Namen. Einen Datenordner mit --data oder ARMDRIFT_DATA nennen.',
	'home-unknown': () =>
		'Der Benutzerordner ist nicht bekannt (HOME ist kein voller Pfad). Einen Datenordner mit --data oder ARMDRIFT_DATA nennen.',
	'older-copy': ({thing, file, savedAt, newest}) => {
		const used = `${the(thing)} ist auf dem Stand von ${savedAt}. Nachsehen, ob die letzte Antwort dabei ist.`;
		const became = {
			damaged: used,
			lost: `Was zuletzt gespeichert wurde, ist nicht mehr auf dem Datenträger, wie nach einem Stromausfall. ${used}`,
			missing: `Neben „${file}“ fehlt die zweite Datei. ${used}`,
		};
		return became[newest];
	},
	'practice-blocked': ({file}) =>
		`Übungsdaten kommen nach „${file}“, aber dort liegt etwas anderes. Diesen Ordner umbenennen, dann erneut versuchen.`,
	'practice-only': ({file}) =>
		`In „${file}“ liegen nur Übungen an erfundenen Armen. Mit --data einen anderen Ordner nennen.`,
	'refused-value': ({thing, file, ...value}) =>
		`${the(thing)} wurde nicht in „${file}“ gespeichert: ${valueText(value)}. Diesen Eintrag berichtigen, dann erneut versuchen.`,
	'refused-content': ({thing, file, ...misfit}) =>
		`${the(thing)} wurde nicht in „${file}“ gespeichert: ${misfitText(misfit)}. Das berichtigen, dann erneut versuchen.`,
	'cut-short': ({thing, file}) =>
		`${the(thing)} wurde nicht gespeichert: der Datenträger nahm nur einen Teil von „${file}“ an. Platz schaffen, dann erneut versuchen.`,
	'not-saved': ({thing, file, system, option, left}) =>
		`${the(thing)} wurde nicht in „${file}“ gespeichert: ${meaningOf(system, option)}${left === undefined ? '' : ` Die unfertige Datei „${left}“ löschen.`}`,
	'part-left': ({thing, file, left}) =>
		`${the(thing)} ist vollständig in „${file}“. „${left}“ von Hand löschen: armdrift konnte es nicht.`,
	'not-cleared': ({file, id, system}) =>
		`Die Prüfung ${id} IST ABGELEGT. Nur ihre offene Kopie liegt noch in „${file}“${system === undefined ? '.' : `: ${meaningOf(system)}`} Ein späterer Start entfernt sie.`,
	'not-read': ({thing, file, system}) => `${the(thing)} war in „${file}“ nicht lesbar: ${meaningOf(system)}`,
	'not-removed': ({thing, file, system}) => `${the(thing)} wurde nicht aus „${file}“ entfernt: ${meaningOf(system)}`,
	'target-there': ({file, option, mayForce}) =>
		mayForce
			? `„${file}“ gibt es schon. Mit --force überschreiben. Oder mit ${option} eine andere Datei nennen.`
			: `„${file}“ gibt es schon. Mit ${option} eine andere Datei nennen.`,
	'target-not-plain': ({thing, file, option}) =>
		`${the(thing)} wurde nicht gespeichert: „${file}“ ist keine gewöhnliche Datei. Mit ${option} eine andere nennen.`,
	'source-not-plain': ({file}) => `Der Export muss eine gewöhnliche Datei sein, aber „${file}“ ist keine.`,
	'practice-among-real': ({thing, file}) =>
		`${the(thing)} in „${file}“ ist eine Übung an einem erfundenen Arm und zählt nicht. Diese Datei verschieben.`,
};
