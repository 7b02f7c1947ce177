/** The sheet alone is enough: all that the steps tell from the cast-on to the bow stands on it. */
import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../source/planning/plan.ts';
import { sayOnPaper } from '../../source/sheet/page/digest.ts';
import { sheetHtml } from '../../source/sheet/page/sheet-html.ts';
import { sheetMarkdown } from '../../source/sheet/page/sheet-markdown.ts';
import { yarnSigns } from '../../source/sheet/yarn-signs.ts';
import { allSteps, layOutJob } from '../../source/steps/job.ts';
import type { Step } from '../../source/steps/step.ts';
import { sayAct } from '../../source/wording/by-kind.ts';
import { cautionOf } from '../../source/wording/steps.ts';
import { englishWords } from '../../source/wording/words.ts';
import { planOf } from '../fixtures/plan-of.ts';
import { briefFile } from '../fixtures/random-brief.ts';
import { allNodes, readSvg } from '../fixtures/read-svg.ts';
import { optionsFor } from '../fixtures/sheets.ts';
import { tries } from '../tools/tries.ts';

const say = ({ act }: Step): string => sayAct(englishWords.steps, act);

interface Read {
  /** What can be read, tags and entities gone. */
  readonly text: string;
  /** The list of stripes, a line each. */
  readonly stripes: readonly string[];
  readonly html: string;
}

function read(plan: Plan): Read {
  const options = optionsFor(plan);
  const html = sheetHtml(plan, options);
  const text = html
    .replace(/<style>[\s\S]*?<\/style>|<script>[\s\S]*?<\/script>/g, ' ')
    .replaceAll(/<[^>]*>/g, ' ')
    .replaceAll(/&#(\d+);/g, (_, code: string) => String.fromCodePoint(Number(code)))
    .replaceAll('&amp;', '&')
    .replaceAll(/\s+/g, ' ');
  const stripes = sheetMarkdown(plan, options)
    .split('\n')
    .filter((line) => line.startsWith('- [ ]'));
  return { text, stripes, html };
}

/** The first and the last step of every kind, in each part of the work. */
function endsOfKinds(steps: readonly Step[]): readonly (readonly [first: Step, last: Step])[] {
  const kinds = new Map<string, [Step, Step]>();
  for (const step of steps) {
    const key = step.phase + step.act.kind;
    kinds.set(key, [kinds.get(key)?.[0] ?? step, step]);
  }
  return [...kinds.values()];
}

/** The needles, lengths, sides, yarns and settings of the row counter that a sentence names. */
function factsOf(sentence: string, yarns: readonly string[]): ReadonlySet<string> {
  const named =
    sentence.match(
      /\b[LR]\d+\b|\d[\d.]* cm\b|\b(?:left|right|purl|knit side)\b|counter (?:back )?to \d+/gi,
    ) ?? [];
  return new Set([
    ...named.map((fact) => fact.toLowerCase()),
    ...yarns.filter((yarn) => sentence.includes(yarn)),
  ]);
}

/** At the bed paper says it in fewer words: it may leave out none of the facts. */
function expectNoFactLost(step: Step, yarns: readonly string[]): void {
  const onPaper = factsOf(sayOnPaper(step, englishWords), yarns);
  for (const fact of factsOf(say(step), yarns)) expect([...onPaper], say(step)).toContain(fact);
}

function expectAllFacts(plan: Plan): void {
  const { text, stripes, html } = read(plan);
  const steps = [...allSteps(layOutJob(plan))];
  const yarns = [plan.cord.yarn, ...plan.stripes.map(({ yarn }) => yarn)];
  for (const step of steps) expectNoFactLost(step, yarns);
  for (const [first, last] of endsOfKinds(steps)) {
    // Weights that go up again and again stand each time under other needles: at the edges, which the list has.
    const isWeight = first.act.kind === 'move-weights' && first !== last;
    const said = isWeight ? `After rows ${first.row}` : sayOnPaper(first, englishWords);
    expect(text).toContain(said.replaceAll(/\s+/g, ' '));
    // What repeats from stripe to stripe is told once; its needles and yarns stand in the list.
    if (first.phase === 'stripes') continue;
    const ends = [sayOnPaper(last, englishWords), sayAct(englishWords.spoken, last.act)];
    expect(
      ends.some((end) => text.includes(end)),
      ends.join(),
    ).toBe(true);
  }
  // A sheet of paper takes no command.
  expect(text).not.toMatch(/\btype\b/i);
  for (const caution of new Set(steps.map((step) => cautionOf(plan, step, englishWords)))) {
    if (caution !== null) expect(text).toContain(caution);
  }
  const { list, ...troubles } = englishWords.trouble;
  for (const { title, now } of Object.values(troubles)) {
    expect(text).toContain(`${title}: ${now({ edges: null, row: 0 })}`);
  }
  expectList(plan, steps, stripes);
  expectEyelets(steps, html);
}

/** Of every stripe: its yarn, its rows, a dot where both edges are shaped, the edges when it is done, hangings and cuts. */
function expectList(plan: Plan, steps: readonly Step[], list: readonly string[]): void {
  const inStripes = steps.filter(({ phase }) => phase === 'stripes' || phase === 'closing-row');
  expect(list).toHaveLength(plan.stripes.length);
  for (const [i, { yarn }] of plan.stripes.entries()) {
    const line = (list[i] ?? '').replaceAll('\\', '');
    const own = inStripes.filter(({ stripe, row }) => stripe === i + 1 && row > 0);
    expect(line).toContain(` ${i + 1} ${yarn}: `);
    const shaped = own.filter(({ act }) => act.kind === 'decrease').map(({ row }) => row);
    const dots = [...line.matchAll(/(\d+)•/g)].map(([, row]) => Number(row));
    expect(dots).toEqual(shaped);
    const last = own.findLast(
      ({ act, phase }) => phase === 'stripes' && ['pass', 'decrease'].includes(act.kind),
    );
    const rehung = own.findLast(({ act }) => act.kind === 'rehang');
    const then = last && rehung && rehung.step > last.step ? rehung : last;
    if (then) expect(line).toContain(`→ ${then.after.left}–${then.after.right}`);
    for (const { act, row } of own) {
      if (act.kind !== 'rehang') continue;
      expect(line).toContain(`After row ${row} scrap off, hang again on ${act.first} to ${act.last}`);
    }
  }
  // A yarn that waits while others are knitted is laid over at the row of which the steps say so.
  const marks = yarnSigns(plan, 'print');
  for (const { act, row, stripe } of inStripes) {
    if (act.kind !== 'pass' || act.crosses.length === 0) continue;
    const letters = act.crosses.map((yarn) => marks.get(yarn)?.letter).join(', ');
    expect(list[(stripe ?? 0) - 1]).toContain(`before row ${row}: ${letters} over`);
  }
  // What is cut for the closing row is told there.
  const cut = inStripes.flatMap(({ moves, phase }) =>
    phase === 'closing-row' ? [] : moves.flatMap((move) => (move.move === 'cut' ? [move.yarn] : [])),
  );
  for (const yarn of new Set(cut)) {
    if (yarn === plan.brief.waste.yarn || yarn === plan.stripes.at(-1)?.yarn) continue;
    expect(list.join('\n')).toContain(`then cut ${yarn}`);
  }
}

/** Every eyelet is drawn, and each cord goes through those, and in the order, that the steps say. */
function expectEyelets(steps: readonly Step[], html: string): void {
  const threaded = steps.flatMap(({ moves }) =>
    moves.flatMap((move) => (move.move === 'thread' ? [move.eyelet] : [])),
  );
  const figure = html.match(/<svg(?:(?!<\/svg>)[\s\S])*data-eyelet[\s\S]*?<\/svg>/g)?.at(-1) ?? '<svg/>';
  const holes = allNodes(readSvg(figure));
  const drawn = ['data-hole', 'data-second'].flatMap((cord) =>
    holes
      .flatMap(({ attributes }) =>
        attributes[cord] ? [[Number(attributes[cord]), Number(attributes['data-eyelet'])] as const] : [],
      )
      .toSorted(([a], [b]) => a - b)
      .map(([, eyelet]) => eyelet),
  );
  expect(drawn).toEqual(threaded);
}

describe('the sheet tells all that the steps tell', () => {
  it.each(readdirSync('demo').filter((name) => name.endsWith('.json')))('of %s', (name) => {
    expectAllFacts(planOf(readFileSync(`demo/${name}`, 'utf8')));
  });

  it('of any bag', () => {
    fc.assert(
      fc.property(briefFile(), (file) => expectAllFacts(planOf(file))),
      { numRuns: tries(25, 6) },
    );
  });
});
