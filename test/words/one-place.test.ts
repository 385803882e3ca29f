import {readdirSync, readFileSync} from 'node:fs';
import path from 'node:path';
import ts from 'typescript';
import {expect, it} from 'vitest';

const root = path.resolve(import.meta.dirname, '../../source');

/** Two words or more with a blank between them: what a person would read. */
const isSentence = (text: string): boolean => /\p{L}{2,}[,;:.]? +[\p{L}({'"]/u.test(text);

/** What is read by a machine, or only by somebody who changes the program. */
const isForMachines = (node: ts.Node): boolean => {
	for (let at: ts.Node | undefined = node; at; at = at.parent) {
		if (ts.isImportDeclaration(at) || ts.isExportDeclaration(at) || ts.isTypeNode(at)) return true;
		// A programmer's mistake; nobody who uses the program meets it.
		if (ts.isThrowStatement(at) && at.expression && /^new (Error|RangeError|TypeError)\(/.test(at.expression.getText()))
			return true;
	}
	return false;
};

/** Files whose texts are no sentences of the program. */
const others: Readonly<Record<string, string>> = {
	'units.ts': 'labels of units, as handbooks have them',
	'commands/completion.ts': 'scripts of shells',
	'reports/html/block-html.ts': 'HTML',
	'reports/html/html-of.ts': 'HTML',
	'reports/html/style.ts': 'CSS',
	'reports/svg/bands-svg.ts': 'classes of SVG',
	'reports/svg/shapes.ts': 'classes of SVG',
	'store/sentences-of-2.ts': 'what files of the second form say, word for word',
	'store/upgrade-from-1.ts': 'what files of the second form say, word for word',
};

/** Texts with a blank that no person reads as a sentence. */
const exceptions: Readonly<Record<string, string>> = {
	'commands/seat.ts: report 0 --practice --as html --out practice.html': 'a command line',
	'commands/seat.ts: npm start': 'a command line',
	'commands/seat.ts: npm start --0': 'a command line',
	'measures/layouts.ts: Loefgren A': 'a name in the literature',
	'measures/layouts.ts: Loefgren B': 'a name in the literature',
	'reports/calendar.ts: //armdrift//next checks//EN': 'who wrote the calendar (RFC 5545 3.7.3)',
	'reports/calendar.ts: next check of 0': 'hashed, never shown',
	'reports/radius-csv.ts: put back': 'a value in CSV, for programs',
	'desk/remarks.ts: put back': 'the same value in JSON',
	'results/past-row.ts: unnamed arm': 'the name of an arm without one, on the disk too',
};

function sentencesIn(name: string): string[] {
	const text = readFileSync(path.join(root, name), 'utf8');
	const kind = name.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
	const file = ts.createSourceFile(name, text, ts.ScriptTarget.Latest, true, kind);
	const found: string[] = [];
	const look = (node: ts.Node): void => {
		const said = textOf(node);
		if (said !== undefined && isSentence(said) && !isForMachines(node)) found.push(`${name}: ${said.trim()}`);
		ts.forEachChild(node, look);
	};
	look(file);
	return found;
}

function textOf(node: ts.Node): string | undefined {
	if (ts.isStringLiteralLike(node) || ts.isJsxText(node)) return node.text;
	if (ts.isTemplateExpression(node))
		return [node.head.text, ...node.templateSpans.map(({literal}) => literal.text)].join('0');
	return undefined;
}

it('Every sentence that a person reads stands in words/', () => {
	const files = readdirSync(root, {recursive: true, encoding: 'utf8'})
		.map((name) => name.replaceAll(path.sep, '/'))
		.filter((name) => /\.tsx?$/.test(name) && !name.startsWith('words/') && !Object.hasOwn(others, name));
	const found = files.flatMap(sentencesIn);
	expect(found.filter((one) => !Object.hasOwn(exceptions, one))).toEqual([]);
	// An exception that is met no more goes.
	expect(Object.keys(exceptions).filter((one) => !found.includes(one))).toEqual([]);
});
