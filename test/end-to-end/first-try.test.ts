import {setTimeout} from 'node:timers/promises';
import {expect, onTestFinished, test} from 'vitest';
import {lessonArms} from '../../source/practice/arms.js';
import {PROGRAM, type RunningProgram, startProgram} from '../helpers/pty.js';
import {broken, isGoneBack, numbersIn, says, words} from '../helpers/said.js';
import {answer, asks, limitAsked, option, turn} from '../helpers/walk.js';

// Wanted of a first try: a limit of this program's own.
const keysAllowed = 60;
const quickBeats = new URL('../helpers/quick-beats.mjs', import.meta.url).href;
/** Until the arm has settled: the bench counts its beats, and on a busy machine each takes many times as long. */
const settlingMs = 120_000;
/** Forty nudges at most, each looked at until the arm has settled. */
const limitMs = 900_000;

const {motion, truth} = words.practice;
const {arms, filed} = words.beside.practice;
const [first, next] = lessonArms;
const shows = new RegExp(
	broken(words.faces.gaugedArm.shows({readingPct: 77, stepPct: 1})).source.replace('\\+77', '([+-]?[\\d.]+)'),
);

/** A hand that does what the recipe of the read-me says, and counts its keys. */
class Beginner {
	keys = 0;

	constructor(readonly program: RunningProgram) {}

	/** Each press is one key, waited for. */
	press(...keys: readonly string[]): void {
		for (const key of keys) this.program.type(key);
		this.keys += keys.length;
	}

	/** Takes the line that is marked: an Enter straight after another one would be taken for a slip. */
	async takeMarked(): Promise<void> {
		await setTimeout(600);
		this.press('\r');
	}

	/** What the gauge shows, and for how many seconds it has stood there; none while the arm moves. */
	look(screen: string) {
		const told = screen.split('\n').find((line) => shows.test(line)) ?? '';
		const stills = [motion.holds({ms: 7000}), motion.wentBack({ms: 7000}), motion.rests({ms: 7000})];
		// An arm that nobody need wait for any longer, or that has come back from two nudges, says so without its seconds.
		const settled = [
			...[motion.holds({ms: null}), motion.wentBack({ms: null}), motion.rests({ms: null})],
			...(['in', 'out'] as const).map((way) => motion.nudgeFiner({way})),
		];
		const [seconds] = [
			...stills.flatMap((one) => numbersIn(told, one, 7)),
			...(settled.some((one) => told.includes(one)) ? [Number.POSITIVE_INFINITY] : []),
		];
		return {reading: shows.exec(told)?.[1] ?? '', seconds, isGoneBack: isGoneBack(told)};
	}

	async still(seconds: number) {
		return this.look(await this.program.waitFor((screen) => (this.look(screen).seconds ?? -1) >= seconds, settlingMs));
	}

	/** Nudges until it lets go. @returns the last reading that held */
	async untilItLetsGo(key: string, seconds: number, held: string): Promise<string> {
		const before = this.look(this.program.screen());
		this.press(key);
		await this.program.waitFor((screen) => {
			const {reading, seconds: since = 0} = this.look(screen);
			return since < Math.max(1, before.seconds ?? 0) || reading !== before.reading;
		}, settlingMs);
		const {reading, isGoneBack: isOver} = await this.still(seconds);
		return isOver ? held : this.untilItLetsGo(key, seconds, reading);
	}

	async limit(arrow: string, fine: string): Promise<void> {
		const {reading} = await this.still(1);
		const roughly = await this.untilItLetsGo(arrow, 1, reading);
		const typed = Number(await this.untilItLetsGo(fine, 5, roughly));
		this.press(...`${typed > 0 ? '+' : ''}${typed}`, '\r');
	}

	async round(place: 'inner' | 'outer'): Promise<void> {
		await this.program.waitFor(asks(answer(`probe-${place}`, '', limitAsked('inner'))));
		await this.limit('\u001B[D', ',');
		await this.program.waitFor(limitAsked('outer'));
		await this.limit('\u001B[C', '.');
		await this.program.waitFor(option(1, says.label({id: 'enough', values: {}})));
		await this.takeMarked();
	}
}

const nameOf = (arm: (typeof lessonArms)[number] | undefined): string =>
	words.practice.arms[arm?.id ?? 'worn-race'].name;

test(
	'the recipe of the read-me leads to the hidden truth in less than sixty keys, and one key more to the next arm',
	async () => {
		const program = startProgram({command: [process.execPath, '--import', quickBeats, PROGRAM, 'practice']});
		onTestFinished(() => program.stop());
		const hand = new Beginner(program);
		await program.waitFor(asks(turn('', arms.title, `❯ ${option(1, arms.firstTry({name: nameOf(first)}))}`)));
		await hand.takeMarked();
		await hand.round('inner');
		await hand.round('outer');
		await program.waitFor(asks(answer('probe-end', 'y')));
		hand.press('y');
		await program.waitFor(asks(answer('verdict', '!', words.practice.bench.reveal)));
		hand.press('!');
		const screen = await program.waitFor(truth.hidden({arm: first?.id ?? 'worn-race'}));
		expect(hand.keys).toBeLessThan(keysAllowed);
		// What one round can hold, then found and hidden side by side.
		const oneRound = truth.oneRound({held: 77, of: 4});
		const [held] = numbersIn(screen, oneRound, 77);
		expect(held).toBeGreaterThanOrEqual(0);
		const yesOrNo = [true, false].map((isWithin) => truth.isWithin({isWithin}));
		const rows = screen.split('\n').filter((line) => yesOrNo.some((one) => line.endsWith(`  ${one}`)));
		expect(rows).toHaveLength(4);
		expect(rows.filter((line) => line.endsWith(`  ${yesOrNo[0]}`))).toHaveLength(held ?? -1);
		await program.waitFor(asks(turn('', `❯ ${option(1, filed.again)}`)));
		await hand.takeMarked();
		await program.waitFor(asks(turn('', arms.title, `❯ ${option(1, arms.firstTry({name: nameOf(next)}))}`)));
		await hand.takeMarked();
		await program.waitFor(limitAsked('inner'));
	},
	limitMs,
);
