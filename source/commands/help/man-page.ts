import type {Command, Help} from 'commander';
import {examples} from '../help-texts.js';
import {asTyped, bold, item, macro, macroArgument, roff, running} from './roff.js';
import type {Block, Topic} from './topics.js';

type Page = {
	readonly program: Command;
	readonly topics: readonly Topic[];
	/** Day of printing, `2026-11-25`. */
	readonly day: string;
};

/**
 * The manual page in roff, with the macros of man(7): commands and options from commander's table, the rest from the
 * topics.
 */
export function manPage({program, topics, day}: Page): string {
	const help = program.createHelp();
	const name = program.name();
	const commands = help.visibleCommands(program);
	const lines = [
		// A date is read by the macro, so its hyphens stay bare.
		`${macro('TH', name.toUpperCase(), '1')} ${day} ${macroArgument(`${name} ${program.version() ?? ''}`.trim())}`,
		macro('SH', 'NAME'),
		`${roff(name)} \\- check a tonearm at the bench`,
		macro('SH', 'SYNOPSIS'),
		['[options]', ...commands.map((one) => help.subcommandTerm(one))]
			.map((usage) => `${bold(name)} ${roff(usage)}`)
			.join('\n.br\n'),
		macro('SH', 'DESCRIPTION'),
		...running(program.description()),
		macro('SH', 'OPTIONS'),
		...optionLines(help, program),
		macro('SH', 'COMMANDS'),
		...commands.flatMap((one) => commandLines(help, one)),
		...topics.flatMap(({title, blocks}) => [macro('SH', title.toUpperCase()), ...blocks.flatMap(blockLines)]),
		macro('SH', 'EXAMPLES'),
		...asTyped(examples.trim().split('\n').slice(1)),
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

function blockLines(block: Block): readonly string[] {
	if (typeof block === 'string') return ['.PP', ...running(block)];
	if ('lines' in block) return asTyped(block.lines.map((line) => `  ${line}`));
	return block.rows.flatMap(([term, meaning]) => item(term, meaning));
}
