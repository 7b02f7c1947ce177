/** The pure core alone, each loop in a process of its own: things done a second, and instructions for one of them. */
import { execFileSync, spawnSync } from 'node:child_process';
import { bundleBare } from './bare-programs.ts';
import { atLeast, type Figure } from './figure.ts';
import { countedEvents } from './long-log.ts';

const bundle = (): Promise<string> => bundleBare('core-loops', 'core-loops.ts');

const rate = (script: string, name: string, seconds: number): number =>
  Number(execFileSync(process.execPath, [script, name, 'seconds', String(seconds)], { encoding: 'utf8' }));

export async function measureCore(seconds: number): Promise<readonly Figure[]> {
  const script = await bundle();
  const at = (name: string): number => rate(script, name, seconds);
  const figure = { bare: null, unit: 'a second' };
  const [early, late] = [at('step-early'), at('step-late')];
  return [
    { ...figure, what: 'plans of a checked brief', ours: at('plan'), target: atLeast(20_000) },
    {
      ...figure,
      what: 'briefs checked, planned and laid out',
      ours: at('brief-to-job'),
      target: atLeast(1000),
    },
    {
      ...figure,
      what: 'steps anywhere in the largest bag',
      ours: at('step-anywhere'),
      target: atLeast(500_000),
    },
    {
      ...figure,
      what: 'steps at the end of its stripes, against the beginning',
      ours: late,
      bare: early,
      target: { of: 'ratio', is: 'at least', value: 0.9 },
    },
    { ...figure, what: 'events folded', ours: at('fold'), target: atLeast(300_000) },
    {
      ...figure,
      what: 'places found in the largest bag, its index built',
      ours: at('locate'),
      target: atLeast(1000),
    },
  ];
}

const usualTurns = { plan: 200, 'brief-to-job': 50, 'step-anywhere': 2000, fold: 2, locate: 100 };

/**
 * Instructions of V8's interpreter, as valgrind counts them: what is compiled on the fly comes at other frames in every
 * run, but the interpreter does the same each time, so that a change of one per cent can be seen on a busy machine.
 */
export async function countInstructions(
  turnsOf: Readonly<Record<string, number>> = usualTurns,
): Promise<readonly Figure[]> {
  if (spawnSync('valgrind', ['--version']).error) {
    console.error('There is no valgrind here: instructions are not counted.');
    return [];
  }
  const script = await bundle();
  return Object.entries(turnsOf).map(([name, turns]) => {
    const [few, many] = [turns, 3 * turns].map((count) => instructions(script, name, count));
    const each = name === 'fold' ? countedEvents : 1;
    const ours = ((many ?? 0) - (few ?? 0)) / (2 * turns * each);
    return { what: `instructions, ${name}`, unit: 'interpreted', ours, bare: null, target: null };
  });
}

function instructions(script: string, name: string, turns: number): number {
  const valgrind = [
    '--tool=callgrind',
    '--callgrind-out-file=/dev/null',
    '--smc-check=none',
    '--error-exitcode=0',
  ];
  // One thread and no compiler, so that nothing but the loop differs from run to run.
  const node = [process.execPath, '--jitless', '--single-threaded', '--predictable', script];
  const args = [...valgrind, ...node, name, 'turns', String(turns)];
  const said = execFileSync('bash', ['-c', '"$@" 2>&1', 'bash', 'valgrind', ...args], { encoding: 'utf8' });
  const counted = /Collected : (\d+)/.exec(said)?.[1];
  if (counted === undefined) throw new Error(`valgrind counted nothing: ${said}`);
  return Number(counted);
}
