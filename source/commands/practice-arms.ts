import {lessonArms} from '../practice/arms.js';
import {columns} from '../terminal/columns.js';
import {words} from '../words/index.js';
import {printOut} from './print-out.js';

/** `armdrift practice --arms`: the invented arms, without what they teach. */
export const printPracticeArms = (): Promise<number> =>
	printOut(columns(lessonArms.map(({id}) => [id, words.practice.arms[id].name])));
