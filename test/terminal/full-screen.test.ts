import {closeSync, openSync, readFileSync, writeSync} from 'node:fs';
import path from 'node:path';
import {expect, test} from 'vitest';
import {FullScreen} from '../../source/terminal/full-screen.js';
import {freshFolder} from '../helpers/program-environment.js';

/** An output that ends in a file, so that what is written past the stream is seen too. */
const openOutput = () => {
	const file = path.join(freshFolder(), 'written');
	const fd = openSync(file, 'w');
	const write = (chunk: Uint8Array | string): boolean => {
		writeSync(fd, chunk.toString());
		return true;
	};
	return {output: {fd, write}, written: () => readFileSync(file, 'utf8'), close: () => closeSync(fd)};
};

// Private modes as in the xterm control sequences: 1049 alternate screen, 2004 bracketed paste, 25 cursor.
test('The alternate screen and the paste marks are switched on once and off once', () => {
	const {output, written} = openOutput();
	const screen = new FullScreen(output);
	screen.enter();
	screen.enter();
	expect(screen.isTaken).toBe(true);
	expect(screen.leave('parting\n')).toBe(true);
	expect(screen.leave('again\n')).toBe(true);
	expect(written().match(/\u001B\[\?1049./g)).toEqual(['\u001B[?1049h', '\u001B[?1049l']);
	expect(written().match(/\u001B\[\?2004./g)).toEqual(['\u001B[?2004h', '\u001B[?2004l']);
	expect(written()).toContain('\u001B[?25h');
	expect(written()).toMatch(/\u001B\[\?1049lparting\n$/);
});

test('Nothing that is written meanwhile can erase the scrollback', () => {
	const {output, written} = openOutput();
	const screen = new FullScreen(output);
	screen.enter();
	output.write('a\u001B[2J\u001B[3J\u001B[Hb');
	expect(written()).toMatch(/a\u001B\[2J\u001B\[Hb$/);
});

// Private mode 2026 of the synchronised output marks where a frame begins and ends.
test('A frame that is written in pieces reaches the terminal in one, and what is no frame at once', () => {
	const {output, written} = openOutput();
	const pieces: string[] = [];
	const write = (chunk: Uint8Array | string): boolean => {
		pieces.push(chunk.toString());
		return output.write(chunk);
	};
	const watched = {fd: output.fd, write};
	const screen = new FullScreen(watched);
	screen.enter();
	for (const piece of ['\u001B[?25l', '\u001B[?2026h', 'a frame\u001B[3J', '\u001B[?2026l', 'bell'])
		expect(watched.write(piece)).toBe(true);
	expect(pieces).toEqual(['\u001B[?25l', '\u001B[?2026ha frame\u001B[?2026l', 'bell']);
	watched.write('\u001B[?2026h');
	watched.write('half a frame');
	screen.leave('parting\n');
	expect(written()).not.toContain('half a frame');
	expect(written()).toMatch(/parting\n$/);
});

test('A farewell frame after leaving does not reach the normal screen', () => {
	const {output, written} = openOutput();
	const screen = new FullScreen(output);
	screen.enter();
	screen.leave('parting\n');
	expect(output.write('last frame')).toBe(true);
	expect(written()).not.toContain('last frame');
});

test('Stopped and continued, it takes the alternate screen again', () => {
	const {output, written} = openOutput();
	const screen = new FullScreen(output);
	screen.enter();
	screen.suspend();
	expect(screen.isTaken).toBe(false);
	screen.enter();
	screen.leave();
	expect(
		written()
			.match(/\u001B\[\?1049./g)
			?.map((mode) => mode.at(-1)),
	).toEqual(['h', 'l', 'h', 'l']);
});

test('A terminal that is gone is reported, not thrown', () => {
	const {output, close} = openOutput();
	const screen = new FullScreen(output);
	screen.enter();
	close();
	expect(screen.leave('parting')).toBe(false);
});
