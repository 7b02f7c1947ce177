/**
 * Writes the finished log in demo/, an invented maker's at an invented pace. Run it with
 * `npm run demo` after a change to the steps of the token pouch, which a log made before would no longer fit.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { beginLog, type LogState, recordEvent } from '../../source/journal/log-state.ts';
import type { LogEvent } from '../../source/journal/notation.ts';
import { currentStep, isFinished } from '../../source/session/session.ts';
import type { Step } from '../../source/steps/step.ts';
import { briefOf } from '../fixtures/plan-of.ts';
import { valueIn } from './result.ts';

/** Seconds that a kind of step takes this maker. */
const pace: Readonly<Partial<Record<Step['act']['kind'], number>>> = {
  'set-needles': 40,
  'cast-on': 75,
  'thread-waste': 25,
  thread: 22,
  pass: 7,
  'waste-rows': 40,
  increase: 16,
  decrease: 18,
  'cut-graft-tail': 35,
  'take-off': 45,
  'lay-graft': 120,
  'graft-start': 20,
  'graft-pair': 34,
  'graft-end': 25,
  'release-waste': 180,
  'fold-seam': 60,
  bars: 95,
  'hide-ends': 240,
  'set-cord-needles': 25,
  'cast-on-cord': 30,
  rounds: 40,
  'draw-through': 60,
  'thread-eyelets': 28,
  tie: 50,
};
const otherPace = 20;

/** What happens beside the steps, by the step about to be done. */
const incidents: ReadonlyMap<number, readonly (readonly [afterS: number, event: LogEvent])[]> = new Map([
  [1, [[12, { do: 'note', text: 'practice pouch for the game night, plum and mint' }]]],
  [29, [[9, { do: 'note', text: 'mint runs tighter than plum; loosen the mast a little' }]]],
  [
    35,
    [
      [4, { do: 'back' }],
      [11, { do: 'redo' }],
    ],
  ],
  [52, [[6, { do: 'mark', name: 'closing' }]]],
  [
    67,
    [
      [900, { do: 'quit' }],
      [0, { do: 'resume', at: '2026-11-21T19:04:10.000Z' }],
      [5, { do: 'mark', name: 'graft' }],
    ],
  ],
]);

/** Repeats the same run each time: a linear congruential generator (constants of Numerical Recipes, 1992). */
function* wavering(seed = 7): Generator<number> {
  for (let state = seed; ; ) {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    yield 0.75 + state / 2 ** 32 / 2;
  }
}

const brief = briefOf(readFileSync('demo/token-pouch.json', 'utf8'));
const begun = valueIn(beginLog({ brief, program: '0.1.0', startedAt: '2026-11-20T18:30:00.000Z' }));
let state: LogState = begun.state;
const lines = [begun.line];
const waver = wavering();

function record(event: LogEvent, afterS: number): void {
  if (event.do === 'unknown') return;
  const written = valueIn(recordEvent(state, event, Math.round(afterS * 1000)));
  state = written.state;
  lines.push(written.line);
}

while (!isFinished(state.session)) {
  const step = currentStep(state.session);
  for (const [afterS, event] of incidents.get(step?.step ?? 0) ?? []) record(event, afterS);
  const kind = step?.act.kind;
  record(
    { do: 'confirm', count: 1 },
    (kind ? (pace[kind] ?? otherPace) : otherPace) * (waver.next().value ?? 1),
  );
}
record({ do: 'finished' }, 0);
record({ do: 'quit' }, 3);
writeFileSync('demo/token-pouch.jsonl', lines.join(''));
