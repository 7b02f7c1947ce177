/**
 * The bench's sentences of a part of the work, once each: in a run of steps of one kind the first, those that say more, and
 * the last; in the stripes, which repeat, the first of each kind.
 */
import { allSteps, type Job } from '../../steps/job.ts';
import type { Phase, Step } from '../../steps/step.ts';
import type { Item } from './block.ts';

/** Acts of the cord that end when it is off the bed; what follows is threading. */
const threading: ReadonlySet<Step['act']['kind']> = new Set(['thread-eyelets', 'tie']);
/** The bench's own sentence for a step, and its caution. */
export interface Sentences {
  readonly step: (step: Step) => string;
  readonly mind: (step: Step) => string | null;
}

export type Part = Phase | 'hang-again' | 'corners' | 'threading';

export type Digest = Readonly<Record<Part, readonly Item[]>>;

export function digestOf(
  job: Job,
  sentences: Sentences,
  leadingTo: (first: string, last: string) => string,
): Digest {
  const parts: Record<Part, Step[]> = {
    'cast-on': [],
    stripes: [],
    'hang-again': [],
    'closing-row': [],
    graft: [],
    seam: [],
    corners: [],
    cord: [],
    threading: [],
  };
  let hangsAgain = false;
  for (const step of allSteps(job)) {
    // A rehang in the middle of the stripes: from the waste yarn in the feeder until it is out again.
    hangsAgain ||= step.phase === 'stripes' && step.act.kind === 'thread-waste';
    parts[hangsAgain ? 'hang-again' : partOf(step)].push(step);
    if (step.act.kind === 'release-waste') hangsAgain = false;
  }
  const told = (part: Part): readonly Item[] =>
    (part === 'stripes' || part === 'hang-again' ? firstOfEach(parts[part]) : runsOf(parts[part])).map(
      (run) => itemOf(run, sentences, leadingTo),
    );
  return {
    'cast-on': told('cast-on'),
    stripes: told('stripes'),
    'hang-again': told('hang-again'),
    'closing-row': told('closing-row'),
    graft: told('graft'),
    seam: told('seam'),
    corners: told('corners'),
    cord: cordItems(parts.cord, sentences, leadingTo),
    threading: told('threading'),
  };
}

function partOf({ phase, act }: Step): Part {
  if (act.kind === 'fold-corner' || act.kind === 'sew-corner') return 'corners';
  return threading.has(act.kind) ? 'threading' : phase;
}

/** Neighbours of one kind belong together. */
function runsOf(steps: readonly Step[]): readonly (readonly Step[])[] {
  const runs: Step[][] = [];
  for (const step of steps) {
    const run = runs.at(-1);
    if (run?.[0]?.act.kind === step.act.kind) run.push(step);
    else runs.push([step]);
  }
  return runs;
}

/** A second cord is knitted as the first was: only what differs is said, with what leads from one to the next left out. */
function cordItems(
  steps: readonly Step[],
  sentences: Sentences,
  leadingTo: (first: string, last: string) => string,
): readonly Item[] {
  const begins = steps.findIndex(({ act }) => act.kind === 'set-cord-needles' && act.draw === 'second');
  const [first, second] = begins < 0 ? [steps, []] : [steps.slice(0, begins), steps.slice(begins)];
  const said = new Set(first.map(sentences.step));
  const differs = second.map(sentences.step).filter((text) => !said.has(text));
  return [
    ...runsOf(first).map((run) => itemOf(run, sentences, leadingTo)),
    ...(differs.length > 0 ? [{ text: differs.reduce(leadingTo), mind: null }] : []),
  ];
}

/** The first step of each kind; a yarn that comes anew, comes back, or leaves for good is a kind of its own. */
function firstOfEach(steps: readonly Step[]): readonly (readonly Step[])[] {
  const kinds = new Map<string, Step>();
  for (const step of steps) {
    const { act } = step;
    const comesBack = act.kind === 'thread' && act.waitsAt !== null;
    const leaves = 'aside' in act ? (act.aside?.how ?? '') : '';
    const key = [act.kind, comesBack, leaves].join();
    if (!kinds.has(key)) kinds.set(key, step);
  }
  return [...kinds.values()].map((step) => [step]);
}

const withoutNumbers = (text: string): string => text.replace(/[LR]?\d+/g, '0');

function itemOf(
  run: readonly Step[],
  sentences: Sentences,
  leadingTo: (first: string, last: string) => string,
): Item {
  const mind = run.map(sentences.mind).find((one) => one !== null) ?? null;
  const texts = run.map(sentences.step);
  const kept: string[] = [];
  for (const text of texts) {
    const isSaid = kept.some((other) => withoutNumbers(other).includes(withoutNumbers(text)));
    if (!isSaid) kept.push(text);
  }
  const last = texts.at(-1);
  const first = kept.join(' ');
  return { text: last === undefined || kept.includes(last) ? first : leadingTo(first, last), mind };
}
