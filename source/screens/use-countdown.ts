import {useStdout} from 'ink';
import {useCallback, useEffect, useState} from 'react';

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

/** `settling ███░░ 2 s`, or `settled: read the gauge now`. */
export const countdownText = (left: number, seconds: number, unicode: boolean): string =>
	left === 0
		? 'Settled: read the gauge now.'
		: `Keep still ${(unicode ? '█' : '#').repeat(seconds - left)}${(unicode ? '░' : '.').repeat(left)} ${left} s`;
