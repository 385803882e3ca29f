import {readFileSync} from 'node:fs';
import {homedir} from 'node:os';
import path from 'node:path';
import {isLanguage, type Language} from './language.js';
import {usualFolder} from './store/usual-folder.js';

/** What was given with an option of the command line, `--name value` or `--name=value`, before a lone `--`. */
function given(args: readonly string[], name: string): string | undefined {
	const end = args.indexOf('--');
	const before = end === -1 ? args : args.slice(0, end);
	const at = before.findLastIndex((arg) => arg === name || arg.startsWith(`${name}=`));
	if (at === -1) return undefined;
	return before[at] === name ? before[at + 1] : before[at]?.slice(name.length + 1);
}

/** What programs read is the same in every language: then all is said in English. */
function isForPrograms(args: readonly string[]): boolean {
	const takesNext = ['--arm', '--data', '--language'];
	const command = args.find((arg, index) => !arg.startsWith('-') && !takesNext.includes(args[index - 1] ?? ''));
	return command === 'compute' || /^(?:json|csv)$/.test(given(args, '--as') ?? '');
}

/** The setting, as the newest of both files has it; nothing where it cannot be read, which the store tells in due time. */
function fromSettings(folder: string): string | undefined {
	const copies = ['a', 'b'].flatMap((letter): {readonly number: number; readonly language: string}[] => {
		try {
			const {number, content} = JSON.parse(readFileSync(path.join(folder, `settings-${letter}.json`), 'utf8'));
			return typeof content?.language === 'string' ? [{number, language: content.language}] : [];
		} catch {
			return [];
		}
	});
	return copies.toSorted((one, other) => other.number - one.number)[0]?.language;
}

/** POSIX, Base Definitions 8.2: LC_ALL beats LC_MESSAGES beats LANG. Windows has its own place for it, which Intl knows. */
function fromSystem({LC_ALL, LC_MESSAGES, LANG}: NodeJS.ProcessEnv, platform: NodeJS.Platform): string | undefined {
	const locale = LC_ALL || LC_MESSAGES || LANG;
	if (locale) return locale;
	return platform === 'win32' ? Intl.DateTimeFormat().resolvedOptions().locale : undefined;
}

type Start = {
	/** Of the command line, without node and program. */
	readonly args: readonly string[];
	readonly env: NodeJS.ProcessEnv;
	readonly platform: NodeJS.Platform;
	readonly home: string;
};

/** The language to speak: `--language` beats the setting beats the system's; English where none is one of ours. */
export function languageFor({args, env, platform, home}: Start): Language {
	if (isForPrograms(args)) return 'en';
	const data = given(args, '--data') ?? (env.ARMDRIFT_DATA || undefined);
	const wishes = [
		() => given(args, '--language'),
		() => fromSettings(data ?? usualFolder({env, platform, home}).folder),
		() => fromSystem(env, platform)?.slice(0, 2).toLowerCase(),
	];
	for (const wish of wishes) {
		const code = wish();
		if (isLanguage(code)) return code;
	}
	return 'en';
}

/** The language of this run. */
export const chosenLanguage = (): Language =>
	languageFor({args: process.argv.slice(2), env: process.env, platform: process.platform, home: homedir()});
