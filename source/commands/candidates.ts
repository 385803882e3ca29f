import type {Argument, Command, Option} from 'commander';

/** What may stand at the cursor, and what it is. */
export type Candidate = {readonly text: string; readonly about: string};

/** What the program knows beside its own table of commands; asked only where it is needed. */
export type Known = {
	readonly arms: () => readonly Candidate[];
	/** Ids of checks that begin so. */
	readonly ids: (prefix: string) => readonly Candidate[];
	readonly topics: () => readonly Candidate[];
};

type Place = ReturnType<typeof placeOf>;

/**
 * What may stand at the end of a command line. All of it follows from commander's table: a value that is called
 * `arm`, `id` or `topic` there, and one with choices, is completed; for any other there are no candidates.
 * @param words what stands behind the name of the program, the last one where the cursor is
 */
export function candidates(program: Command, words: readonly string[], known: Known): readonly Candidate[] {
	const prefix = words.at(-1) ?? '';
	const place = placeOf(program, words.slice(0, -1));
	if (place.awaiting) return valuesOf(place.awaiting, prefix, known);
	const [, name, begun] = /^(--[^=]+)=(.*)$/s.exec(prefix) ?? [];
	if (name !== undefined) {
		const option = optionsOf(place.command).find(({long}) => long === name);
		const values = option?.required || option?.optional ? valuesOf(option, begun ?? '', known) : [];
		return values.map(({text, about}) => ({text: `${name}=${text}`, about}));
	}
	const operands = prefix.startsWith('-') ? [] : operandsAt(place, prefix, known);
	return prefix.startsWith('-') || (prefix === '' && isFull(place)) ? optionsLeft(place) : operands;
}

/** Goes through the words before the cursor as commander will. */
function placeOf(program: Command, words: readonly string[]) {
	let command = program;
	/** Words so far that belong to no option. */
	let operands = 0;
	/** The option whose value stands at the cursor. */
	let awaiting: Option | undefined;
	const given = new Set<Option>();
	for (const word of words) {
		if (awaiting) {
			awaiting = undefined;
			continue;
		}
		if (word.startsWith('-') && word !== '-') {
			const option = optionsOf(command).find(({short, long}) => [short, long].includes(word.replace(/=.*$/s, '')));
			if (option) given.add(option);
			awaiting = option?.required && !word.includes('=') ? option : undefined;
			continue;
		}
		const next = operands === 0 ? commandsOf(command).find((one) => one.name() === word) : undefined;
		if (next) command = next;
		else operands++;
	}
	return {command, operands, given, awaiting};
}

/** Options of a command, then those of the program: it takes them anywhere. */
const optionsOf = (command: Command): readonly Option[] => [
	...command.createHelp().visibleOptions(command),
	...(command.parent ? command.parent.options.filter(({hidden, long}) => !hidden && long !== '--version') : []),
];

const commandsOf = (command: Command): readonly Command[] => command.createHelp().visibleCommands(command);

/** Nothing but options may follow. */
const isFull = ({command, operands}: Place): boolean =>
	command.parent !== null && argumentAt(command, operands) === undefined;

function argumentAt(command: Command, operands: number): Argument | undefined {
	const last = command.registeredArguments.at(-1);
	return command.registeredArguments[operands] ?? (last?.variadic ? last : undefined);
}

function operandsAt({command, operands}: Place, prefix: string, known: Known): readonly Candidate[] {
	const commands = operands === 0 ? commandsOf(command) : [];
	const argument = argumentAt(command, operands);
	return [
		...commands.map((one) => ({text: one.name(), about: one.description()})),
		...(argument ? valuesNamed(argument.name(), argument.argChoices, prefix, known) : []),
	];
}

/** Options that are not on the line yet; of two with one long name, the command's own. */
function optionsLeft({command, given}: Place): readonly Candidate[] {
	const left = new Map<string, Candidate>();
	for (const option of optionsOf(command)) {
		const text = option.long ?? option.short ?? '';
		if (!given.has(option) && !left.has(text)) left.set(text, {text, about: option.description});
	}
	return [...left.values()];
}

function valuesOf(option: Option, prefix: string, known: Known): readonly Candidate[] {
	const [, name = ''] = /[<[]([^\]>.]+)/.exec(option.flags) ?? [];
	return valuesNamed(option.long === '--arm' ? 'arm' : name, option.argChoices, prefix, known);
}

function valuesNamed(
	name: string,
	choices: readonly string[] | undefined,
	prefix: string,
	known: Known,
): readonly Candidate[] {
	if (choices) return choices.map((text) => ({text, about: ''}));
	if (name === 'arm') return known.arms();
	if (name === 'id') return known.ids(prefix);
	return name === 'topic' ? known.topics() : [];
}
