import { mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beginLog, type LogState, recordEvent } from '../../source/journal/log-state.ts';
import type { LogEvent } from '../../source/journal/notation.ts';
import { briefOf } from '../fixtures/plan-of.ts';

export const briefPath = 'demo/token-pouch.json';

/** Events of the log that is read where instructions are counted. */
export const countedEvents = 500;

/** The log of a bag whose first step was confirmed and taken back until there were so many events. */
export function longLog(eventCount: number): string {
  const brief = briefOf(readFileSync(briefPath, 'utf8'));
  const begun = beginLog({ brief, program: '0.1.0', startedAt: '2026-11-20T18:30:00.000Z' });
  if (!begun.ok) throw new Error(JSON.stringify(begun.fault));
  let state: LogState = begun.value.state;
  const lines = [begun.value.line];
  const pair: readonly LogEvent[] = [{ do: 'confirm', count: 1 }, { do: 'back' }];
  for (let i = 0; i < eventCount; i++) {
    const written = recordEvent(state, pair[i % 2] as LogEvent, 1000);
    if (!written.ok) throw new Error(JSON.stringify(written.fault));
    state = written.value.state;
    lines.push(written.value.line);
  }
  return lines.join('');
}

/** A new home with settings to press quickly, and a log to go on with where one is given. */
export function makeHome(settings: object, log: string | null): string {
  const home = mkdtempSync(join(tmpdir(), 'slantwise-home-'));
  const [config, bags] = [join(home, 'config', 'slantwise'), join(home, 'data', 'slantwise', 'bags')];
  mkdirSync(config, { recursive: true });
  writeFileSync(join(config, 'settings.json'), JSON.stringify(settings));
  if (log === null) return home;
  mkdirSync(bags, { recursive: true });
  writeFileSync(join(bags, 'token-pouch.jsonl'), log);
  return home;
}
