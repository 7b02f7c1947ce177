/** Memory as the kernel counts it: what was resident at most, and whether it goes on growing. Linux alone tells. */
import { readFileSync } from 'node:fs';
import { atMost, type Figure, median } from './figure.ts';
import { type Presser, pressBare, pressOurs, rowsDrawn } from './presser.ts';

function residentMib(presser: Presser, field: 'VmRSS' | 'VmHWM'): number {
  const status = readFileSync(`/proc/${presser.terminal.pid}/status`, 'utf8');
  return Number(new RegExp(`${field}:\\s+(\\d+) kB`).exec(status)?.[1]) / 1024;
}

/** Collections move it up and down: the median over some presses. */
async function settledMib(presser: Presser, presses: number): Promise<number> {
  const samples: number[] = [];
  for (let i = 0; i < presses; i++) {
    await presser.press();
    if (i % Math.ceil(presses / 10) === 0) samples.push(residentMib(presser, 'VmRSS'));
  }
  return median(samples);
}

async function pressed(presser: Presser, from: number, through: number) {
  for (let i = 0; i < from; i++) await presser.press();
  const settling = Math.min(200, from);
  const early = await settledMib(presser, settling);
  for (let i = from; i < through; i++) await presser.press();
  const late = await settledMib(presser, settling);
  return { early, late, peak: residentMib(presser, 'VmHWM') };
}

export async function measureMemory(from: number, through: number): Promise<readonly Figure[]> {
  if (process.platform !== 'linux') {
    console.error('Only Linux tells how much memory is resident: it is not measured.');
    return [];
  }
  const first = await pressOurs(null);
  const bare = await pressBare(rowsDrawn(first));
  const [ofBare, ours] = await Promise.all([pressed(bare, from, through), pressed(first, from, through)]);
  await Promise.all([first.close(), bare.close()]);
  const presses = `${from.toLocaleString('en-GB')} and ${through.toLocaleString('en-GB')}`;
  return [
    {
      what: 'resident at most',
      unit: 'MiB',
      ours: ours.peak,
      bare: ofBare.peak,
      target: atMost('ratio', 1.3),
    },
    {
      what: `growth between press ${presses}`,
      unit: 'times',
      ours: ours.late / ours.early,
      bare: ofBare.late / ofBare.early,
      target: atMost('ours', 1.1),
    },
  ];
}
