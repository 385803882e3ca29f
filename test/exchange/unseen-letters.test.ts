import {expect, it} from 'vitest';
import {dataFolder, exported, fileWith, importing} from '../helpers/data-folders.js';
import {filed} from '../helpers/filed-checks.js';

it('An export escapes what a terminal obeys or does not show, and is the same text again when it is read', async () => {
	const arm = 'a\u009B31m\u007F\u202E\u2028\u{E0041} é';
	const record = filed({at: '2026-01-01T10:00:00Z', arm});
	const from = dataFolder();
	await from.store.add(record.check.id, record);
	const text = exported(from);
	// ECMA-48 has C0 and C1 as controls, Unicode General Category Cf the formats.
	for (const line of text.split('\n')) expect(line).not.toMatch(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/u);
	const to = dataFolder();
	await importing(fileWith(text), to);
	expect(to.store.record(record.check.id)).toMatchObject({check: {answers: {'arm-name': {value: arm}}}});
});
