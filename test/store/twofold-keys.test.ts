import fc from 'fast-check';
import {expect, it} from 'vitest';
import {twofoldKeyIn} from '../../source/store/twofold-keys.js';

it('A text that a program has written has none', () => {
	fc.assert(
		fc.property(fc.jsonValue(), (value) => {
			expect(twofoldKeyIn(JSON.stringify(value))).toBeUndefined();
		}),
	);
});

it.each([
	['{"a":1,"b":{"a":2},"c":[{"a":3},{"a":4}],"d":"a\\":{"}', undefined],
	['{"a":1,"a":1}', 'a'],
	['[{"x":{"a":1,"b":[1,{"c":2}],"a":2}}]', 'a'],
	['{"a":1,"\\u0061":2}', 'a'],
	['{ "a" : {"b":"c"}, "b" : 1 }', undefined],
])('A key that stands twice in one object is found: %s', (text, key) => {
	expect(twofoldKeyIn(text)).toBe(key);
});
