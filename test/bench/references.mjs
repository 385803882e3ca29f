import {writeFileSync} from 'node:fs';
import path from 'node:path';
import {fileURLToPath} from 'node:url';
import {build} from 'esbuild';
import {freshFolder, Target} from './target.mjs';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

const BARE = `process.stdout.write('READY\\n'); setInterval(() => {}, 1e9);`;
// One key, one write, in raw mode; q ends it.
const ECHO = `
process.stdin.setRawMode(true);
process.stdin.on('data', (key) => {
	if (String(key) === 'q') process.exit(0);
	process.stdout.write('READY ' + key + '\\r\\n');
});
process.stdout.write('READY\\r\\n');`;
const MINIMAL = `
import {createElement as h, useState} from 'react';
import {render, Box, Text, useApp} from 'ink';
import TextInput from 'ink-text-input';
const App = () => {
	const [value, setValue] = useState('');
	const {exit} = useApp();
	return h(Box, null, h(Text, null, 'READY '), h(TextInput, {value, onChange: (text) => text.includes('q') ? exit() : setValue(text)}));
};
render(h(App));`;

/** Ink, React and a text field in one file, as anybody would bundle them: the yardstick for everything with a screen. */
const bundleMinimal = async (folder) => {
	const outfile = path.join(folder, 'minimal.mjs');
	await build({
		stdin: {contents: MINIMAL, resolveDir: ROOT, loader: 'js'},
		outfile,
		bundle: true,
		minify: true,
		platform: 'node',
		format: 'esm',
		target: 'node20',
		define: {'process.env.NODE_ENV': '"production"'},
		banner: {js: 'import {createRequire} from "node:module"; const require = createRequire(import.meta.url);'},
		plugins: [withoutDevtools],
		logLevel: 'error',
	});
	return outfile;
};

// Ink names it in an import that only runs under DEV=true; it is not installed.
const withoutDevtools = {
	name: 'without-devtools',
	setup(context) {
		context.onResolve({filter: /^react-devtools-core$/}, () => ({path: 'none', namespace: 'none'}));
		context.onLoad({filter: /.*/, namespace: 'none'}, () => ({contents: 'export default {}'}));
	},
};

const written = (folder, name, text) => {
	const file = path.join(folder, name);
	writeFileSync(file, text);
	return file;
};

/** What the program is measured against: bare Node, raw-mode echo, and a minimal Ink program. */
export const makeReferences = async () => {
	const folder = freshFolder();
	const minimal = await bundleMinimal(folder);
	return {
		bare: () => new Target({name: 'bare Node', args: [written(folder, 'bare.cjs', BARE)], marker: 'READY'}),
		echo: () => new Target({name: 'raw echo', args: [written(folder, 'echo.cjs', ECHO)], marker: 'READY'}),
		minimal: () => new Target({name: 'minimal Ink', args: [minimal], marker: 'READY'}),
	};
};
