import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach } from 'vitest';
import { openTerminal, type Terminal, type TerminalOptions } from './rig/pseudo-terminal.ts';

/** Settings that let tests press as fast as the screen answers. */
const quickSettings = { pedalGapMs: 20, pause: 'short' };

/** Opens terminals that share one home; all of it is gone after each test. */
export function useBench(): (options?: TerminalOptions, settings?: object) => Terminal {
  let home: string | null = null;
  const opened: Terminal[] = [];
  afterEach(async () => {
    await Promise.all(opened.splice(0).map((terminal) => terminal.close()));
    if (home) rmSync(home, { recursive: true, force: true });
    home = null;
  });
  return (options = {}, settings = quickSettings) => {
    home ??= makeHome(settings);
    const terminal = openTerminal({ home, ...options });
    opened.push(terminal);
    return terminal;
  };
}

function makeHome(settings: object): string {
  const home = mkdtempSync(join(tmpdir(), 'slantwise-bench-'));
  const folder = join(home, 'config', 'slantwise');
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'settings.json'), JSON.stringify(settings));
  return home;
}

/** Types a line and waits for what it brings about. */
export async function type(
  terminal: Terminal,
  line: string,
  brings: Parameters<Terminal['waitFor']>[0],
): Promise<string> {
  terminal.send(`${line}\r`);
  return terminal.waitFor(brings);
}

/** Answers to the first seven questions, of an invented bag. */
export const firstAnswers = [
  'Dice bag',
  '14 by 18',
  'mid 120',
  '40 stitches 19.2 cm, 60 rows 21.6 cm',
  'plum 60 g',
  'mint 45 g',
  '2',
];
