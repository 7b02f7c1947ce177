/** From the start of the process to its first frame on the screen. */
import { rmSync } from 'node:fs';
import { openTerminal, type TerminalOptions } from '../terminal/rig/pseudo-terminal.ts';
import { buildLikeOurs, bundleBare } from './bare-programs.ts';
import { atMost, type Figure, median, type Target } from './figure.ts';
import { briefPath, longLog, makeHome } from './long-log.ts';

/** Rows that the bench draws in a window of 24. */
const benchRows = '15';
/** What the bench shows when it stands. */
const frame = 'Enter confirms';

async function firstFrameMs(options: TerminalOptions, shown: string): Promise<number> {
  const from = performance.now();
  const terminal = openTerminal(options);
  await terminal.waitFor(shown, 30_000);
  const ms = performance.now() - from;
  await terminal.close();
  return ms;
}

export async function measureStart(runs: number, mostEvents: number): Promise<readonly Figure[]> {
  const hello = await bundleBare('hello', 'bare/hello.tsx');
  const screen = await bundleBare('screen', 'bare/screen.tsx');
  const helloLikeOurs = buildLikeOurs('hello', 'bare/hello.tsx', 'hello');
  const homes = [10, 2000, mostEvents].map((events) => makeHome({}, longLog(events)));
  const node = (...args: readonly string[]): TerminalOptions => ({ command: process.execPath, args });
  const goOn = homes.map((home) => () => firstFrameMs({ home }, frame));
  const [bare, bareTall, likeOurs, begin, goOnShort, goOnUsual, goOnLong] = await alternate(runs, [
    () => firstFrameMs(node(hello), 'hello'),
    () => firstFrameMs(node(screen, benchRows), 'count'),
    () => firstFrameMs(node(helloLikeOurs), 'hello'),
    () => firstFrameMs({ args: [briefPath] }, frame),
    ...goOn,
  ]);
  for (const home of homes) rmSync(home, { recursive: true, force: true });
  const figure = (what: string, ours = Number.NaN, of = bare, target: Target | null = null): Figure => ({
    what: `first frame, ${what}`,
    unit: 'ms',
    ours,
    bare: of ?? null,
    target,
  });
  return [
    figure('a new bag', begin, bare, atMost('ratio', 1.15)),
    figure('a bag on the go', goOnShort, bare, atMost('ratio', 1.15)),
    figure('2,000 events to read', goOnUsual),
    figure(`${mostEvents.toLocaleString('en-GB')} events to read`, goOnLong),
    figure('a new bag, against a bare screen as tall', begin, bareTall),
    figure('a new bag, against a hello built as ours is', begin, likeOurs),
  ];
}

/** The median of each, all of them taking turns. */
async function alternate(runs: number, all: readonly (() => Promise<number>)[]): Promise<readonly number[]> {
  const took = all.map((): number[] => []);
  for (let i = 0; i < runs; i++) {
    for (const [which, measure] of all.entries()) took[which]?.push(await measure());
  }
  return took.map(median);
}
