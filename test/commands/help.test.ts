import {spawnSync} from 'node:child_process';
import {Command} from 'commander';
import stringWidth from 'string-width';
import {describe, expect, it, test} from 'vitest';
import {addCommands} from '../../source/commands/command-line.js';
import {runHelp} from '../../source/commands/help.js';
import {manPage} from '../../source/commands/man-page.js';
import {topicText} from '../../source/commands/topic-text.js';
import {EXIT} from '../../source/terminal/exit-paths.js';
import {commandLine, exitStatusRows} from '../../source/words/command-line.js';
import {type Topic, topics} from '../../source/words/help-topics.js';
import {printedBy} from '../helpers/printed.js';
import {anything, words} from '../helpers/said.js';

function table(): Command {
	const program = new Command('armdrift').version('1.2.3').description('Guides.').option('--data <folder>', 'where');
	program.command('hidden', {hidden: true});
	addCommands(program, '1.2.3', () => Promise.resolve());
	return program;
}
const none: Topic = {name: '', title: '', blocks: []};
/** The topic that tells how the program ends. */
const listsStatuses = ({blocks}: Topic): boolean =>
	blocks.some((block) => typeof block !== 'string' && 'rows' in block && block.rows === exitStatusRows);
const help = (topic?: string, man = false) => printedBy(() => runHelp(table(), {topic, man}));

/** Text without line breaks and indents. */
const flat = (text: string): string => text.replace(/\s+/g, ' ').trim();

describe('A topic', () => {
	it.each(topics.map((topic) => [topic.name, topic] as const))('%s keeps to the width of the terminal', (_, topic) => {
		for (const columns of [40, 60, 80, 100, 250]) {
			const typed = new Set(
				topic.blocks.flatMap((block) => (typeof block !== 'string' && 'lines' in block ? block.lines : [])),
			);
			const lines = topicText(topic, columns).split('\n');
			const wide = lines.filter((line) => stringWidth(line) > Math.min(columns, 100) && !typed.has(line.trim()));
			expect(wide).toEqual([]);
		}
	});

	it('says all of it at any width, and breaks nothing that is to be typed', () => {
		const topic: Topic = {
			name: 'x',
			title: 'invented',
			blocks: [
				'one two three '.repeat(20).trim(),
				{rows: [['term', 'mean '.repeat(30).trim()]]},
				{lines: ['typed '.repeat(20).trim()]},
			],
		};
		const [narrow, wide] = [topicText(topic, 30), topicText(topic, 90)];
		expect(flat(narrow)).toBe(flat(wide));
		expect(narrow).toContain(`  ${'typed '.repeat(20).trim()}\n`);
		expect(wide).toContain('\n  term  mean');
		expect(narrow).toContain('\n  term\n    mean');
	});

	it('has a name that no command has', () => {
		const commands = table().commands.map((one) => one.name());
		expect(topics.filter(({name}) => commands.includes(name))).toEqual([]);
	});

	it('lists every exit status that the program knows, as --help does', () => {
		const data = topicText(topics.find(listsStatuses) ?? none, 80);
		for (const [name, status] of Object.entries(EXIT)) {
			expect(data, name).toMatch(new RegExp(`^ {2}${status} `, 'm'));
			expect(flat(commandLine.after), name).toMatch(new RegExp(`[ ;:]${status} `));
		}
	});
});

const [, readings = none, figures = none] = topics;

describe('help', () => {
	it('alone lists topics and commands, but no hidden ones', async () => {
		const {status, out} = await help();
		expect(status).toBe(0);
		for (const {name} of topics) expect(out).toMatch(new RegExp(`^ {2}${name} `, 'm'));
		for (const name of ['list', 'due', 'help', 'completion']) expect(out).toMatch(new RegExp(`^ {2}${name} `, 'm'));
		expect(out).not.toMatch(/^ {2}(?:hidden|complete) /m);
	});

	it('explains a topic, or a command as its own --help does', async () => {
		const [
			{
				name,
				blocks: [first],
			} = {name: '', blocks: []},
		] = topics;
		expect(flat((await help(name.toUpperCase())).out)).toContain(flat(String(first)));
		expect((await help('due')).out).toContain('--within <days>');
	});

	it.each([
		[`${figures.name.slice(0, -2)}${figures.name.at(-1)}`, figures.name],
		[readings.name.slice(0, -1), readings.name],
		['complettion', 'completion'],
		['zzz', undefined],
	])('refuses %s with 2 and says what may be meant: %s', async (topic, meant) => {
		const {status, out, faults} = await help(topic);
		expect([status, out, faults.split('\n').length]).toEqual([2, '', 2]);
		const known = [...topics.map(({name}) => name), anything];
		const [said = ''] = words.commands.help.unknown({topic, meant, known}).split(anything);
		expect(faults).toContain(said);
	});

	it('prints topic or manual page, not both', async () => {
		expect(await help('bias', true)).toMatchObject({status: 2, out: ''});
	});
});

describe('The manual page', () => {
	const page = manPage({program: table(), topics, day: '2026-11-25'});

	it('has every command, every option and every topic', () => {
		for (const one of ['list', 'due', 'help', 'completion']) expect(page).toMatch(new RegExp(`^\\.SS "${one}\\b`, 'm'));
		for (const one of ['within', 'calendar', 'data', 'limit', 'man']) expect(page).toContain(`\\-\\-${one}`);
		for (const {title} of topics) expect(page).toContain(`.SH "${title.toUpperCase().replaceAll('-', '\\-')}"`);
		expect(page).not.toContain('hidden');
	});

	it('lets no text be taken for a request or an escape', () => {
		const odd: Topic = {
			name: 'x',
			title: 'a "title"',
			blocks: [".TH\\fB 'x' ~^`", {rows: [['.so', "'br \\n"]]}, {lines: ['.ex', '\\']}],
		};
		const lines = manPage({program: table(), topics: [odd], day: '2026-11-25'}).split('\n');
		const requests = new Set(lines.filter((line) => /^[.']/.test(line)).map((line) => line.split(' ')[0]));
		expect([...requests].sort()).toEqual(['.PP', '.SH', '.SS', '.TH', '.TP', '.br', '.fi', '.nf']);
		expect(lines).toContain('.SH "A \\(dqTITLE\\(dq"');
		expect(lines).toContain('\\&.TH\\(rsfB \\(aqx\\(aq \\(ti\\(ha\\(ga');
	});

	it('is ASCII in lines of at most 80 bytes', () => {
		// What is laid out in the words themselves is as wide as they have it.
		const laidOut = commandLine.examples.split('\n');
		const wide = page.split('\n').filter((line) => !/^[ -~]{0,80}$/.test(line));
		expect(wide.filter((line) => !/^[ -~]*$/.test(line) || !laidOut.includes(line.replaceAll('\\', '')))).toEqual([]);
	});

	const runs = (command: string, ...args: string[]) =>
		spawnSync(command, args, {input: page, encoding: 'utf8', env: {...process.env, LC_ALL: 'C.UTF-8', MANWIDTH: '78'}});
	const has = (command: string) => spawnSync('sh', ['-c', `command -v ${command}`]).status === 0;

	test.skipIf(!has('mandoc'))('pleases mandoc', () => {
		expect(runs('mandoc', '-Tlint')).toMatchObject({status: 0, stdout: ''});
	});

	test.skipIf(!has('groff'))('is set by groff without a warning, with all that the topics say', () => {
		const {status, stdout, stderr} = runs('groff', '-man', '-Tutf8', '-ww', '-P-cbou', '-rHY=0');
		expect([status, stderr]).toEqual([0, '']);
		// Lines are filled out to both edges, and broken where the topic is not.
		const bare = (text: string): string => text.replace(/[\s\u00A0\u2010]+/g, '');
		for (const {blocks} of topics)
			for (const block of blocks) if (typeof block === 'string') expect(bare(stdout)).toContain(bare(block));
	});
});
