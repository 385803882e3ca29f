import {useStdout} from 'ink';
import {useCallback, useEffect, useState} from 'react';
import type {Countdown} from '../pages/instruments/figure.js';
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

/** What stands while the arm must hold still: large seconds for the eye; a bar is noise to who hears it read out. */
export function countdownShown(
	left: number | undefined,
	seconds: number,
	{screenReader}: Pick<Look, 'screenReader'>,
): {readonly notice: string; readonly countdown?: Countdown} {
	if (left === undefined) return {notice: ''};
	if (left === 0) return {notice: words.faces.settled};
	const caption = words.faces.keepStill({seconds: left});
	if (screenReader) return {notice: caption};
	const note = words.faces.keepHands;
	return {notice: '', countdown: {kind: 'countdown', seconds: left, ofSeconds: seconds, note, caption}};
}
