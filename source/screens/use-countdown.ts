import {useStdout} from 'ink';
import {useCallback, useEffect, useState} from 'react';
import {words} from '../words/index.js';
import type {Look} from './look.js';

/** The settle countdown: whole seconds, ended by the first key of a reading; rings once at its end. */
export function useCountdown(
	seconds: number,
	bell: boolean,
): {readonly left: number | undefined; readonly start: () => void; readonly stop: () => void} {
	const [left, setLeft] = useState<number>();
	const {stdout} = useStdout();
	useEffect(() => {
		if (left === undefined || left <= 0) return;
		const timer = setTimeout(() => {
			setLeft(left - 1);
			if (left === 1 && bell) stdout.write('\u0007');
		}, 1000);
		return () => clearTimeout(timer);
	}, [left, bell, stdout]);
	const start = useCallback(() => setLeft(Math.max(1, Math.round(seconds))), [seconds]);
	const stop = useCallback(() => setLeft(undefined), []);
	return {left, start, stop};
}

/** `Keep still ███░░ 2 s`, or `Settled: read the gauge now.`; a bar is noise to who hears it read out. */
export function countdownText(left: number, seconds: number, {unicode, screenReader}: Omit<Look, 'color'>): string {
	if (left === 0) return words.faces.settled;
	if (screenReader) return words.faces.keepStill({seconds: left});
	const [gone, toCome] = unicode ? ['█', '░'] : ['#', '.'];
	return words.faces.keepStillBar({bar: `${gone.repeat(seconds - left)}${toCome.repeat(left)}`, seconds: left});
}
