// The package as it is handed out, on the newest Node of each of these lines and on some that are too old:
// `npm run test:nodes`. It takes them from the npm registry, so it is no part of `npm test`.
import {execFileSync, spawnSync} from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import {spawn} from '@lydell/node-pty';

const NODES = [20, 22, 24, 26];
const TOO_OLD = [6, 16, 18];
const LIMIT_MS = 30_000;
const ARM = 'north deck';

const project = path.resolve(import.meta.dirname, '../..');
const answers = fs.readFileSync(path.join(project, 'fixtures/answers/invented-full-check.txt'));
const {version} = JSON.parse(fs.readFileSync(path.join(project, 'package.json'), 'utf8'));
const scratch = fs.mkdtempSync(path.join(os.tmpdir(), 'armdrift nödes '));
process.on('exit', () => fs.rmSync(scratch, {recursive: true, force: true}));

const npm = (...args) =>
	execFileSync('npm', [...args, '--no-audit', '--no-fund', '--loglevel=error'], {
		cwd: project,
		encoding: 'utf8',
		stdio: ['ignore', 'pipe', 'inherit'],
	});

/** The program of a Node, without its scripts: the package is nothing but that file. */
function nodeOf(major) {
	const name = `node-${process.platform === 'win32' ? 'win' : process.platform}-${process.arch}`;
	const prefix = path.join(scratch, `node ${major}`);
	npm('install', '--prefix', prefix, '--ignore-scripts', '--no-save', `${name}@${major}`);
	return path.join(prefix, 'node_modules', name, process.platform === 'win32' ? 'bin/node.exe' : 'bin/node');
}

/** Packs the program and installs it as a person would; nobody can write to what was installed. */
function installed() {
	npm('pack', '--pack-destination', scratch);
	const prefix = path.join(scratch, 'installed');
	npm('install', '--global', '--prefix', prefix, path.join(scratch, `armdrift-${version}.tgz`));
	const folder = path.join(npm('root', '--global', '--prefix', prefix).trim(), 'armdrift');
	for (const name of fs.readdirSync(folder, {recursive: true})) {
		const file = path.join(folder, name);
		fs.chmodSync(file, fs.statSync(file).isDirectory() ? 0o555 : 0o444);
	}
	return path.join(folder, 'dist', 'armdrift.cjs');
}

const must = (isSo, found) => {
	if (!isSo) throw new Error(`found ${JSON.stringify(found).slice(0, 300)}`);
};

/** Starts a check of the arm that is on file on a pseudo-terminal, and leaves with Ctrl+C once the arm is on the screen. */
const startedOnTerminal = (node, program, env) =>
	new Promise((resolve, reject) => {
		const terminal = spawn(node, [program, '--arm', ARM], {name: 'xterm-256color', cols: 80, rows: 24, env});
		let shown = '';
		let isLeaving = false;
		const timer = setTimeout(() => terminal.kill('SIGKILL'), LIMIT_MS);
		terminal.onData((data) => {
			shown += data;
			if (isLeaving || !shown.includes(ARM)) return;
			isLeaving = true;
			terminal.write('\u0003');
		});
		terminal.onExit(({exitCode}) => {
			clearTimeout(timer);
			const isWhole = shown.includes('\u001B[?1049h') && shown.includes('\u001B[?1049l');
			if (isLeaving && isWhole && exitCode === 130) resolve();
			else reject(new Error(`status ${exitCode}, found ${JSON.stringify(shown).slice(-300)}`));
		});
	});

/** What is tried on each Node, one after the other on the same data. */
function checksOn(node, program) {
	const data = fs.mkdtempSync(path.join(scratch, 'data '));
	const env = {...process.env, ARMDRIFT_DATA: data, HOME: data, TERM: 'xterm-256color', LC_ALL: 'C.UTF-8'};
	const run = (args, input = '') => {
		const {status, stdout, stderr} = spawnSync(node, [program, ...args], {env, input, encoding: 'utf8'});
		must(status === 0, {status, stdout, stderr});
		return stdout;
	};
	return {
		'--help': () => must(/^ {2}recheck /m.test(run(['--help'])), 'no table of commands'),
		'--version': () => must(run(['--version']) === `${version}\n`, run(['--version'])),
		'--man': () => must(run(['--man']).startsWith('.TH "ARMDRIFT"'), 'no manual page'),
		'a plain check to its end': () => {
			run(['--plain'], answers);
			must(fs.readdirSync(path.join(data, 'checks')).length === 1, fs.readdirSync(data, {recursive: true}));
		},
		list: () => must(run(['list']).includes(ARM), run(['list'])),
		'list --as json': () => must(JSON.parse(run(['list', '--as', 'json']))[0].arm === ARM, run(['list'])),
		report: () => must(/<\/html>\s*$/.test(run(['report', '--as', 'html'])), 'no whole page'),
		'compute --id': () => {
			const [{id}] = JSON.parse(run(['list', '--as', 'json']));
			must('probe' in JSON.parse(run(['compute', '--id', id])), run(['compute', '--id', id]));
		},
		'a full-screen start': () => startedOnTerminal(node, program, env),
	};
}

/** One line on standard error and status 2, and not a word of the parser. */
function refusedBy(node, program) {
	const {status, stdout, stderr} = spawnSync(node, [program, '--version'], {encoding: 'utf8'});
	must(status === 2 && stdout === '' && /^armdrift [^\n]*\n$/.test(stderr), {status, stdout, stderr});
}

const counts = {passed: 0, failed: 0};
const tried = async (name, check) => {
	try {
		await check();
		counts.passed++;
	} catch (error) {
		counts.failed++;
		process.stdout.write(`  FAILED ${name}: ${error.message}\n`);
	}
};

const program = installed();
for (const major of [...TOO_OLD, ...NODES]) {
	const node = nodeOf(major);
	const name = execFileSync(node, ['--version'], {encoding: 'utf8'}).trim();
	const checks = TOO_OLD.includes(major) ? {'too old': () => refusedBy(node, program)} : checksOn(node, program);
	process.stdout.write(`Node ${name}: ${Object.keys(checks).join(', ')}\n`);
	for (const [what, check] of Object.entries(checks)) await tried(what, check);
}
process.stdout.write(`${counts.passed} passed, ${counts.failed} failed\n`);
process.exitCode = counts.failed > 0 ? 1 : 0;
