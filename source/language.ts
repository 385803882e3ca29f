/** The languages that the program speaks, each by its code (BCP 47) with what it calls itself. */
export const languages = {en: 'English', de: 'Deutsch'} as const;

export type Language = keyof typeof languages;

export const languageCodes = Object.keys(languages) as Language[];

/** Whether a text is the code of a language that the program speaks. */
export const isLanguage = (code: unknown): code is Language => languageCodes.some((one) => one === code);
