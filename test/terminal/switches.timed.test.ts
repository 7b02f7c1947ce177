/** Foot switches, speech, bell and the large view on the built program in a real pseudo-terminal. */
import { readFileSync } from 'node:fs';
import { setTimeout as pause } from 'node:timers/promises';
import { describe, expect, it, vi } from 'vitest';
import { doneBefore, type Landmark } from '../../source/steps/landmarks.ts';
import { jobOf } from '../fixtures/plan-of.ts';
import { isRunning, useStandIn } from '../fixtures/speech-stand-in.ts';
import { valueIn } from '../tools/result.ts';
import { useBench } from './home.ts';
import type { Terminal } from './rig/pseudo-terminal.ts';

const pouch = 'demo/token-pouch.json';
const pouchJob = jobOf(readFileSync(pouch, 'utf8'));
const firstStepOf = (landmark: Landmark): number => {
  const done = valueIn(doneBefore(pouchJob, landmark));
  return done + 1;
};
/** Thread, two rows, increase and decrease. */
const stripe2 = firstStepOf({ at: 'stripe', number: 2 });
const stripe3 = firstStepOf({ at: 'stripe', number: 3 });
/** From here on two steps take a press at once: nothing is guarded. */
const quiet = firstStepOf({ at: 'move', number: 2 });
const kindsOn = '\x1b[>27u';
const kindsOff = '\x1b[<u';

/** Settings as they are by default, with a switch. */
const usualWithB = { pedals: { b: 'confirm' } };
/** Lets presses follow as fast as the screen answers; the kinds told by the terminal then tell them apart. */
const quickWithB = { pedals: { b: 'confirm' }, pedalGapMs: 20, pause: 'short' };

/** Sends after a while. Only where the time between presses is what is tested: nothing on the screen can stand for it. */
async function pressAfter(terminal: Terminal, ms: number, text = 'b'): Promise<void> {
  await pause(ms);
  terminal.send(text);
}

/** A key held down for so long, as a terminal without kinds sends it: a first repeat, then thirty a second. */
async function hold(terminal: Terminal, lastsMs: number): Promise<void> {
  terminal.send('b');
  await pressAfter(terminal, 400);
  for (let at = 433; at <= lastsMs; at += 33) await pressAfter(terminal, 33);
}

/** A wide window, so that a machine busy with other tests, whose repeats come late, is not taken for a maker. */
const patientWithB = { pedals: { b: 'confirm' }, pedalGapMs: 300 };

/** Something that takes its turn behind all keys sent so far, and shows where they have led. */
async function placeOf(terminal: Terminal): Promise<string> {
  terminal.send('/where\r');
  return placeSaid(terminal);
}

async function placeSaid(terminal: Terminal): Promise<string> {
  const here = /You are here: (step \d+) of/;
  let said = '';
  // Its first line may scroll out of the rows that are kept for what was said, a moment later too.
  await terminal.waitFor(() => {
    said = here.exec(terminal.transcript())?.[1] ?? '';
    return said !== '';
  });
  return said;
}

describe('a foot switch that types a letter', () => {
  const bench = useBench();

  it('is assigned by a press, with how to type past it and where to keep its cable', async () => {
    const first = bench({ args: [pouch] });
    await first.waitFor('step 1 of');
    expect(first.raw()).not.toContain(kindsOn);
    first.send('pedal confirm\r');
    await first.waitFor('Press the switch now');
    expect(first.raw()).toContain(kindsOn);
    first.send('b');
    await first.waitFor(() =>
      first.transcript().includes('The switch types b. With nothing typed, it now confirms the step.'),
    );
    await first.waitFor(/put a slash before it:\s+\/b/);
    await first.waitFor(
      /nobody\s+trips\s+over\s+it\s+or\s+its\s+cable\.\s+Keep\s+both\s+clear\s+of\s+the\s+weights/,
    );
    first.send('help\r');
    await first.waitFor((screen) => screen.lastIndexOf('begins with b') > screen.lastIndexOf('quit'));
    first.send('quit\r');
    expect((await first.exited).code).toBe(0);
    expect(first.raw().lastIndexOf(kindsOff)).toBeGreaterThan(first.raw().lastIndexOf(kindsOn));

    const second = bench();
    await second.waitFor('step 1 of');
    expect(second.raw()).toContain(kindsOn);
    second.send('b');
    await second.waitFor('step 2 of');
  });

  it('leads through a whole stripe by itself, and then a command that begins with its letter is typed', async () => {
    const terminal = bench({ args: [pouch] }, quickWithB);
    await terminal.waitFor('step 1 of');
    terminal.send('go stripe 2\r');
    await terminal.waitFor(/step \d+ of/);
    const from = Number(/step (\d+) of/.exec(await terminal.waitFor(/stripe 2 of/))?.[1]);
    // Thread, two rows, increase and decrease: the stripe's five steps.
    for (let step = from; step < from + 5; step++) {
      await terminal.waitFor(`step ${step} of`);
      // The screen may answer within the time for which a contact bounces.
      await pressAfter(terminal, 40, '\x1b[98;1:1u\x1b[98;1:3u');
    }
    await terminal.waitFor(`step ${stripe3} of`);
    await terminal.waitFor('stripe 3 of');
    terminal.send('/back\r');
    await terminal.waitFor(`step ${stripe3 - 1} of`);
  });

  it('leads through a whole stripe by plain letters, each looked at first', async () => {
    const terminal = bench({ args: [pouch] }, usualWithB);
    await terminal.waitFor('step 1 of');
    terminal.send('go stripe 2\r');
    for (let step = stripe2; step < stripe3; step++) {
      await terminal.waitFor(`step ${step} of`);
      // As fast as a maker presses; a pass with a new yarn takes no press sooner than this.
      await pressAfter(terminal, 750);
    }
    await terminal.waitFor(`step ${stripe3} of`);
    await terminal.waitFor('stripe 3 of');
    expect(terminal.transcript()).not.toContain('too soon');
  });

  it('does not tread past the first pass of a yarn by a double press', async () => {
    const terminal = bench({ args: [pouch] }, usualWithB);
    await terminal.waitFor('step 1 of');
    terminal.send('go stripe 2\r');
    await terminal.waitFor(`step ${stripe2} of`);
    terminal.send('b');
    await pressAfter(terminal, 350);
    await terminal.waitFor('Look at this step first, then press again.');
    await terminal.waitFor(`step ${stripe2 + 1} of`);
    await pressAfter(terminal, 700);
    await terminal.waitFor(`step ${stripe2 + 2} of`);
  });
});

describe('one press', () => {
  const bench = useBench();

  const atStep = async (step: number, settings: object): Promise<Terminal> => {
    const terminal = bench({ args: [pouch] }, settings);
    await terminal.waitFor('step 1 of');
    terminal.send(`go step ${step}\r`);
    await terminal.waitFor(`step ${step} of`);
    return terminal;
  };

  it('is what a switch held for less than a second sends', async () => {
    const terminal = await atStep(quiet, patientWithB);
    await hold(terminal, 850);
    await terminal.waitFor(() => terminal.transcript().includes(`Taken back: step ${quiet + 1} of`));
    await terminal.waitFor(`step ${quiet + 1} of`);
    expect(await placeOf(terminal)).toBe(`step ${quiet + 1}`);
  });

  it('is what a press, its repeats and its release are where the terminal tells them', async () => {
    const terminal = await atStep(quiet, usualWithB);
    terminal.send('\x1b[98;1:1u');
    await terminal.waitFor(`step ${quiet + 1} of`);
    terminal.send(`${'\x1b[98;1:2u'.repeat(20)}\x1b[98;1:3u`);
    expect(await placeOf(terminal)).toBe(`step ${quiet + 1}`);
    // What was asked may be a page to be read, which a press would only put away.
    terminal.send('\x1b');
    await terminal.waitFor(/\n> Enter confirms/);
    await pressAfter(terminal, 40, '\x1b[98;1:1u');
    await terminal.waitFor(`step ${quiet + 2} of`);
  });

  it('is what three bounces within 40 ms are', async () => {
    const terminal = await atStep(quiet, patientWithB);
    terminal.send('b');
    for (let bounce = 0; bounce < 3; bounce++) await pressAfter(terminal, 12);
    await terminal.waitFor(`step ${quiet + 1} of`);
    expect(await placeOf(terminal)).toBe(`step ${quiet + 1}`);
  });

  it('is what bounces come to that are read late, and none of them is typed', async () => {
    const terminal = await atStep(quiet, patientWithB);
    terminal.send('b');
    await terminal.waitFor(`step ${quiet + 1} of`);
    // The program gets no processor for longer than the window of the switch.
    terminal.kill('SIGSTOP');
    terminal.send('bb');
    await pressAfter(terminal, 400, 'b/where\r');
    terminal.kill('SIGCONT');
    expect(await placeSaid(terminal)).toBe(`step ${quiet + 1}`);
    expect(terminal.transcript()).not.toContain('b/where');
  });

  it('held for a second takes itself back and one more step', async () => {
    const terminal = await atStep(quiet, patientWithB);
    terminal.send('next\r');
    await terminal.waitFor(`step ${quiet + 1} of`);
    await hold(terminal, 1400);
    await terminal.waitFor(() => terminal.transcript().includes(`Taken back: step ${quiet} of`));
    await terminal.waitFor(`step ${quiet} of`);
    expect(await placeOf(terminal)).toBe(`step ${quiet}`);
  });

  it('held for a second does the same where the terminal tells repeats', async () => {
    const terminal = await atStep(quiet, usualWithB);
    terminal.send('next\r');
    await terminal.waitFor(`step ${quiet + 1} of`);
    terminal.send('\x1b[98;1:1u');
    await terminal.waitFor(`step ${quiet + 2} of`);
    // The hold itself is measured: the repeat that comes after a second goes back.
    await pressAfter(terminal, 1050, '\x1b[98;1:2u');
    await terminal.waitFor(`step ${quiet} of`);
    terminal.send('\x1b[98;1:2u\x1b[98;1:3u');
    expect(await placeOf(terminal)).toBe(`step ${quiet}`);
  });

  it.each([
    ['marked as a paste', `\x1b[200~${'bag '.repeat(50)}\x1b[201~`, /\n> bag/],
    ['not marked', 'bag '.repeat(50), /\n> bag/],
    ['of the switch letter, which is left out', `${'b'.repeat(200)}\x1b[200~d\x1b[201~`, /\n> d/],
  ])('is none of 200 letters pasted at once, %s', async (_, pasted, typed) => {
    const terminal = await atStep(quiet, usualWithB);
    terminal.send(pasted);
    await terminal.waitFor(typed);
    terminal.send('\x1b');
    await terminal.waitFor(/\n> Enter confirms/);
    expect(await placeOf(terminal)).toBe(`step ${quiet}`);
    expect(terminal.transcript()).not.toMatch(/^\+ /m);
  });
});

describe('a switch at the carriage', () => {
  const bench = useBench();

  it('confirms a pass and warns where none is due', async () => {
    const terminal = bench({ args: [pouch] }, { pedals: { p: 'pass' }, pedalGapMs: 20, pause: 'short' });
    await terminal.waitFor('step 1 of');
    terminal.send(`go step ${quiet - 1}\r`);
    await terminal.waitFor(`step ${quiet - 1} of`);
    terminal.send('\x1b[112;1:1u\x1b[112;1:3u');
    await terminal.waitFor(`step ${quiet} of`);
    await pressAfter(terminal, 40, '\x1b[112;1:1u\x1b[112;1:3u');
    await terminal.waitFor('! A pass came where none is due.');
    expect(await placeOf(terminal)).toBe(`step ${quiet}`);
  });
});

describe('speech', () => {
  const bench = useBench();
  const standIn = useStandIn();
  const withPath = (folder: string) => ({ args: [pouch], env: { PATH: `${folder}:${process.env.PATH}` } });
  // Keys take turns: the screen may answer sooner than one key alone may press again.
  const keys = [...'bcdefghi'];
  const pedals = Object.fromEntries(keys.map((key) => [key, 'confirm']));
  const speaking = { ...quickWithB, speech: true, pedals };
  const press = (step: number): string => keys[step % keys.length] ?? '';

  it('says each step, and a slow program keeps no press waiting', async () => {
    const program = standIn('slow');
    const terminal = bench(withPath(program.folder), speaking);
    await terminal.waitFor('step 1 of');
    terminal.send('/go stripe 2\r');
    const from = performance.now();
    for (let step = stripe2; step < stripe2 + 20; step++) {
      await terminal.waitFor(`step ${step} of`);
      terminal.send(press(step));
    }
    await terminal.waitFor(`step ${stripe2 + 20} of`);
    // Each of the twenty would have taken a minute.
    expect(performance.now() - from).toBeLessThan(15_000);
    await vi.waitFor(() =>
      expect(program.asked().at(-1)?.text).toBe('park plum right, thread mint under plum'),
    );
    const pids = program.asked().map(({ pid }) => pid);
    await vi.waitFor(() => expect(pids.filter(isRunning)).toEqual(pids.slice(-1)));
    terminal.send('quit\r');
    expect((await terminal.exited).code).toBe(0);
    await vi.waitFor(() => expect(pids.filter(isRunning)).toEqual([]));
  });

  it('says once that its program fails, and goes on', async () => {
    const program = standIn('failing');
    const terminal = bench(withPath(program.folder), speaking);
    await terminal.waitFor('The speech program espeak-ng failed, so nothing is spoken.');
    for (let step = 1; step < 6; step++) {
      await terminal.waitFor(`step ${step} of`);
      terminal.send(press(step));
    }
    await terminal.waitFor('step 6 of');
    expect(terminal.transcript().match(/espeak-ng failed/g)).toHaveLength(1);
  });

  it('says once that there is no program', async () => {
    const terminal = bench({ args: [pouch], env: { PATH: '/nowhere' } }, quickWithB);
    await terminal.waitFor('step 1 of');
    terminal.send('speech on\r');
    await terminal.waitFor('Instructions cannot be spoken here');
    terminal.send('b');
    await terminal.waitFor('step 2 of');
    expect(terminal.transcript().match(/Instructions cannot be spoken/g)).toHaveLength(1);
  });
});

describe('the bell', () => {
  const bench = useBench();

  it('rings for a step when it is on', async () => {
    const terminal = bench({ args: [pouch] }, quickWithB);
    await terminal.waitFor('step 1 of');
    terminal.send('\r');
    await terminal.waitFor('step 2 of');
    expect(terminal.raw()).not.toContain('\x07');
    terminal.send('/bell on\r');
    await terminal.waitFor('The bell is on');
    // Another key: Enter alone would come within the window of the one that sent the line.
    terminal.send(' ');
    await terminal.waitFor('step 3 of');
    expect(terminal.raw()).toContain('\x07');
  });
});

describe('the large view', () => {
  const bench = useBench();

  it.each([
    [80, 24],
    [60, 20],
  ])('fits %i by %i, and is toggled by F2 and by a command', async (columns, rows) => {
    const terminal = bench({ args: [pouch], columns, rows });
    await terminal.waitFor(/step 1(?: of |\/)/);
    terminal.send(`go step ${quiet}\r`);
    await terminal.waitFor(new RegExp(`step ${quiet}(?: of |/)`));
    terminal.send('\x1bOQ');
    // A shaping move shows the needles at its edge, a pass its arrow in blocks.
    await terminal.waitFor(
      /ONE OUT[\s\S]*\bmake\b[\s\S]*Left edge, increase, one needle out: bring[\s\S]*eyelet\.[\s\S]*\n> /,
    );
    // The waste yarn has no colour of its own, so its arrow is drawn in blocks.
    terminal.send('go step 6\r');
    await terminal.waitFor(/\u2588[\s\S]*Knit waste rows 3 to 8 of 8[\s\S]*\n> /);
    terminal.send('large off\r');
    await terminal.waitFor((screen) => !screen.includes('\u2588'));
    terminal.send('large on\r');
    await terminal.waitFor(/\u2588/);
    expect(terminal.clears()).toBe(0);
  });
});

describe('screen-reader mode', () => {
  const bench = useBench();

  it('gives one line a step, nothing twice, and nothing drawn', async () => {
    const terminal = bench({ args: [pouch], env: { INK_SCREEN_READER: 'true' } });
    await terminal.waitFor(/^Step 1 of \d+, cast-on:/m);
    terminal.send('\r');
    await terminal.waitFor(/^Step 2 of \d+, cast-on:/m);
    terminal.send(`next ${stripe2 - 2}\r`);
    await terminal.waitFor(/^Step \d+ of \d+, stripes: Take plum out of the feeder/m);
    terminal.send('pedal\r');
    await terminal.waitFor('a switch that types Enter confirms as it is');
    const told = terminal.transcript();
    for (const step of [1, 2, stripe2])
      expect(told.match(new RegExp(`^Step ${step} of`, 'gm'))).toHaveLength(1);
    expect(told).not.toContain('Press the switch now');
    expect(terminal.raw()).not.toContain('\x1b');
    terminal.send('quit\r');
    expect((await terminal.exited).code).toBe(0);
  });
});
