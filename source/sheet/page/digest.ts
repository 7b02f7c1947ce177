/**
 * What the steps of a part of the work say, once each: in a run of steps of one kind the first, those that say more, and
 * the last; in the stripes, which repeat, the first of each kind. At the bed in short, as paper has it; away from it in the
 * bench's own sentences.
 */
import { opposite } from '../../bed/bed.ts';
import { allSteps, type Job } from '../../steps/job.ts';
import type { Phase, Step } from '../../steps/step.ts';
import { sayAct, sayActOrNull } from '../../wording/by-kind.ts';
import type { Words } from '../../wording/words.ts';
import type { Item } from './block.ts';

/** Acts of the cord that end when it is off the bed; what follows is threading. */
const threading: ReadonlySet<Step['act']['kind']> = new Set(['thread-eyelets', 'tie']);
/** What paper says of a step. */
export const sayOnPaper = ({ act }: Step, { inShort, steps }: Words): string =>
  sayActOrNull(inShort, act) ?? sayAct(steps, act);

type CautionOf = (step: Step) => string | null;

type SheetPart = Phase | 'hang-again' | 'corners' | 'threading';

export type Digest = Readonly<Record<SheetPart, readonly Item[]>>;

export function digestOf(job: Job, cautionOf: CautionOf, words: Words): Digest {
  const parts: Record<SheetPart, Step[]> = {
    'cast-on': [],
    stripes: [],
    'hang-again': [],
    'closing-row': [],
    hem: [],
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
  const told = (part: SheetPart): readonly Item[] =>
    part === 'stripes' || part === 'hang-again'
      ? kindsOf(parts[part]).map((steps) => firstOf(steps, cautionOf, words))
      : itemsOf(parts[part], cautionOf, words);
  return {
    'cast-on': told('cast-on'),
    stripes: told('stripes'),
    'hang-again': told('hang-again'),
    'closing-row': told('closing-row'),
    hem: hemItems(parts.hem, cautionOf, words),
    graft: told('graft'),
    seam: told('seam'),
    corners: told('corners'),
    cord: partsItems(parts.cord, 'set-cord-needles', cautionOf, words),
    threading: told('threading'),
  };
}

function partOf({ phase, act }: Step): SheetPart {
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

function itemsOf(steps: readonly Step[], cautionOf: CautionOf, words: Words): readonly Item[] {
  const begun = new Set<string>();
  return runsOf(steps).map((run) => {
    const begins = run[0] ? withoutNumbers(sayOnPaper(run[0], words)) : '';
    const isGoingOn = run.length > 1 && begun.has(begins);
    begun.add(begins);
    return itemOf(run, isGoingOn, cautionOf, words);
  });
}

/** What is done over again, as a second cord or the sections of a hem: the first is told whole, of the last only what differs. */
function partsItems(
  steps: readonly Step[],
  begins: Step['act']['kind'],
  cautionOf: CautionOf,
  words: Words,
): readonly Item[] {
  const [first = [], ...more] = partsFrom(steps, begins);
  const said = new Set(first.map((step) => sayOnPaper(step, words)));
  const last = (more.at(-1) ?? []).map((step) => sayOnPaper(step, words));
  const differs = last.filter((text) => !said.has(text));
  const between = more.length > 1 ? '… ' : '';
  return [
    ...itemsOf(first, cautionOf, words),
    ...(differs.length > 0 ? [{ text: `${between}${differs.join(' … ')}`, mind: null }] : []),
  ];
}

function partsFrom(steps: readonly Step[], begins: Step['act']['kind']): readonly (readonly Step[])[] {
  const parts: Step[][] = [];
  for (const step of steps) {
    if (step.act.kind === begins || parts.length === 0) parts.push([]);
    parts.at(-1)?.push(step);
  }
  return parts;
}

/** The sections of a hem are not all of one size: how many loops each has stands behind them. */
function hemItems(steps: readonly Step[], cautionOf: CautionOf, words: Words): readonly Item[] {
  const counts = steps.flatMap(({ act }) => (act.kind === 'set-hem-needles' ? [act.count] : []));
  return [
    ...partsItems(steps, 'set-hem-needles', cautionOf, words),
    ...(counts.length > 1 ? [{ text: words.sheet.hemSections(counts), mind: null }] : []),
  ];
}

/** The steps of each kind; a yarn that is new, comes back, leaves for good or lies across the row is a kind of its own. */
function kindsOf(steps: readonly Step[]): readonly (readonly [Step, ...Step[]])[] {
  const kinds = new Map<string, [Step, ...Step[]]>();
  for (const step of steps) {
    const { act } = step;
    const comesBack = act.kind === 'thread' && act.waitsAt !== null;
    const leaves = 'aside' in act ? (act.aside?.how ?? '') : '';
    const key = [act.kind, comesBack, leaves, isCrossing(step)].join();
    const own = kinds.get(key);
    if (own) own.push(step);
    else kinds.set(key, [step]);
  }
  return [...kinds.values()];
}

const isCrossing = ({ act }: Step): boolean => act.kind === 'pass' && act.crosses.length > 0;

/** The first of its kind stands for all; what is done after some rows names them. */
const firstOf = (steps: readonly [Step, ...Step[]], cautionOf: CautionOf, words: Words): Item => ({
  text: repeated(steps, words),
  mind: cautionOf(steps[0]),
});

function repeated(steps: readonly [Step, ...Step[]], words: Words): string {
  const { sheet } = words;
  const [first, ...more] = steps;
  const { act } = first;
  const text = sayOnPaper(first, words);
  const rows = steps.map(({ row }) => row);
  switch (act.kind) {
    case 'pass':
      return isCrossing(first) ? sheet.whereListed(text) : `${text} ${sheet.inTurn(opposite(act.to))}`;
    case 'comb-off':
      return sheet.afterRows(rows, text);
    case 'move-weights':
      return sheet.afterRows(rows, more.length > 0 ? sheet.weightsUp : text);
    default:
      return text;
  }
}

const withoutNumbers = (text: string): string => text.replace(/[LR]?\d+/g, '0');

/** What a run says, and how it ends, in the fewest words; of one that goes on from before only the end. */
function itemOf(run: readonly Step[], isGoingOn: boolean, cautionOf: CautionOf, words: Words): Item {
  const kept: string[] = [];
  for (const step of isGoingOn ? [] : run) {
    const text = sayOnPaper(step, words);
    const isSaid = kept.some((other) => withoutNumbers(other).includes(withoutNumbers(text)));
    if (!isSaid) kept.push(text);
  }
  const last = run.at(-1);
  const first = kept.join(' ');
  const isWhole = last === undefined || kept.includes(sayOnPaper(last, words));
  return {
    text: isWhole ? first : words.sheet.leadingTo(first, sayAct(words.spoken, last.act)),
    mind: run.map(cautionOf).find((one) => one !== null) ?? null,
  };
}
