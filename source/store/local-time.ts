const two = (number: number): string => String(number).padStart(2, '0');

/** Day on the wall calendar, `2026-11-25`. */
export const localDate = (time: Date): string =>
	`${time.getFullYear()}-${two(time.getMonth() + 1)}-${two(time.getDate())}`;

/** Time on the wall clock, `14:32`; with the day where it is not today. */
export const localTime = (time: Date, now: Date): string => {
	const clock = `${two(time.getHours())}:${two(time.getMinutes())}`;
	return localDate(time) === localDate(now) ? clock : `${localDate(time)} ${clock}`;
};
