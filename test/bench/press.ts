/** From a key to the screen that answers it, the flush to disk included, and how much is written for it. */
import { atMost, type Figure } from './figure.ts';
import { longLog } from './long-log.ts';
import { type Presser, pressBare, pressOurs, rowsDrawn } from './presser.ts';
import { median, percentile } from './statistics.ts';

const bytesOf = ({ terminal }: Presser): number => Buffer.byteLength(terminal.raw());

export async function measurePress(presses: number): Promise<readonly Figure[]> {
  const ours = await pressOurs(null);
  const [long, bare] = [await pressOurs(longLog(100_000)), await pressBare(rowsDrawn(ours))];
  const all = [bare, ours, long];
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
  const [bareMs = [], oursMs = [], longMs = []] = took;
  const [bareBytes = 0, oursBytes = 0] = bytes;
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
      what: 'press to paint with 100,000 events, against none, median',
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
