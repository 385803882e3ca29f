/**
 * CRC-32 as in ISO/IEC 8802-3 and ITU-T V.42 (reflected polynomial EDB88320): every change of up to 32 neighbouring bits
 * is found. A dozen lines of our own, because loading `node:crypto` or `node:zlib` for it would delay the first frame.
 */
const TABLE = Uint32Array.from({length: 256}, (_, index) => {
	let value = index;
	for (let bit = 0; bit < 8; bit++) value = value & 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
	return value;
});

/** Checksum of `bytes`, going on from `previous`. */
export const crc32 = (bytes: Uint8Array, previous = 0): number => {
	let value = ~previous;
	for (let index = 0; index < bytes.length; index++) {
		value = (TABLE[(value ^ (bytes[index] ?? 0)) & 0xff] ?? 0) ^ (value >>> 8);
	}
	return ~value >>> 0;
};
