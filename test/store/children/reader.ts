// Reads the check in progress and prints it, or the sentence that says why not.
import {StoreError} from '../../../source/store/store-error.js';
import {storeText} from '../../../source/words/store-text.js';
import {openBareStore} from './bare-store.js';

try {
	process.stdout.write(JSON.stringify(openBareStore(process.argv[2] ?? '').draft()));
} catch (error) {
	if (!(error instanceof StoreError)) throw error;
	process.stdout.write(storeText(error.fault));
}
