/** From the start of the process to its first frame on the screen. */
import { rmSync } from 'node:fs';
import { openTerminal, type TerminalOptions } from '../terminal/rig/pseudo-terminal.ts';
import { bundleLikeOurs } from './bare-programs.ts';
import { atMost, type Figure } from './figure.ts';
import { briefPath, longLog, makeHome } from './long-log.ts';
import { median } from './statistics.ts';

async function firstFrameMs(options: TerminalOptions, shown: string): Promise<number> {
  const from = performance.now();
  const terminal = openTerminal(options);
  await terminal.waitFor(shown, 30_000);
  const ms = performance.now() - from;
  await terminal.close();
  return ms;
}

export async function measureStart(runs: number): Promise<readonly Figure[]> {
  const hello = await bundleLikeOurs('hello', 'bare/hello.tsx');
  const homes = { short: makeHome({}, longLog(10)), long: makeHome({}, longLog(100_000)) };
  const frame = 'Enter confirms';
  const starts = {
    bare: () => firstFrameMs({ command: process.execPath, args: [hello] }, 'hello'),
    begin: () => firstFrameMs({ args: [briefPath] }, frame),
    goOn: () => firstFrameMs({ home: homes.short }, frame),
    goOnLong: () => firstFrameMs({ home: homes.long }, frame),
  };
  const took: Record<keyof typeof starts, number[]> = { bare: [], begin: [], goOn: [], goOnLong: [] };
  for (let i = 0; i < runs; i++) {
    for (const kind of ['bare', 'begin', 'goOn'] as const) took[kind].push(await starts[kind]());
    if (i % 6 === 0) took.goOnLong.push(await starts.goOnLong());
  }
  for (const home of Object.values(homes)) rmSync(home, { recursive: true, force: true });
  const bare = median(took.bare);
  const target = atMost('ratio', 1.15);
  const figure = { unit: 'ms', bare };
  return [
    { ...figure, what: 'first frame, a new bag', ours: median(took.begin), target },
    { ...figure, what: 'first frame, a bag on the go', ours: median(took.goOn), target },
    {
      ...figure,
      what: 'first frame, 100,000 events to read',
      ours: median(took.goOnLong),
      target: null,
    },
  ];
}
