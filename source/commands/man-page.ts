import type {Command, Help} from 'commander';
import {commandLine} from '../words/command-line.js';
import type {HelpBlock, Topic} from '../words/help-topics.js';
import {words} from '../words/index.js';

const say = words.commands.help.man;

// groff_char(7): these characters, bare, are set as others that cannot be typed back.
const NAMED: Readonly<Record<string, string>> = {
	'\\': '\\(rs',
	'-': '\\-',
	"'": '\\(aq',
	'`': '\\(ga',
	'^': '\\(ha',
	'~': '\\(ti',
	'"': '\\(dq',
};

const hexOf = (character: string): string =>
	(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');

/** A line that begins with a point is a request. */
const noRequest = (line: string): string => line.replace(/^\./, '\\&.');

/** Text in which roff sees nothing of its own, on one line; the input is ASCII whatever the text holds. */
const roff = (text: string): string =>
	noRequest(
		text
			.replace(/[\\\-'`^~"]/g, (character) => NAMED[character] ?? character)
			.replace(/[\u0080-\u{10FFFF}]/gu, (character) => `\\[u${hexOf(character)}]`),
	);

/** Running text, in lines of input that are short enough for every tool; they do not show in the output. */
const running = (text: string): readonly string[] =>
	roff(text)
		.replace(/(.{1,60})(?: |$)/g, '$1\n')
		.trimEnd()
		.split('\n')
		.map(noRequest);

const bold = (text: string): string => `\\fB${roff(text)}\\fR`;

const macroArgument = (text: string): string => `"${roff(text)}"`;

/** A macro with its arguments. */
const macro = (name: string, ...values: readonly string[]): string =>
	[`.${name}`, ...values.map(macroArgument)].join(' ');

/** A term with its meaning indented under it. */
const item = (term: string, meaning: string): readonly string[] => ['.TP', bold(term), ...running(meaning)];

/** Lines that stay as they are. */
const unfilled = (lines: readonly string[]): readonly string[] => ['.PP', '.nf', ...lines.map(roff), '.fi'];

type ManPage = {
	readonly program: Command;
	readonly topics: readonly Topic[];
	/** Day of printing, `2026-11-25`. */
	readonly day: string;
};

/**
 * The manual page in roff, with the macros of man(7): commands and options from commander's table, the rest from the
 * topics.
 */
export function manPage({program, topics, day}: ManPage): string {
	const help = program.createHelp();
	const name = program.name();
	const commands = help.visibleCommands(program);
	const lines = [
		// A date is read by the macro, so its hyphens stay bare.
		`${macro('TH', name.toUpperCase(), '1')} ${day} ${macroArgument(`${name} ${program.version() ?? ''}`.trim())}`,
		macro('SH', say.name),
		`${roff(name)} \\- ${roff(say.about)}`,
		macro('SH', say.synopsis),
		[say.usage, ...commands.map((one) => help.subcommandTerm(one))]
			.map((usage) => `${bold(name)} ${roff(usage)}`)
			.join('\n.br\n'),
		macro('SH', say.description),
		...running(program.description()),
		macro('SH', say.options),
		...optionLines(help, program),
		macro('SH', say.commands),
		...commands.flatMap((one) => commandLines(help, one)),
		...topics.flatMap(({title, blocks}) => [macro('SH', title.toUpperCase()), ...blocks.flatMap(blockLines)]),
		macro('SH', say.examples),
		...unfilled(commandLine.examples.trimEnd().split('\n')),
	];
	// A heading begins a paragraph of its own accord.
	const needed = lines.filter((line, at) => line !== '.PP' || !lines[at - 1]?.startsWith('.SH'));
	return `${needed.join('\n')}\n`;
}

function commandLines(help: Help, command: Command): readonly string[] {
	const description = command.description();
	return [
		macro('SS', help.subcommandTerm(command)),
		...running(`${description.charAt(0).toUpperCase()}${description.slice(1)}.`),
		...help.visibleArguments(command).flatMap((one) => item(help.argumentTerm(one), help.argumentDescription(one))),
		...optionLines(help, command),
	];
}

const optionLines = (help: Help, command: Command): readonly string[] =>
	help.visibleOptions(command).flatMap((one) => item(help.optionTerm(one), help.optionDescription(one)));

function blockLines(block: HelpBlock): readonly string[] {
	if (typeof block === 'string') return ['.PP', ...running(block)];
	if ('lines' in block) return unfilled(block.lines.map((line) => `  ${line}`));
	return block.rows.flatMap(([term, meaning]) => item(term, meaning));
}
