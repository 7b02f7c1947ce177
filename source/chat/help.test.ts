/** Help shows only what works: every line it gives to type is typed here. */
import { readFileSync } from 'node:fs';
import { afterEach, describe, expect, it } from 'vitest';
import { type MemoryBench, openMemoryBench } from '../../test/fixtures/bench-in-memory.ts';
import { jobOf } from '../../test/fixtures/plan-of.ts';
import { german, speak, spoken } from '../../test/fixtures/spoken.ts';
import { startSession } from '../session/session.ts';
import { allSteps, stepAt } from '../steps/job.ts';
import { wrap } from '../wording/page.ts';
import { englishWords } from '../wording/words.ts';
import { usageOf } from './commands/chat-command.ts';
import { chatCommands } from './commands/chat-commands.ts';
import { examplesNow, formatHelp, helpTopics, type Scene, type Situation, situationOf } from './help.ts';

afterEach(() => speak(null));

const diceBag = readFileSync('demo/dice-bag.json', 'utf8');
/** Invented: on so short a bed the dice bag is hung again; and it has a hem. */
const shortBed = {
  ...JSON.parse(diceBag),
  bed: { needles: 60, pitchMm: 6.5, marginNeedles: 2 },
  hem: { rows: 4 },
};

const openAt = (done: number, brief: unknown = diceBag): MemoryBench => {
  const bench = openMemoryBench({ brief, settings: { pause: 'short' } });
  if (done > 0) bench.perform({ do: 'go', done });
  return bench;
};

/** Lines said of a line that is typed, without the line itself. */
function answersTo(bench: MemoryBench, line: string) {
  const before = bench.store.get().lines.length;
  bench.submit(line);
  return bench.store.get().lines.slice(before + 1);
}

function expectToWork(bench: MemoryBench, line: string): void {
  const faults = answersTo(bench, line).filter(({ tone }) => tone === 'fault');
  expect(faults.map(({ text }) => `${line}: ${text}`)).toEqual([]);
}

const jobs = [jobOf(diceBag), jobOf(shortBed)] as const;

/** The first step at which the bench is in this situation. */
function sceneIn(situation: Situation): { readonly scene: Scene; readonly brief: unknown } {
  for (const [job, brief] of [[jobs[0], diceBag] as const, [jobs[1], shortBed] as const]) {
    for (let done = 1; done <= job.stepCount; done++) {
      const scene = { session: { ...startSession(job), done }, way: null, trouble: null, offers: 0 };
      if (situationOf(scene) === situation) return { scene, brief };
    }
  }
  throw new Error(`no step is ${situation}`);
}

const atSteps = Object.keys(examplesNow).filter(
  (one): one is Situation => !['trouble', 'way', 'offer'].includes(one),
);

describe('help on what is on the screen', () => {
  it.each(atSteps)('%s: gives lines that work there', (situation) => {
    const { scene, brief } = sceneIn(situation);
    for (const line of examplesNow[situation](scene, spoken())) {
      const bench = openAt(scene.session.done, brief);
      expect(answersTo(bench, 'help')[0]?.text).toBe(spoken().help.now[situation]);
      expectToWork(bench, line);
    }
  });

  it('gives lines that work on a way back', () => {
    for (const line of examplesNow.way(sceneIn('stripes').scene, spoken())) {
      const bench = openAt(60);
      for (const before of ['rip row 10', 'choose', 'next']) bench.submit(before);
      expect(answersTo(bench, 'help')[0]?.text).toBe(spoken().help.now.way);
      expectToWork(bench, line);
    }
  });

  it('gives lines that work where something is on offer', () => {
    const bench = openAt(60);
    bench.submit('replan longer');
    const [says, first] = answersTo(bench, 'help');
    expect(says?.text).toBe(spoken().help.now.offer);
    expect(first?.text).toMatch(/^ {2}choose/);
    expectToWork(bench, first?.text.trim().split('   ')[0] ?? '');
  });

  it('speaks of saving first where that makes trouble', () => {
    const { scene } = sceneIn('graft');
    const lines = formatHelp(null, { ...scene, trouble: 'the disk is full' }, spoken());
    expect(lines[0]).toBe(spoken().help.now.trouble);
    expect(lines.join('\n')).toContain('save ../bag.jsonl');
    for (const line of examplesNow.trouble(scene, spoken())) expectToWork(openAt(60), line);
  });

  it('names three to five commands', () => {
    for (const examples of Object.values(examplesNow)) {
      const { length } = examples(sceneIn('stripes').scene, spoken());
      expect(length).toBeGreaterThanOrEqual(3);
      expect(length).toBeLessThanOrEqual(5);
    }
  });
});

describe('help by topic', () => {
  it('has each topic that there are words for', () => {
    expect(helpTopics.map(({ id }) => id)).toEqual(Object.keys(englishWords.help.topics));
  });

  it.each(helpTopics.map((topic) => [topic.id, topic] as const))(
    '%s: its lines work one after the other',
    (id, topic) => {
      const bench = openAt(60);
      const { session } = bench.store.get();
      for (const line of topic.examples(session, spoken())) expectToWork(bench, line);
      const shown = answersTo(openAt(60), `help ${id}`).map(({ text }) => text);
      expect(shown.slice(0, topic.lines(spoken()).length)).toEqual(topic.lines(spoken()));
    },
  );

  it('is found by other names, and leaves commands and words their own', () => {
    const bench = openAt(60);
    const first = (line: string): string => answersTo(bench, line)[0]?.text ?? '';
    expect(first('help lost count')).toBe(helpTopics.find(({ id }) => id === 'find')?.lines(spoken())[0]);
    expect(answersTo(bench, 'help rip').map(({ text }) => text)).toContainEqual(
      expect.stringMatching(/^rip row/),
    );
    expect(first('help eyelets')).toMatch(/^Eyelet: /);
    expect(first('help xyzzy')).toBe('There is no help on xyzzy.');
  });
});

const measureRoundsStep = [...allSteps(jobs[0])].find(({ act }) => act.kind === 'measure-rounds')?.step;

/** What must have been typed before the example of a command means something. */
const before: Readonly<Record<string, readonly string[]>> = {
  redo: ['back'],
  choose: ['replan longer'],
  stop: ['rip row 3', 'choose'],
  cord: [`go step ${measureRoundsStep}`],
};

describe('help on commands', () => {
  it.each(chatCommands.map((command) => [command.name, command] as const))(
    '%s: its example works',
    (name, command) => {
      const place = stepPastRow(31);
      const bench = openAt(place);
      bench.perform({ do: 'confirm', count: 1 });
      for (const line of before[name] ?? []) bench.submit(line);
      const shown = answersTo(openAt(place), `help ${name}`).map(({ text }) => text);
      expect(shown.join('\n')).toContain(usageOf(command, spoken()));
      expectToWork(bench, command.example);
    },
  );

  it.each([
    ['English', null],
    ['German', german],
  ])('all fit two columns in %s', (_, language) => {
    speak(language);
    const { commands } = spoken();
    for (const { gist } of Object.values(commands)) expect(gist.length, gist).toBeLessThanOrEqual(28);
    const all = formatHelp('all', sceneIn('stripes').scene, spoken()).join('\n');
    for (const { name } of chatCommands) expect(all).toContain(`${name.padEnd(9)}${commands[name].gist}`);
  });
});

it.each([
  ['English', null],
  ['German', german],
])('every help fits a window of 80 by 24 in %s, the line typed and the prompt too', (_, language) => {
  speak(language);
  const scenes = atSteps.map((situation) => sceneIn(situation).scene);
  const [scene] = scenes;
  if (!scene) throw new Error('no scene');
  const helps = [
    ...scenes.map((one) => formatHelp(null, one, spoken())),
    // The list of all commands is a page that stops at the window's end.
    ...[...helpTopics.map(({ id }) => id), ...chatCommands.map(({ name }) => name)].map((topic) =>
      formatHelp(topic, scene, spoken()),
    ),
  ];
  // A transcript line starts two columns in.
  for (const lines of helps) expect(lines.flatMap((line) => wrap(line, 78)).length).toBeLessThanOrEqual(22);
});

function stepPastRow(row: number): number {
  const [job] = jobs;
  for (let number = 1; number <= job.stepCount; number++) if (stepAt(job, number).row === row) return number;
  throw new Error(`no row ${row}`);
}
