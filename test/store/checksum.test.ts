import {crc32 as systemCrc32} from 'node:zlib';
import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {crc32} from '../../source/store/document.js';

describe('the checksum', () => {
	// The check value of CRC-32/ISO-HDLC in the published catalogue of parametrised CRC algorithms: the digits 1 to 9.
	it('gives the published check value', () => {
		expect(crc32(Buffer.from('123456789'))).toBe(0xcbf43926);
	});

	it('agrees with the one in the system’s zlib, in one piece and in two', () => {
		fc.assert(
			fc.property(fc.uint8Array({maxLength: 20_000, size: 'max'}), fc.uint8Array({maxLength: 500}), (one, other) => {
				expect(crc32(one)).toBe(systemCrc32(one));
				expect(crc32(other, crc32(one))).toBe(systemCrc32(Buffer.concat([one, other])));
			}),
		);
	});
});
