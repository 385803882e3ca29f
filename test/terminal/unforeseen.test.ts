import {expect, it} from 'vitest';
import {unforeseen} from '../../source/terminal/unforeseen.js';
import {terminalWords} from '../../source/words/command-line.js';

const ofSystem = (more: object) => Object.assign(new Error('raw words'), more);

it('An error of the system is no fault of the program: it is told with its file and what it means', () => {
	const error = ofSystem({code: 'EMFILE', syscall: 'open', path: '/a\n/file'});
	const sentence = terminalWords.systemFault({file: '/a\\n/file', code: 'EMFILE'});
	expect(unforeseen(error)).toEqual({sentence, isOurs: false});
});

it('A folder that was removed while somebody works in it has a sentence of its own', () => {
	const error = ofSystem({code: 'ENOENT', syscall: 'uv_cwd'});
	expect(unforeseen(error)).toEqual({sentence: terminalWords.folderGone, isOurs: false});
});

it('Content nested beyond all measure has a sentence of its own', () => {
	const nest = (depth: number): unknown => [nest(depth + 1)];
	const overflow = () => {
		try {
			return nest(0);
		} catch (error) {
			return error;
		}
	};
	expect(unforeseen(overflow())).toEqual({sentence: terminalWords.tooDeep, isOurs: false});
});

it('Any other error is a fault of the program, on one line', () => {
	expect(unforeseen(new TypeError('first\nsecond'))).toEqual({
		sentence: terminalWords.ownFault({message: 'first\\nsecond'}),
		isOurs: true,
	});
});
