/** The glossary has the words of the trade as our own instructions and plan page use them (common practice, no source). */
import { readdirSync, readFileSync } from 'node:fs';
import { afterEach, describe, expect, it } from 'vitest';
import { openMemoryBench } from '../../test/fixtures/bench-in-memory.ts';
import { jobOf } from '../../test/fixtures/plan-of.ts';
import { german, speak, spoken } from '../../test/fixtures/spoken.ts';
import { stepAt } from '../steps/job.ts';
import { explainWord, findWord, meaningOf, reasons, tradeWords } from '../wording/explain.ts';
import { namesOf, stemOf, titleOf } from '../wording/named.ts';
import { formatPlanPage } from '../wording/plan-page.ts';
import { sayStep } from '../wording/steps.ts';

afterEach(() => speak(null));

const idOf = (text: string): string | null => findWord(text, spoken())?.id ?? null;

/** All that is read on the way through the bags of the demo. */
function everythingRead(): string {
  const read = readdirSync('demo')
    .filter((name) => name.endsWith('.json'))
    .map((name) => jobOf(readFileSync(`demo/${name}`, 'utf8')))
    .flatMap((job) => [
      formatPlanPage(job.plan, spoken()),
      ...Array.from({ length: job.stepCount }, (_, done) => sayStep(stepAt(job, done + 1), spoken())),
    ]);
  return read.join(' ').toLowerCase().replace(/\s+/g, ' ');
}

const used = [
  ...['needle', 'carriage', 'pass', 'row', 'feeder', 'loop', 'stitch', 'tail'],
  ...['e-wrap', 'comb', 'claw weight', 'waste yarn', 'waste row', 'ravel row', 'increase', 'decrease'],
  ...[
    'open loops',
    'trailing edge',
    'edge A',
    'edge B',
    'graft',
    'movement',
    'bar',
    'draw up',
    'seam',
    'eyelet',
  ],
  ...['cord', 'slip', 'round', 'hole', 'tie', 'bow', 'closing row', 'left', 'right', 'stripe'],
  ...['swatch', 'gauge', 'pitch', 'tightness', 'tex', 'wet-relaxed', 'plain knitting', 'margins', 'crawl'],
  ...['shaping', 'move', 'mouth', 'ease', 'reserve', 'waste', 'bottom'],
];

/** Not in these texts, but in answers, faults and the brief. */
const alsoTrade = [
  ...[
    'bed',
    'mast',
    'tightness factor',
    'dry-relaxed',
    'fully-relaxed',
    'relaxed state',
    'edge stitches',
    'gain',
  ],
  ...[
    'transfer tool',
    'prong',
    'loss',
    'increase',
    'decrease',
    'shaping move',
    'leading edge',
    'home side',
    'girth',
  ],
  ...['rehang', 'scrap off', 'mattress seam', 'tubular cord', 'loop length', 'latch tool', 'dropped stitch'],
  ...[
    'ladder',
    'rip back',
    'row counter',
    'foot switch',
    'brief',
    'log',
    'scraps',
    'repeat',
    'edges A and B',
  ],
];

describe('the words', () => {
  const read = everythingRead();

  it.each(used)('have %s, which the maker reads', (term) => {
    expect(read).toContain(term.toLowerCase());
    expect(findWord(term, spoken())).not.toBeNull();
  });

  it.each(alsoTrade)('have %s', (term) => expect(findWord(term, spoken())).not.toBeNull());

  it('tell once that left and right are the maker’s', () => {
    expect(
      tradeWords.filter((word) => /left and right are/i.test(meaningOf(word, spoken()))).map(({ id }) => id),
    ).toEqual(['left']);
  });
});

it.each([
  ['swatch', 'swatch'],
  ['what is a swatch?', 'swatch'],
  ['What are eyelets', 'eyelet'],
  ['the claw weights', 'claw-weight'],
  ['grafting', 'graft'],
  ['grafted', 'graft'],
  ['rehanging', 'rehang'],
  ['e wrapping', 'e-wrap'],
  ['casting on', 'cast-on'],
  ['an edge stitch', 'edge-stitches'],
  ['what does wet-relaxed mean?', 'relaxed'],
  ['edges A and B', 'edges'],
  ['tightness factor', 'tightness'],
  ['slipped', 'slip'],
  ['which side is the home side', 'home-side'],
  ['loop length', 'loop-length'],
  ['waste yarn', 'waste-yarn'],
  ['zebra', null],
  ['', null],
])('finds the word in %j', (text, id) => expect(idOf(text)).toBe(id));

it.each([
  ['was ist eine Maschenprobe?', 'swatch'],
  ['was sind Lochmaschen', 'eyelet'],
  ['Krallengewichte', 'claw-weight'],
  ['was heißt Ruhestellung?', 'holding'],
  ['was heißt außer Arbeit?', 'out-of-work'],
  ['des Fadenführers', 'feeder'],
  ['im Maschenstich verbinden', 'graft'],
  ['Trennfaden', 'ravel-cord'],
  ['swatch', 'swatch'],
  ['what is a claw weight?', 'claw-weight'],
])('finds the word in %j in German', (text, id) => {
  speak(german);
  expect(idOf(text)).toBe(id);
});

describe.each([
  ['English', null],
  ['German', german],
])('in %s', (_, language) => {
  it('no name stands twice', () => {
    speak(language);
    for (const table of [tradeWords, reasons]) {
      const stems = table.flatMap((entry) => [...new Set(namesOf(entry, spoken()).map(stemOf))]);
      expect(stems.filter((one, i) => stems.indexOf(one) !== i)).toEqual([]);
    }
  });

  it('each is explained in one to three sentences after its first, none longer than an instruction', () => {
    speak(language);
    for (const word of tradeWords) {
      const sentences = meaningOf(word, spoken()).split(/(?<=[.?!]) (?=[A-ZÄÖÜ])/);
      expect(sentences.length, titleOf(word, spoken())).toBeLessThanOrEqual(4);
      for (const sentence of sentences) expect(sentence.length, sentence).toBeLessThanOrEqual(160);
    }
  });

  it('the list of all fits a window', () => {
    speak(language);
    expect(explainWord(null, spoken()).join(' ').length).toBeLessThan(78 * 18);
  });
});

it('is answered at the prompt, however it is asked', () => {
  const bench = openMemoryBench();
  const lines = [
    'words swatch',
    'what is a swatch?',
    'What is a swatch',
    "what's a swatch?",
    'was ist swatch?',
    'swatch?',
  ];
  for (const [i, line] of lines.entries()) {
    bench.type(line, 4000 * (i + 1));
    expect(bench.said(1), line).toMatch(/^Swatch: A test piece/);
  }
});

it.each(['what now?', 'what next', 'what do I do now?', 'was jetzt?'])(
  'says the step again on %j',
  (line) => {
    const bench = openMemoryBench();
    bench.type(line, 1000);
    expect(bench.said(1)).toMatch(/^Step 1 of /);
  },
);

it('explains a word that is asked of in other ways', () => {
  const bench = openMemoryBench();
  bench.type('how do I graft?', 1000);
  expect(bench.said(1)).toMatch(/^Graft: /);
});

it('offers the nearest word, or the list', () => {
  expect(explainWord('is a swach?', spoken())).toEqual([
    'swach is not among the words here. Did you mean swatch?',
  ]);
  expect(explainWord('is a zebra?', spoken())).toEqual([
    'zebra is not among the words here. Type words to see them all.',
  ]);
});
