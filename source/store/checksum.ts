/**
 * CRC-32 as in ISO/IEC 8802-3 and ITU-T V.42 (reflected polynomial EDB88320): every change of up to 32 neighbouring bits
 * is found. A dozen lines of our own, because loading `node:zlib` for it would delay the first frame.
 */
const TABLE = Uint32Array.from({length: 256}, (_, index) => {
	let value = index;
	for (let bit = 0; bit < 8; bit++) value = value & 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
	return value;
});

/** From here on loading the system's own routine costs less than going without it. */
const NATIVE_FROM_BYTES = 8192;

/** Checksum of `bytes`, going on from `previous`. */
export const crc32 = (bytes: Uint8Array, previous = 0): number => {
	if (bytes.length >= NATIVE_FROM_BYTES) return process.getBuiltinModule('node:zlib').crc32(bytes, previous);
	let value = ~previous;
	for (const byte of bytes) value = (TABLE[(value ^ byte) & 0xff] ?? 0) ^ (value >>> 8);
	return ~value >>> 0;
};
