import path from 'node:path';

// Libraries that only some moments need, though the module that uses them is loaded at the start: name of the bundle
// that they become, by name of the package. Only a package that exports one function can be listed. The t quantile's
// 200 modules take 10 ms, and no screen asks for it before a probe round is in.
const POSTPONED_PACKAGES = {'@stdlib/stats-base-dists-t-quantile': 'student-t-quantile'};

const postponed = (bundle) => `
	let loaded;
	export default (...values) => (loaded ??= require('./${bundle}.cjs'))(...values);
`;

/**
 * Makes every `import('./x.js')` in our own code, and every postponed package, a bundle of its own that is read when
 * it is first needed; adds it to the map from bundle to source file.
 */
export const lazyBundles = (sourceOfBundle) => {
	const addBundle = (name, file) => {
		const known = sourceOfBundle.get(name) ?? file;
		if (known !== file) throw new Error(`${known} and ${file} would both become ${name}.cjs; rename one.`);
		sourceOfBundle.set(name, file);
		return {path: `./${name}.cjs`, external: true};
	};
	const resolved = async (context, {path: request, kind, importer, resolveDir}) => {
		const {path: file, errors} = await context.resolve(request, {kind, importer, resolveDir, pluginData: 'resolving'});
		if (errors.length > 0) throw new Error(errors[0].text);
		return file;
	};
	return {
		name: 'lazy-bundles',
		setup(context) {
			context.onResolve({filter: /^\.\.?\//}, async (request) => {
				const {kind, importer, pluginData} = request;
				if (kind !== 'dynamic-import' || importer.includes('node_modules') || pluginData === 'resolving')
					return undefined;
				const file = await resolved(context, request);
				return addBundle(path.basename(file).replace(/\.\w+$/, ''), file);
			});
			context.onResolve({filter: /^@?\w/}, async (request) => {
				const bundle = POSTPONED_PACKAGES[request.path];
				const isEntry = request.kind === 'entry-point' || request.pluginData === 'resolving';
				if (!bundle || isEntry || request.importer.includes('node_modules')) return undefined;
				addBundle(bundle, await resolved(context, request));
				return {path: bundle, namespace: 'postponed'};
			});
			context.onLoad({filter: /.*/, namespace: 'postponed'}, ({path: bundle}) => ({contents: postponed(bundle)}));
			context.onResolve({filter: /\.cjs$/, namespace: 'postponed'}, ({path: file}) => ({path: file, external: true}));
		},
	};
};
