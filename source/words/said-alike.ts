import type {Language} from '../language.js';

/**
 * Holds every language against English: what English says, each says too, by the same id and of the same values. Nothing
 * of it runs; the compiler names the sentence that is missing.
 */
type Like<Said> = Said extends string
	? string
	: Said extends (...values: infer Values) => infer Sentence
		? (...values: Values) => Like<Sentence>
		: {readonly [Id in keyof Said]: Like<Said[Id]>};

type Alike<English, Other extends Like<English>> = Other;

type German = [
	Alike<typeof import('./en/index.js'), typeof import('./de/index.js')>,
	Alike<typeof import('./en/commands/command-line.js'), typeof import('./de/commands/command-line.js')>,
	Alike<typeof import('./en/commands/topics.js'), typeof import('./de/commands/topics.js')>,
	Alike<typeof import('./en/documents.js'), typeof import('./de/documents.js')>,
	Alike<typeof import('./en/figures.js'), typeof import('./de/figures.js')>,
	Alike<typeof import('./en/findings.js'), typeof import('./de/findings.js')>,
	Alike<typeof import('./en/glossary.js'), typeof import('./de/glossary.js')>,
	Alike<typeof import('./en/locale.js'), typeof import('./de/locale.js')>,
	Alike<typeof import('./en/practice/index.js'), typeof import('./de/practice/index.js')>,
	Alike<typeof import('./en/reports/index.js'), typeof import('./de/reports/index.js')>,
	Alike<typeof import('./en/steps/index.js'), typeof import('./de/steps/index.js')>,
	Alike<typeof import('./en/terminal.js'), typeof import('./de/terminal.js')>,
];

/** Each language but English, with what holds it. */
type Held = {
	de: German;
};

export type EveryLanguage = {readonly [Code in Exclude<Language, 'en'>]: Held[Code]};
