/**
 * Libraries that only some moments need, though the module that uses them is loaded at the start: the package by the
 * name of the file that it becomes. Only a package that is one function can be listed. The t quantile's 200 modules
 * take 10 ms, and no screen asks for it before a probe round is in.
 */
export const POSTPONED_PACKAGES = {'student-t-quantile': '@stdlib/stats-base-dists-t-quantile'};

const loadLater = (file) => `
	let loaded;
	export default (...values) => (loaded ??= require('./${file}.cjs'))(...values);
`;

/** Loads each of these packages when its function is first called. */
export const postponePackages = {
	name: 'postpone-packages',
	setup(context) {
		const fileOfPackage = new Map(Object.entries(POSTPONED_PACKAGES).map(([file, name]) => [name, file]));
		context.onResolve({filter: /^@?\w/}, ({path: name, importer}) => {
			const file = fileOfPackage.get(name);
			if (!file || importer.includes('node_modules')) return undefined;
			return {path: file, namespace: 'postponed'};
		});
		context.onLoad({filter: /.*/, namespace: 'postponed'}, ({path: file}) => ({contents: loadLater(file)}));
		context.onResolve({filter: /\.cjs$/, namespace: 'postponed'}, ({path: file}) => ({path: file, external: true}));
	},
};
