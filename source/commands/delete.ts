import path from 'node:path';
import {formatISO} from 'date-fns/formatISO';
import {type ArmOnFile, armOnFile, isOpenOn} from '../desk/arm-on-file.js';
import {didYouMean} from '../desk/did-you-mean.js';
import {Hindrance, hindranceOf} from '../desk/hindrance.js';
import {Shelf} from '../desk/shelf.js';
import {backupPlace, writeBackUp} from '../exchange/back-up.js';
import {dataDirectory} from '../store/data-directory.js';
import {EXIT, ExitPaths} from '../terminal/exit-paths.js';
import {saidBack} from '../visible-text.js';
import {words} from '../words/index.js';
import {storeText} from '../words/store-text.js';
import {canAsk, mustNotReplace, orRefuse, printLines, refuseWith, sayFault} from './print.js';
import {removeReports} from './report-file.js';
import {startedAs} from './seat.js';
import {shellWord} from './shell-words.js';
import {typedLines} from './typed-lines.js';

const say = words.commands.delete;

type Options = {
	readonly arm?: string | undefined;
	/** The arm's name once more, as on a command line that nobody watches. */
	readonly name?: string | undefined;
	readonly backup?: string | undefined;
	readonly data?: string | undefined;
	readonly version: string;
};

/**
 * `armdrift delete`: an arm with its checks, what is noted beside them and its profile, after its name was typed and a
 * back-up of all of it is on the disk.
 * @returns exit status
 */
export async function runDelete(options: Options): Promise<number> {
	const {arm, data, backup} = options;
	if (arm === undefined) return refuseWith(say.nameArm);
	return orRefuse(() => {
		const shelf = new Shelf(dataDirectory({flag: data, env: process.env}), () => new Date());
		return underLock(shelf, arm.trim(), options);
	}, mustNotReplace(backup));
}

/** From the look at the data folder to the last file that goes nobody else writes. */
async function underLock(shelf: Shelf, arm: string, options: Options): Promise<number> {
	const deletion = new Deletion(shelf, options.version);
	const paths = new ExitPaths({partingText: () => `${deletion.stoppedText}\n`});
	paths.install();
	const lock = shelf.store.lock();
	if (!lock.held) throw lock.error;
	paths.onLeave(deletion.discard);
	paths.onLeave(lock.release);
	try {
		sayFault(...lock.notices.map(storeText));
		const found = armOnFile(shelf, arm);
		sayFault(...shelf.notices);
		if (!found) return refuseWith(unknownArm(shelf, arm));
		if (isOpenOn(shelf.store.draft().check, found)) return refuseWith(say.isOpen(found));
		if (options.name === undefined && !canAsk()) return refuseWith(say.nobodyToAsk);
		const file = path.resolve(options.backup ?? backupPlace(shelf.dataDir, found.name, new Date()));
		const shown = await printLines(goingLines(found, file));
		if (shown !== EXIT.done) return shown;
		const given = options.name ?? (await typedName());
		if (given === undefined) {
			sayFault('', say.inputEnded);
			return EXIT.leftOpen;
		}
		if (!isSameText(given, found.name))
			return refuseWith(say.otherName({given: saidBack(given.trim()), name: found.name}));
		await deletion.run(found, file);
		const command = wayBack(file, options.data);
		return await printLines([say.gone(partsOf(found)), say.wayBack({file, command})]);
	} catch (error) {
		const {code, file, sentence} = hindranceOf(error);
		throw new Hindrance(code, file, `${sentence} ${deletion.stoppedText}`, error);
	} finally {
		lock.release();
	}
}

const partsOf = ({name, checkIds, profile}: ArmOnFile) => ({
	name,
	checks: checkIds.length,
	hasProfile: profile !== undefined,
});

/** What is about to go, and where it is kept. */
function goingLines(arm: ArmOnFile, file: string): string[] {
	const {formerNames: names, days, remarks} = arm;
	return [
		say.going({...partsOf(arm), days, remarks}),
		...(names.length > 0 ? [say.formerNames({names})] : []),
		say.forGood({file}),
	];
}

/** The next line from the terminal; undefined where the input ends. */
async function typedName(): Promise<string | undefined> {
	for await (const line of typedLines(say.typeName)) return line;
	return;
}

// One letter with an accent can be typed as one character or as two.
const isSameText = (one: string, other: string): boolean => one.trim().normalize() === other.normalize();

function unknownArm(shelf: Shelf, arm: string): string {
	const known = new Set([
		...shelf.all().map((row) => row.arm),
		...shelf.profiles().flatMap(({kind, name}) => (kind === 'arm' ? [name] : [])),
	]);
	return say.unknownArm({arm: saidBack(arm), meant: didYouMean(arm, [...known])});
}

const wayBack = (file: string, data: string | undefined): string =>
	startedAs(process.env, data, `import ${shellWord(file)}`);

/**
 * Takes an arm off the disk: first the back-up, whole and read back, then the checks with what is noted beside them, and
 * last the profile, which knows the names under which the rest is found when this is stopped in the middle.
 */
export class Deletion {
	readonly #shelf: Shelf;
	readonly #version: string;
	#discard = (): void => {};
	#stopped = say.nothingDeleted;

	constructor(shelf: Shelf, version: string) {
		this.#shelf = shelf;
		this.#version = version;
	}

	/** What to say when it is stopped now. */
	get stoppedText(): string {
		return this.#stopped;
	}

	/** For every way out: no half of a back-up is left. */
	readonly discard = (): void => this.#discard();

	/** To be called under the lock. @throws StoreError */
	async run(arm: ArmOnFile, file: string): Promise<void> {
		const {profile, checkIds} = arm;
		await this.#shelf.store.prepare();
		await this.#backUp(arm, file);
		this.#stopped = say.stopped({file});
		if (checkIds.length > 0) await this.#shelf.store.remove(checkIds);
		removeReports(this.#shelf.dataDir, checkIds);
		if (profile) await this.#removeProfile(profile.id);
	}

	#backUp({profile, checkIds}: ArmOnFile, file: string): Promise<void> {
		const {store, dataDir} = this.#shelf;
		const only = {checkIds, profileIds: profile ? [profile.id] : []};
		return writeBackUp({
			file,
			dataDir,
			source: {store, program: this.#version, at: formatISO(new Date()), only},
			onLeave: (discard) => {
				this.#discard = discard;
			},
		});
	}

	async #removeProfile(id: string): Promise<void> {
		const {store} = this.#shelf;
		const {value} = store.profiles();
		if (value) await store.saveProfiles({...value, profiles: value.profiles.filter((one) => one.id !== id)});
	}
}
