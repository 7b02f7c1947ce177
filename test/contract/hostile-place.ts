/** A folder and a home in which every file that the program reads holds hostile text. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { sealLine } from '../../source/journal/line.ts';
import { hostile } from './hostile.ts';

const pouch = JSON.parse(readFileSync('demo/token-pouch.json', 'utf8'));

/** A log sealed by somebody who knows how, of the pouch as it is or with another first line. */
function sealed(events: readonly object[], change: (header: Record<string, unknown>) => object = (it) => it) {
  const { sum: _, ...first } = JSON.parse(
    readFileSync('demo/token-pouch.jsonl', 'utf8').split('\n')[0] as string,
  );
  let sum = 0;
  return [change(first), ...events]
    .map((json) => {
      const line = sealLine(json as Record<string, unknown>, sum);
      sum = line.sum;
      return line.text;
    })
    .join('');
}

const at = { afterMs: 0, step: 0 };
const hostileEvents = [
  { do: 'note', text: hostile, ...at },
  { do: 'note', text: `${' '.repeat(100)}${hostile}`, ...at },
  { do: 'mark', name: hostile, ...at },
  { do: 'say', text: hostile, ...at },
  { do: 'say', text: `${' '.repeat(100)}spaces first`, ...at },
  { do: hostile, what: hostile, ...at },
  { do: 'confirm', count: 3, afterMs: 10, step: 3 },
];
const otherYarn = {
  do: 'replan',
  rows: pouch.bag.rows ?? 16,
  stitchMm: null,
  rowMm: null,
  from: Object.keys(pouch.yarns)[0],
  to: hostile,
  colour: '#a0b0c0',
  metresPer100g: 120,
  ...at,
};

export interface Place {
  readonly folder: string;
  readonly home: string;
}

export function lay({ folder, home }: Place): void {
  const write = (name: string, text: string): void => writeFileSync(join(folder, name), text);
  write('hostile.jsonl', sealed(hostileEvents));
  write('yarn.jsonl', sealed([otherYarn]));
  write(
    'name.jsonl',
    sealed([], (header) => ({ ...header, name: hostile })),
  );
  write(
    'program.jsonl',
    sealed([], (header) => ({ ...header, program: hostile, figures: { rows: hostile } })),
  );
  write('unknown.jsonl', sealed([{ do: hostile, afterMs: 0, step: 9 }]));
  write('lines.txt', `1 say ${hostile}\n${hostile}\n`);
  write('brief-name.json', JSON.stringify({ ...pouch, name: hostile }));
  write(
    'brief-yarn.json',
    JSON.stringify({ ...pouch, yarns: { ...pouch.yarns, [hostile]: pouch.yarns.plum } }),
  );
  write('brief-key.json', JSON.stringify({ ...pouch, [hostile]: hostile }));
  write('brief-value.json', JSON.stringify({ ...pouch, crawl: hostile }));
  write('brief-broken.json', `{"name": ${hostile}`);
  write('dial.json', JSON.stringify({ ...pouch, swatch: { ...pouch.swatch, stitchSize: hostile } }));
  const data = join(home, 'data', 'slantwise');
  const bags = join(data, 'bags');
  const config = join(home, 'config', 'slantwise');
  for (const path of [bags, config]) mkdirSync(path, { recursive: true });
  const settings = {
    language: hostile,
    pedals: { [hostile]: 'confirm', f13: hostile },
    [hostile]: 1,
    units: hostile,
  };
  writeFileSync(join(config, 'settings.json'), JSON.stringify(settings));
  writeFileSync(join(data, 'new-bag.json'), JSON.stringify({ name: hostile, first: { name: hostile } }));
  writeFileSync(join(bags, `${hostile.replaceAll(/[/\0]/g, '')}.jsonl`.slice(-120)), sealed(hostileEvents));
  writeFileSync(join(folder, 'held.jsonl'), sealed(hostileEvents));
  const holder = { pid: 1, host: `${hostname()}${hostile}`, started: null };
  writeFileSync(join(folder, 'held.jsonl.lock'), JSON.stringify(holder));
}
