/** Words that English sentences are made of and that German has not. */
const english =
	/(?<![\p{L}'-])(?:the|of|and|with|is|are|not|this|that|from|by|when|which|have|it|or|on|to|but|yes|its|their|you|your|be|been|does|for|at|as)(?![\p{L}'-])/iu;

/** What stands as it is in any language: commands with their options and files, keys and columns for programs, code. */
const asTyped =
	/\b[A-Z_]+=\w+|\b\w+(?:\[\]|_\w+)(?:\.\w+)*|\b\w+\.(?:txt|json|csv|ics|html)\b|armdrift(?: (?:--)?[a-z-]+)*(?: "[^"]*"| [<[][^>\]]*[>\]])?|--[a-z-]+(?:[ =](?:<[^>]*>|[a-z]+))?|\b(?:eval|source)\b[^\n]*/g;

/** Without what is typed as it stands. */
export const withoutTyped = (text: string): string => text.replaceAll(asTyped, '');

/** Whether a German text has English in it. */
export const hasEnglish = (text: string): boolean => english.test(withoutTyped(text));
