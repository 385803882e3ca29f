import type {Command} from 'commander';
import {format} from 'date-fns/format';
import {EXIT} from '../../terminal/exit-paths.js';
import {didYouMean} from '../did-you-mean.js';
import {printOut, sayFault} from '../print-out.js';
import {manPage} from './man-page.js';
import {rowsText, topicText} from './topic-text.js';
import {topics} from './topics.js';

type Asked = {readonly topic: string | undefined; readonly man?: boolean | undefined};

// Where the width of the terminal is not known, the usual one.
const USUAL_COLUMNS = 80;

/** `armdrift help`: a topic, a command, the list of both, or the manual page. @returns exit status */
export async function runHelpCommand(program: Command, {topic, man = false}: Asked): Promise<number> {
	if (man && topic !== undefined) return refuse('Give a topic or --man, not both.');
	if (man) {
		const day = format(new Date(), 'yyyy-MM-dd');
		return printOut(manPage({program, topics, day}));
	}
	const columns = process.stdout.columns || USUAL_COLUMNS;
	if (topic === undefined) return printOut(overview(program, columns));
	const explained = topics.find(({name}) => name === topic.toLowerCase());
	if (explained) return printOut(topicText(explained, columns));
	const command = program.commands.find((one) => one.name() === topic);
	if (!command) return refuse(unknown(topic, program));
	command.outputHelp();
	return EXIT.done;
}

function overview(program: Command, columns: number): string {
	const commands = program.createHelp().visibleCommands(program);
	return [
		'Topics (armdrift help TOPIC):',
		rowsText(
			topics.map(({name, title}) => [name, title]),
			columns,
		),
		'\nCommands (armdrift help COMMAND):',
		rowsText(
			commands.map((one) => [one.name(), one.description()]),
			columns,
		),
		'\nOptions and examples: armdrift --help\nAll of it as a manual page: armdrift help --man | man -l -\n',
	].join('\n');
}

function unknown(topic: string, program: Command): string {
	const names = [
		...topics,
		...program
			.createHelp()
			.visibleCommands(program)
			.map((one) => ({name: one.name()})),
	];
	const known = names.map(({name}) => name);
	const meant = didYouMean(topic, known);
	const way = meant === undefined ? `there are: ${known.join(', ')}.` : `did you mean "${meant}"?`;
	return `There is no topic or command "${topic}"; ${way}`;
}

function refuse(sentence: string): number {
	sayFault(sentence);
	return EXIT.usage;
}
