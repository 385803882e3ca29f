// Where two outputs part: one line for each path.

type Close = (one: number, other: number) => boolean;

const isRecord = (value: unknown): value is Record<string, unknown> =>
	typeof value === 'object' && value !== null && !Array.isArray(value);

export const differences = (one: unknown, other: unknown, close: Close, path = ''): string[] => {
	if (typeof one === 'number' && typeof other === 'number') {
		return close(one, other) ? [] : [`${path}: ${one} | ${other}`];
	}
	if (Array.isArray(one) && Array.isArray(other) && one.length === other.length) {
		return one.flatMap((item: unknown, index) => differences(item, other[index], close, `${path}[${index}]`));
	}
	if (isRecord(one) && isRecord(other)) {
		const keys = [...new Set([...Object.keys(one), ...Object.keys(other)])];
		return keys.flatMap((key) => differences(one[key], other[key], close, path === '' ? key : `${path}.${key}`));
	}
	return one === other ? [] : [`${path}: ${JSON.stringify(one)} | ${JSON.stringify(other)}`];
};

/** Half a unit of the sixth digit, as the page prints. */
export const toSixDigits: Close = (number, printed) =>
	printed === 0
		? Math.abs(number) < 5e-7
		: Math.abs(number - printed) <= 0.5000001 * 10 ** (Math.floor(Math.log10(Math.abs(printed))) - 5);

/** 1e-6, relative above 1 and absolute below. */
export const toAMillionth: Close = (one, other) => Math.abs(one - other) <= 1e-6 * Math.max(1, Math.abs(one));
