// Copies the project with every sentence of the language reworded, and runs the tests there: none of them may look for
// the words of today. `npm run test:reworded [-- files of tests]`
import {execFileSync, spawnSync} from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import ts from 'typescript';

const project = path.resolve(import.meta.dirname, '../..');
const copy = fs.mkdtempSync(path.join(os.tmpdir(), 'armdrift-reworded-'));

/** Longer words have their second letter twice: lengths and line breaks change with them, numbers and values do not. */
const reworded = (text) =>
	text.replaceAll(
		/(?<![\p{L}\d{\\%-])\p{L}{3,}\p{Ll}(?![\p{L}\d}:])/gu,
		(word) => `${word.slice(0, 2)}${word.slice(1)}`,
	);

/** Texts between quotes, and those of templates; not what is imported, a key, a type, or a single word that is an id. */
function rewordedFile(code, name) {
	const file = ts.createSourceFile(name, code, ts.ScriptTarget.Latest, true);
	const edits = [];
	// What is typed on the command line: the names of help topics, and commands as the help has them.
	const isTyped = ({parent}) =>
		name.includes('/commands/') &&
		((ts.isPropertyAssignment(parent) && parent.name.getText() === 'name') ||
			(ts.isArrayLiteralExpression(parent) && parent.parent.name?.getText() === 'lines'));
	const look = (node) => {
		if (ts.isImportDeclaration(node) || ts.isTypeNode(node)) return;
		const isText = ts.isStringLiteralLike(node) || ts.isTemplateHead(node) || ts.isTemplateMiddleOrTemplateTail(node);
		const isKey = ts.isPropertyAssignment(node.parent ?? file) && node.parent.name === node;
		const isCompared = ts.isBinaryExpression(node.parent ?? file) || ts.isCaseClause(node.parent ?? file);
		const isIndex = ts.isElementAccessExpression(node.parent ?? file);
		if (isText && !isKey && !isCompared && !isIndex && !isTyped(node)) edits.push([node.getStart(), node.getEnd()]);
		ts.forEachChild(node, look);
	};
	look(file);
	return edits
		.toSorted(([one], [other]) => other - one)
		.reduce((sofar, [from, to]) => sofar.slice(0, from) + reworded(sofar.slice(from, to)) + sofar.slice(to), code);
}

const listed = execFileSync('git', ['ls-files', '-co', '--exclude-standard'], {cwd: project, encoding: 'utf8'}).trim();
for (const name of listed.split('\n')) {
	const to = path.join(copy, name);
	fs.mkdirSync(path.dirname(to), {recursive: true});
	const from = path.join(project, name);
	if (/^source\/words\/en\/.*\.ts$/.test(name)) fs.writeFileSync(to, rewordedFile(fs.readFileSync(from, 'utf8'), name));
	// What the manual says in the words of the program, in its lists, it says in the new ones; commands stay what they are.
	else if (name === 'README.md')
		fs.writeFileSync(to, fs.readFileSync(from, 'utf8').replaceAll(/^(?:- |## ).*$/gm, reworded));
	else fs.copyFileSync(from, to);
}
fs.symlinkSync(path.join(project, 'node_modules'), path.join(copy, 'node_modules'));
const run = (...args) => spawnSync('npx', args, {cwd: copy, stdio: 'inherit'}).status ?? 1;
execFileSync('npm', ['run', '--silent', 'build'], {cwd: copy, stdio: 'inherit'});
const status = run('vitest', 'run', ...process.argv.slice(2));
if (status === 0) fs.rmSync(copy, {recursive: true, force: true});
else process.stdout.write(`The copy is kept: ${copy}\n`);
process.exit(status);
