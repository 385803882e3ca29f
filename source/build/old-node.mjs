import {readFileSync} from 'node:fs';
import path from 'node:path';
import {fileURLToPath} from 'node:url';
import {build, transform} from 'esbuild';

const ENTRY = fileURLToPath(new URL('entry.cjs', import.meta.url));

/** The words of the terminal, which are TypeScript. */
const terminalWords = async (root) => {
	const entry = path.join(root, 'source/words/en/terminal.ts');
	const {outputFiles} = await build({entryPoints: [entry], bundle: true, format: 'esm', write: false});
	return (await import(`data:text/javascript,${encodeURIComponent(outputFiles[0].text)}`)).terminal;
};

/** The first file that Node reads, with the version that package.json asks for and the sentence for an older one. */
export const entryForAnyNode = async (root) => {
	const {engines} = JSON.parse(readFileSync(path.join(root, 'package.json'), 'utf8'));
	const [, wanted, major, minor] = /^>=((\d+)\.(\d+))$/.exec(engines.node);
	const sentence = (await terminalWords(root)).tooOldNode({wanted, found: 'FOUND'});
	const define = {MAJOR: major, MINOR: minor, TOO_OLD: JSON.stringify(sentence)};
	return (await transform(readFileSync(ENTRY, 'utf8'), {define, target: 'es5'})).code;
};
