import type {PlaceOption} from '../../store/store-fault.js';

/** System error names with what they mean at the bench and the way out. */
const meanings: Readonly<Record<string, (option: PlaceOption) => string>> = {
	ENOSPC: () => 'der Datenträger ist voll. Platz schaffen, dann erneut versuchen.',
	EDQUOT: () => 'der eigene Anteil am Datenträger ist aufgebraucht. Platz schaffen, dann erneut versuchen.',
	EFBIG: () => 'das System erlaubt keine so große Datei. Die Grenze für Dateigrößen anheben, dann erneut versuchen.',
	EROFS: (option) =>
		`der Datenträger lässt nur Lesen zu. Ihn beschreibbar machen, dann erneut versuchen. Oder mit ${option} einen anderen Ordner wählen.`,
	EACCES: () =>
		'dieser Benutzer darf das nicht. Die Rechte von Datei und Ordner richtig setzen, dann erneut versuchen.',
	EPERM: () => 'das System lässt es nicht zu. Die Rechte von Datei und Ordner richtig setzen, dann erneut versuchen.',
	EISDIR: () => 'wo die Datei hingehört, liegt ein Ordner. Den Ordner verschieben, dann erneut versuchen.',
	ENOTDIR: () => 'wo ein Ordner hingehört, liegt eine Datei. Die Datei verschieben, dann erneut versuchen.',
	EEXIST: () => 'an der Stelle liegt etwas anderes. Es verschieben, dann erneut versuchen.',
	ELOOP: () => 'die Verweise auf dem Weg führen im Kreis. Die Verweise richten, dann erneut versuchen.',
	ENOENT: (option) =>
		`ein Ordner auf dem Weg fehlt. Ihn anlegen, dann erneut versuchen. Oder mit ${option} einen anderen Ordner wählen.`,
	ENAMETOOLONG: (option) => `der Pfad ist zu lang. Mit ${option} einen Ordner mit kürzerem Pfad wählen.`,
	EMFILE: () =>
		'zu viele Dateien sind offen. Andere Programme schließen, dann erneut versuchen. Oder die Grenze anheben (ulimit -n).',
	ENFILE: () => 'zu viele Dateien sind offen. Andere Programme schließen, dann erneut versuchen.',
	EBUSY: () => 'die Datei ist in Gebrauch. Schließen, was sie benutzt, dann erneut versuchen.',
	EXDEV: () => 'der Ordner liegt auf zwei Datenträgern. Ihn auf einem halten, dann erneut versuchen.',
	EIO: (option) =>
		`der Datenträger meldet einen Fehler. Ihn prüfen, dann erneut versuchen. Oder mit ${option} einen Ordner auf einem anderen wählen.`,
};

/** What an error of the system means, by its name, with the way out. */
export const meaningOf = (system: string, option: PlaceOption = '--data'): string =>
	meanings[system]?.(option) ?? `${system}. Datei und Ordner ansehen, dann erneut versuchen.`;
