/** `slantwise work --json`: an object a line for each command, driven from outside as another program would. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { slantwise } from '../tools/slantwise.ts';

const folder = mkdtempSync(join(tmpdir(), 'slantwise-work-json-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const run = (args: readonly string[], input = '') => slantwise(args, { home: folder, input });

interface Answer {
  readonly ok: boolean;
  readonly code: string | null;
  readonly say: readonly string[];
  readonly place: Readonly<Record<string, unknown>> & { readonly step: number | null };
  readonly now: {
    readonly say: string;
    readonly moves: readonly Readonly<Record<string, unknown>>[];
    readonly way: string | null;
    readonly of: number;
    readonly at: number | null;
  };
  readonly offers: readonly (Readonly<Record<string, unknown>> & {
    readonly kind: string;
    readonly step: number | null;
    readonly moves: readonly unknown[] | null;
  })[];
  readonly questions: readonly string[];
}

function work(name: string, ...commands: readonly string[]): readonly Answer[] {
  const args = ['work', 'demo/dice-bag.json', '--json', '--log', join(folder, `${name}.jsonl`)];
  const { stdout, stderr, status } = run(args, commands.map((one) => `${one}\n`).join(''));
  expect([status, stderr]).toEqual([0, '']);
  return stdout
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as Answer);
}

const last = (answers: readonly Answer[]): Answer => answers.at(-1) as Answer;

/** What `steps --json` says of the bed after each step, from the first. */
const planned = run(['steps', 'demo/dice-bag.json', '--json'])
  .stdout.trimEnd()
  .split('\n')
  .map((line) => JSON.parse(line));

describe('work --json', () => {
  it('answers before any command, and then each command once, to the last', () => {
    const answers = work('each', 'next 3', '', 'where', 'nonsense', 'quit');
    expect(answers.map(({ place }) => place.step)).toEqual([1, 4, 5, 5, 5, 5]);
    for (const answer of answers)
      expect(Object.keys(answer)).toEqual(['ok', 'code', 'say', 'place', 'now', 'offers', 'questions']);
    expect(answers.map(({ ok, code }) => [ok, code])).toEqual([
      ...Array.from({ length: 4 }, () => [true, null]),
      [false, 'chat/unknown-command'],
      [true, null],
    ]);
  });

  it('prints nothing but objects, with bell and pictures too', () => {
    const answers = work('alone', 'bell on', 'next 20', 'draw bag', 'pedal confirm', 'next');
    expect(answers).toHaveLength(6);
    expect(answers[3]?.say.length).toBeGreaterThan(3);
  });

  it('has the bed and the moves of each step as the list of steps has them', () => {
    const answers = work('steps', ...Array.from({ length: 40 }, () => 'next'));
    for (const [done, { place, now }] of answers.entries()) {
      expect(now.moves).toEqual(planned[done].moves);
      if (done === 0) continue;
      const { left, right, stitches, carriage, feeder } = planned[done - 1].after;
      expect(place).toMatchObject({ left, right, stitches, carriage, feeder, row: planned[done - 1].row });
    }
  });

  it('goes a way back move by move, the bed true at each, and keeps each in the log', () => {
    const [offered, begun] = work('back', 'next 60', 'rip row 8', 'choose 1').slice(2) as [Answer, Answer];
    const [offer] = offered.offers;
    expect(offer).toMatchObject({ n: 1, kind: 'rip', trace: null });
    expect(begun.now).toMatchObject({ way: 'rip', at: 1 });
    const count = begun.now.of;
    const back = work(
      'back-2',
      'next 60',
      'rip row 8',
      'choose 1',
      ...Array.from({ length: count }, () => 'next'),
    );
    const way = back.slice(3);
    for (const { place } of way) {
      const { left, right, stitches, carriage, feeder } = planned[(place.step ?? 0) - 2].after;
      expect(place).toMatchObject({ left, right, stitches, carriage, feeder });
    }
    const moves = way.slice(0, -1).flatMap(({ now }) => now.moves);
    expect(moves).toEqual(offer?.moves);
    expect(moves.every((move) => 'undo' in move)).toBe(true);
    expect(last(back).now.way).toBeNull();
    expect(last(back).place.step).toBe(offer?.step);
    const log = readFileSync(join(folder, 'back-2.jsonl'), 'utf8');
    expect(log.match(/"do":"rip"/g)).toHaveLength(1);
    expect(log.match(/"do":"on-the-way"/g)).toHaveLength(count);
  });

  it('turns the row counter back last', () => {
    const offered = last(work('counter', 'next 60', 'rip row 8'));
    const first = last(work('counter-2', 'next 60', 'rip row 8', 'choose 1'));
    expect(
      offered.offers[0]?.moves?.filter((move) => (move as { undo: string }).undo === 'counter').length,
    ).toBeGreaterThan(0);
    const turned = first.now.moves.findIndex(({ undo }) => undo === 'counter');
    expect([-1, first.now.moves.length - 1]).toContain(turned);
  });

  it('says a way in the language that is chosen half-way', () => {
    const [before, , , after] = work(
      'language',
      'next 60',
      'rip row 8',
      'choose',
      'next',
      'language de',
    ).slice(-4);
    expect(before?.now.say).toMatch(/^Step /);
    expect(after?.now.say).toMatch(/^Zurück, 2 von /);
    run(['work', '--practice', '--plain', '--log', join(folder, 'english.jsonl')], 'language en\n');
  });

  it('has the bed as it is in the middle of a mend, each step of it kept and resumed', () => {
    // Decrease of move 2 left out, known from the edges: read off the list of steps, one needle further out.
    const moved = planned.find(({ phase, row }) => phase === 'stripes' && row === 6);
    const { left, right, carriage } = moved.after;
    const outer = `R${Number(right.slice(1)) + 1}`;
    const seen = `find ${left} ${outer} carriage ${carriage} counter 6`;
    const lines = [`go step ${moved.step + 1}`, seen, 'find and firm', 'find and move 2'];
    const kept = last(work('mend', ...lines)).offers.find(({ kind }) => kind === 'rip');
    expect(kept).toMatchObject({ trace: null });
    const on = last(work('mend-2', ...lines, `choose ${kept?.n}`, 'next 2'));
    expect(on.now).toMatchObject({ way: 'mend', at: 3 });
    // The weights are off and one row of plum is out: 47 loops hung below it, the carriage is on the other side again.
    expect(on.place).toMatchObject({ left, right: outer, carriage: carriage === 'left' ? 'right' : 'left' });
    const again = last(work('mend-2', 'where'));
    expect(again.now).toEqual(on.now);
    expect(again.place).toEqual(on.place);
    const ended = last(work('mend-2', `next ${kept?.moves?.length}`));
    expect(ended.now.way).toBeNull();
    expect(ended.place.step).toBe(kept?.step);
  });

  it('refuses to go elsewhere in the middle of a way, and says how to leave it', () => {
    const answers = work(
      'busy',
      'next 60',
      'rip row 8',
      'choose',
      'next',
      'go step 3',
      'replan longer',
      'choose 1',
      'stop',
    );
    expect(answers[5]).toMatchObject({ ok: false, code: 'way/on-the-way' });
    expect(answers[5]?.questions).toEqual(answers[5]?.say);
    expect(answers[6]).toMatchObject({ ok: false, code: 'way/on-the-way' });
    expect(answers[7]).toMatchObject({ ok: false, code: 'chat/nothing-offered' });
    expect(last(answers).now.way).toBeNull();
  });

  it('lets old offers die with a command that is refused', () => {
    const answers = work('die', 'next 60', 'replan longer', 'replan rows 7', 'choose 1');
    expect(answers[2]?.offers.length).toBeGreaterThan(0);
    expect(answers[3]).toMatchObject({ ok: false, offers: [] });
    expect(answers[4]).toMatchObject({ ok: false, code: 'chat/nothing-offered' });
  });

  it('says on standard error why there is nothing to work on', () => {
    const { stdout, stderr, status } = run(['work', 'no-such.json', '--json']);
    expect([status, stdout]).toEqual([1, '']);
    expect(stderr).toMatch(/^slantwise: .+\n$/);
  });
});
