// A program with the shape of the real one, for tests of the terminal layer by itself.
import {prepareForInk} from '../../source/terminal/environment.js';

const main = async (): Promise<void> => {
	prepareForInk(process.env, process.argv);
	const {runSample} = await import('./sample-app.js');
	await runSample();
};

void main();
