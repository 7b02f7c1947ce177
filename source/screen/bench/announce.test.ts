/** What the ears are told: bells that can be told apart, and an instruction short enough to be heard out. */
import { readdirSync, readFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { openMemoryBench } from '../../../test/fixtures/bench-in-memory.ts';
import { jobOf } from '../../../test/fixtures/plan-of.ts';
import { imperial } from '../../shared/units.ts';
import { acts } from '../../steps/acts.ts';
import { stepAt } from '../../steps/job.ts';
import type { Step } from '../../steps/step.ts';
import { shoutStep, speakStep } from '../../wording/steps.ts';
import { englishWords, inEnglish, wordsIn } from '../../wording/words.ts';
import { bigSquares } from './rows/band-letters.ts';
import { createAnnouncer } from './speech.ts';

const pouch = readFileSync('demo/token-pouch.json', 'utf8');
const briefs: readonly (readonly [name: string, brief: unknown])[] = [
  ...readdirSync('demo')
    .filter((name) => name.endsWith('.json'))
    .map((name) => [name, readFileSync(`demo/${name}`, 'utf8')] as const),
  ['a pouch whose bottom is boxed', { ...JSON.parse(pouch), bag: { ...JSON.parse(pouch).bag, boxedCm: 3 } }],
  // Invented: with the carriage at home on the leading side the graft's tail cannot go on to sew the seam.
  ['a pouch that is fastened after the graft', { ...JSON.parse(pouch), crawl: 'left', homeSide: 'left' }],
];
const allSteps = briefs.map(([name, brief]): readonly [name: string, steps: readonly Step[]] => {
  const job = jobOf(brief);
  return [name, Array.from({ length: job.stepCount }, (_, done) => stepAt(job, done + 1))];
});

/** A bench whose bell and speech are written down. */
function listen(settings: object, place?: Parameters<ReturnType<typeof openMemoryBench>['goTo']>[0]) {
  const heard: string[] = [];
  const speech = { say: (text: string) => void heard.push(text), stop: () => undefined };
  let rings = 0;
  const announce = createAnnouncer({
    speech,
    write: (text) => {
      rings += text === '\x07' ? 1 : 0;
    },
  });
  const bench = openMemoryBench({ settings: { pause: 'short', ...settings }, announce });
  if (place) bench.goTo(place);
  vi.runAllTimers();
  rings = 0;
  heard.length = 0;
  return {
    bench,
    heard,
    rings: () => {
      vi.runAllTimers();
      const count = rings;
      rings = 0;
      return count;
    },
  };
}

describe('the bell and the voice', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  it('ring once for a step, twice for a shaping move, three times for a new yarn, four where nothing was done', () => {
    const { bench, rings } = listen({ bell: true, pedals: { p: 'pass' } }, { at: 'row', number: 2 });
    const heard = Array.from({ length: 4 }, (_, press) => {
      bench.key('enter', press * 1000);
      return [stepAt(bench.store.get().session.job, bench.done() + 1).act.kind, rings()];
    });
    expect(heard).toEqual([
      ['increase', 2],
      ['decrease', 2],
      ['thread', 3],
      ['pass', 1],
    ]);
    bench.key('left', 9000);
    rings();
    bench.key('p', 10_000);
    expect(rings()).toBe(4);
  });

  it('a new step stops the rings of the one before', () => {
    const { bench, rings } = listen({ bell: true }, { at: 'row', number: 2 });
    bench.key('enter', 0);
    bench.key('enter', 200);
    // One of the first step's two, both of the second's.
    expect(rings()).toBe(3);
  });

  it('keep silent unless they are asked for', () => {
    const { bench, heard, rings } = listen({});
    bench.key('enter', 0);
    expect([heard, rings()]).toEqual([[], 0]);
  });

  it('speak each step, a refusal, and a step once more', () => {
    const { bench, heard } = listen(
      { speech: true, pedals: { p: 'pass', f13: 'again' } },
      { at: 'row', number: 2 },
    );
    bench.key('enter', 0);
    bench.key('p', 1000);
    bench.key('f13', 2000);
    const increase = 'left edge, one out, to L3, L1 stays empty';
    expect(heard).toEqual([increase, `no pass is due: ${increase}`, increase]);
  });

  it('are asked to speak once the answer is given, so that their own trouble comes after it', () => {
    const lastLines: (string | undefined)[] = [];
    const bench = openMemoryBench({ announce: () => lastLines.push(bench.said(1)) });
    bench.type('speech on', 0);
    expect(lastLines).toEqual(['Instructions are spoken.']);
  });

  it('speak the step on the screen as soon as speech is on', () => {
    const { bench, heard } = listen({});
    bench.type('speech on', 0);
    expect(heard).toEqual(['10 needles, L2 to R8. Carriage left']);
  });

  it('say that the bag is finished', () => {
    const { bench, heard } = listen({ speech: true });
    bench.perform({ do: 'confirm', count: bench.store.get().session.job.stepCount });
    expect(heard).toEqual(['the bag is finished']);
  });
});

/** The outermost needles or loops that a maker must find at this step. */
function needlesOf({ act }: Step): readonly string[] {
  switch (act.kind) {
    case 'set-needles':
    case 'set-cord-needles':
    case 'set-needles-again':
    case 'rehang':
      return [act.first, act.last];
    case 'cast-on':
      return [act.from, act.to];
    case 'hang-weights':
    case 'comb-off':
    case 'move-weights':
      return [act.left, act.right];
    case 'increase':
      return [act.outer, act.uncovered];
    case 'decrease':
      return [act.emptied];
    case 'graft-pair':
      return [String(act.down), String(act.up)];
    default:
      return [];
  }
}

describe.each(allSteps)('every step of %s', (_, steps) => {
  it('is spoken in at most 60 characters, with its needles named', () => {
    for (const step of steps) {
      const spoken = speakStep(step, englishWords);
      expect(spoken.length, spoken).toBeLessThanOrEqual(60);
      expect(speakStep(step, wordsIn(inEnglish, imperial))).not.toContain('centimetres');
      for (const needle of needlesOf(step)) expect(spoken).toMatch(new RegExp(`\\b${needle}\\b`));
    }
  });

  it('is shouted in at most 12 characters that have big letters', () => {
    for (const step of steps) {
      const shouted = shoutStep(step, englishWords);
      expect(shouted.length, shouted).toBeLessThanOrEqual(12);
      expect(bigSquares(shouted), shouted).not.toBeNull();
    }
  });
});

it('these bags have every kind of step between them', () => {
  const kinds = new Set(allSteps.flatMap(([, steps]) => steps.map(({ act }) => act.kind)));
  expect([...kinds].toSorted()).toEqual(Object.keys(acts).toSorted());
});
