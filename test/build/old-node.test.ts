import {readFileSync} from 'node:fs';
import vm from 'node:vm';
import ts from 'typescript';
import {expect, test} from 'vitest';
import {terminalWords} from '../../source/words/command-line.js';
import {PROGRAM} from '../helpers/pty.js';

const entry = readFileSync(PROGRAM, 'utf8');

/** What the compiler makes of it for Nodes of a time; the same for all times where nothing newer stands in it. */
const madeFor = (target: ts.ScriptTarget): string =>
	ts.transpileModule(entry.replace(/^#!.*\n/, ''), {compilerOptions: {target, alwaysStrict: false}}).outputText;

/** Runs the first file as a Node of that version would. */
function startedOn(node: string) {
	const said: string[] = [];
	const loaded: string[] = [];
	const process = {versions: {node}, exitCode: 0};
	const console = {error: (text: string) => said.push(text)};
	vm.runInNewContext(entry, {process, console, require: (name: string) => loaded.push(name)});
	return {said, loaded, status: process.exitCode};
}

test('The first file has nothing in it that an old Node cannot read', () => {
	expect(madeFor(ts.ScriptTarget.ES5)).toBe(madeFor(ts.ScriptTarget.ESNext));
});

test.each(['0.10.48', '6.17.1', '16.20.2', '18.20.8', '20.9.0', '20.18.3'])(
	'Node %s is too old: one sentence, status 2, and nothing is loaded',
	(node) => {
		const sentence = terminalWords.tooOldNode({wanted: '20.19', found: node});
		expect(startedOn(node)).toEqual({said: [sentence], loaded: [], status: 2});
	},
);

test.each(['20.19.0', '20.20.2', '21.0.0', '22.1.0', '26.12.1', '100.0.0'])('Node %s starts the program', (node) => {
	expect(startedOn(node)).toEqual({said: [], loaded: ['./start.cjs'], status: 0});
});
