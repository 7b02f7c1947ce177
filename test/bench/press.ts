import { atMost, type Figure, median, percentile } from './figure.ts';
import { longLog } from './long-log.ts';
import { type Presser, pressBare, pressOurs, rowsDrawn } from './presser.ts';

const bytesOf = ({ terminal }: Presser): number => Buffer.byteLength(terminal.raw());

export async function measurePress(presses: number, events: number): Promise<readonly Figure[]> {
  const ours = await pressOurs(null);
  const long = await pressOurs(longLog(events));
  const rows = rowsDrawn(ours);
  const all = [await pressBare(rows), await pressBare(rows, true), ours, long];
  const took = all.map((): number[] => []);
  const warmUp = Math.min(300, presses);
  let before: readonly number[] = [];
  for (let i = -warmUp; i < presses; i++) {
    if (i === 0) before = all.map(bytesOf);
    for (const [which, one] of all.entries()) {
      const ms = await one.press();
      if (i >= 0) took[which]?.push(ms);
    }
  }
  const bytes = all.map((one, which) => (bytesOf(one) - (before[which] ?? 0)) / presses);
  await Promise.all(all.map((one) => one.close()));
  const [bareMs = [], flushedMs = [], oursMs = [], longMs = []] = took;
  const [bareBytes = 0, , oursBytes = 0] = bytes;
  const last = (values: readonly number[]): number => percentile(values, 0.99);
  return [
    {
      what: 'press to paint, median',
      unit: 'ms',
      ours: median(oursMs),
      bare: median(bareMs),
      target: atMost('ratio', 1.25),
    },
    {
      what: 'press to paint, 99th percentile',
      unit: 'ms',
      ours: last(oursMs),
      bare: last(bareMs),
      target: atMost('ratio', 1.5),
    },
    {
      what: 'press to paint, 99th percentile, against a bare program that flushes too',
      unit: 'ms',
      ours: last(oursMs),
      bare: last(flushedMs),
      target: atMost('ratio', 1.5),
    },
    {
      what: `press to paint with ${events.toLocaleString('en-GB')} events, against none, median`,
      unit: 'ms',
      ours: median(longMs),
      bare: median(oursMs),
      target: atMost('ratio', 1.1),
    },
    {
      what: 'written a press at 80 × 24',
      unit: 'bytes',
      ours: oursBytes,
      bare: bareBytes,
      target: atMost('ours', 3072),
    },
  ];
}
