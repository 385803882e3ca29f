import {storeOf} from '../../../source/desk/stored-forms.js';
import {Addition} from '../../../source/exchange/addition.js';
import {ImportFile} from '../../../source/exchange/import-file.js';
import {checkedIds, importPlan} from '../../../source/exchange/import-plan.js';

/** Adds all of an export to a data folder. @throws StoreError */
export const importInto = async (file: string, dataDir: string, tell: (sentence: string) => void): Promise<void> => {
	const opened = new ImportFile(file);
	try {
		const store = storeOf(dataDir, () => new Date(), tell);
		await new Addition(opened, store).run(importPlan(opened, checkedIds(opened), store));
	} finally {
		opened.close();
	}
};
