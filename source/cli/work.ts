import { answer, type Line } from '../chat/line.ts';
import { formatSaveStatus } from '../chat/wording/file-faults.ts';
import { formatTornTail } from '../chat/wording/journal-faults.ts';
import { sayWelcome } from '../chat/wording/place.ts';
import type { SessionLog } from '../files/session-log.ts';
import { type BenchStore, createBenchStore } from '../screen/bench-store.ts';
import { runPlain } from '../screen/plain.ts';
import { openWork, type WorkOptions } from './open-work.ts';
import { complain, exitCodes } from './outcome.ts';

/** Knits a bag: opens or begins its log, and guides until the maker leaves. */
export async function work(options: WorkOptions & { readonly plain: boolean }): Promise<number> {
  const opened = openWork(options);
  if (!opened.ok) return complain(opened.fault);
  const log = opened.value;
  const store = createBenchStore({
    session: log.session,
    record: log.append,
    lines: firstLines(log),
    trouble: () => formatSaveStatus(log.status),
  });
  try {
    return await guide(store, options.plain);
  } finally {
    const status = log.leave();
    const trouble = formatSaveStatus(status);
    if (trouble) complain(trouble);
  }
}

function firstLines(log: SessionLog): readonly Line[] {
  const torn = log.tornKeptAs === null ? [] : [formatTornTail(log.tornKeptAs)];
  return answer(...torn, ...sayWelcome(log.session));
}

async function guide(store: BenchStore, plain: boolean): Promise<number> {
  const hasScreen = process.stdin.isTTY && process.stdout.isTTY && process.env.TERM !== 'dumb';
  if (!hasScreen || plain || process.env.INK_SCREEN_READER === 'true') {
    await runPlain(store, process.stdin, (text) => process.stdout.write(`${text}\n`));
    return exitCodes.done;
  }
  // Ink's colours know nothing of NO_COLOR, and it draws nothing where CI is set.
  if (process.env.NO_COLOR) process.env.FORCE_COLOR = '0';
  delete process.env.CI;
  const { runBench } = await import('../screen/run-bench.tsx');
  return (await runBench({ store })) === 'interrupted' ? exitCodes.interrupted : exitCodes.done;
}
