// Becomes dist/start.cjs. Starts the program with what V8 compiled when it was built (compile-ahead.mjs), so that it
// is not compiled anew at every start. V8 takes it only under the version and the flags that made it; where it does not,
// or where there is none, a file is compiled as ever.
const {readFileSync} = require('node:fs');
const vm = require('node:vm');

// Room for young objects: the start leaves so much behind for good that V8 would double it three times over, and never
// give it back (5 MiB). Of the V8 of Node 20 it is known that it reads this whenever it would double it, and no sooner.
if (process.versions.v8.startsWith('11.')) require('node:v8').setFlagsFromString('--semi-space-growth-factor=1');

const loaded = new Map();

const compiledAhead = (file) => {
	try {
		return readFileSync(`${file}.${process.version}-${process.arch}-BUILD`);
	} catch {
		return undefined;
	}
};

/** Does for the files of this folder, each of them a function, what `require` does. */
const load = (name) => {
	if (!name.startsWith('./')) return require(name);
	const known = loaded.get(name);
	if (known) return known.exports;
	const module = {exports: {}};
	loaded.set(name, module);
	const filename = `${__dirname}/${name.slice(2)}`;
	const script = new vm.Script(readFileSync(filename, 'utf8'), {filename, cachedData: compiledAhead(filename)});
	script.runInThisContext()(module, module.exports, load);
	return module.exports;
};

load(`./program-${load('./language.cjs').chosenLanguage()}.cjs`);
