import type {Command} from 'commander';
import {formatISO} from 'date-fns/formatISO';
import {didYouMean} from '../desk/did-you-mean.js';
import {EXIT} from '../terminal/exit-paths.js';
import {saidBack} from '../visible-text.js';
import {topics} from '../words/help-topics.js';
import {words} from '../words/index.js';
import {manPage} from './man-page.js';
import {printOut, refuseWith} from './print.js';
import {rowsText, topicText} from './topic-text.js';

const say = words.commands.help;

type HelpWanted = {readonly topic: string | undefined; readonly man?: boolean | undefined};

// Where the width of the terminal is not known, the usual one.
const USUAL_COLUMNS = 80;

/** `armdrift help`: a topic, a command, the list of both, or the manual page. @returns exit status */
export async function runHelp(program: Command, {topic, man = false}: HelpWanted): Promise<number> {
	if (man && topic !== undefined) return refuseWith(say.oneOnly);
	if (man) {
		const day = formatISO(new Date(), {representation: 'date'});
		return printOut(manPage({program, topics, day}));
	}
	const columns = process.stdout.columns || USUAL_COLUMNS;
	if (topic === undefined) return printOut(overview(program, columns));
	const explained = topics.find(({name}) => name === topic.toLowerCase());
	if (explained) return printOut(topicText(explained, columns));
	const command = program.commands.find((one) => one.name() === topic);
	if (!command) return refuseWith(unknown(topic, program));
	command.outputHelp();
	return EXIT.done;
}

function overview(program: Command, columns: number): string {
	const commands = program.createHelp().visibleCommands(program);
	const topicRows = topics.map(({name, title}) => [name, title] as const);
	const commandRows = commands.map((one) => [one.name(), one.description()] as const);
	const [topicsText, commandsText] = [rowsText(topicRows, columns), rowsText(commandRows, columns)];
	return [say.topics, topicsText, say.commands, commandsText, say.more].join('\n');
}

function unknown(topic: string, program: Command): string {
	const commands = program.createHelp().visibleCommands(program);
	const known = [...topics.map(({name}) => name), ...commands.map((one) => one.name())];
	return say.unknown({topic: saidBack(topic), meant: didYouMean(topic, known), known});
}
