import {readFileSync} from 'node:fs';
import ts from 'typescript';

/**
 * What a file of words says to a person: every text in it, with 0 for a value; keys, types and imports are none.
 *
 * @param without keys whose values are left out
 */
export function saidInFile(name: string, without: readonly string[] = []): readonly string[] {
	const file = ts.createSourceFile(name, readFileSync(name, 'utf8'), ts.ScriptTarget.Latest, true);
	const said: string[] = [];
	const look = (node: ts.Node): void => {
		if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || ts.isTypeNode(node)) return;
		if (ts.isPropertyAssignment(node) && without.includes(node.name.getText())) return;
		const {parent} = node;
		const isKey = ts.isPropertyAssignment(parent ?? file) && (parent as ts.PropertyAssignment).name === node;
		const isCompared =
			parent !== undefined &&
			(ts.isCaseClause(parent) ||
				ts.isElementAccessExpression(parent) ||
				(ts.isBinaryExpression(parent) && parent.operatorToken.kind !== ts.SyntaxKind.QuestionQuestionToken));
		if (!isKey && !isCompared) {
			if (ts.isStringLiteralLike(node)) said.push(node.text);
			if (ts.isTemplateExpression(node))
				said.push([node.head.text, ...node.templateSpans.map(({literal}) => literal.text)].join('0'));
		}
		ts.forEachChild(node, look);
	};
	look(file);
	return said;
}
