/** A sound brief to break, and what the program says of the broken one. The bag is invented. */

import { parseBrief } from '../../source/planning/parse-brief.ts';
import { planBag } from '../../source/planning/plan-bag.ts';
import { type Fault, formatFault } from '../../source/wording/faults.ts';
import { englishWords } from '../../source/wording/words.ts';
import { plumAndMint } from '../fixtures/plan-of.ts';

const soundBrief = {
  name: 'Dice bag',
  bed: { needles: 150, pitchMm: 6.5, marginNeedles: 2 },
  swatch: { stitches: 40, rows: 60, widthCm: 19.2, heightCm: 21.6, state: 'wet-relaxed' },
  bag: { stitches: 20, rows: 24 },
  crawl: 'left',
  homeSide: 'right',
  edgeStitches: 2,
  shapeEveryRows: 2,
  ...plumAndMint,
  waste: { yarn: 'grey', rows: 8 },
  cord: { stitches: 3, yarn: 'mint', tieCm: 25 },
};

/** What to write at a path of the sound brief, as JSON text; undefined takes the field out. */
export type Edits = Readonly<Record<string, string | undefined>>;

/** The sound brief as text, with edits. */
export function briefWith(edits: Edits): string {
  const brief = structuredClone(soundBrief) as unknown as Group;
  for (const [path, value] of Object.entries(edits)) edit(brief, path.split('.'), value);
  // The values are put in as text: JSON.stringify would change 1e999 and the like.
  return JSON.stringify(brief, null, 2).replaceAll(/"@(.*?)@"/g, (_, path) => edits[path] ?? '');
}

type Group = Record<string, unknown>;

function edit(brief: Group, path: readonly string[], value: string | undefined): void {
  const last = path.at(-1) ?? '';
  const group = path.slice(0, -1).reduce((at, key) => at[key] as Group, brief);
  if (value === undefined) delete group[last];
  else Object.defineProperty(group, last, { value: `@${path.join('.')}@`, enumerable: true });
}

/** The code and the sentence with which a brief is refused; throws when it is accepted. */
export function refusalOf(text: string): readonly [code: string, sentence: string] {
  const said = (fault: Fault) => [fault.code, formatFault(fault, englishWords)] as const;
  const brief = parseBrief(text);
  if (!brief.ok) return said(brief.fault);
  const plan = planBag(brief.value.brief);
  if (!plan.ok) return said(plan.fault);
  throw new Error('the brief was accepted');
}
