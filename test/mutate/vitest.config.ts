import {defineConfig} from 'vitest/config';
import {BaseSequencer, type TestSpecification} from 'vitest/node';

/** A mutant is done with at its first failing test, so the tests that stand nearest to the formulas come first. */
const folders = ['test/measures/', 'test/procedure/', 'test/results/', 'test/model/'];

const rank = ({moduleId}: TestSpecification): number => folders.findIndex((folder) => moduleId.includes(folder));

class NearestFirst extends BaseSequencer {
	override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
		return [...files].sort((one, other) => rank(one) - rank(other));
	}
}

export default defineConfig({
	test: {
		include: ['test/{measures,results,procedure,model}/**/*.test.ts'],
		testTimeout: 30_000,
		isolate: false,
		sequence: {sequencer: NearestFirst},
	},
});
