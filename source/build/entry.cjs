#!/usr/bin/env node
// Becomes dist/armdrift.cjs. Every Node can read it (ES5; the build refuses what is newer), so an old one says what is
// wanted, where it would stop at the first expression it does not know.
var version = process.versions.node.split('.').map(Number);
if (version[0] < MAJOR || (version[0] === MAJOR && version[1] < MINOR)) {
	console.error(TOO_OLD.replace('FOUND', process.versions.node));
	process.exitCode = 2;
} else require('./start.cjs');
