/** The manual page is read by the system's own formatter, which warns of macros that are wrong. */
import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { englishWords } from '../wording/words.ts';
import { commands } from './commands.ts';
import { formatManual } from './manual.ts';

const manual = formatManual(commands, englishWords, { version: '1.2.3', date: '2026-11-25' });

describe('the manual page', () => {
  it('has each command and each of its options', () => {
    for (const { name, options } of commands) {
      expect(manual).toContain(`.B ${name}\n`);
      for (const option of options) expect(manual).toContain(`\\-\\-${option.name.replaceAll('-', '\\-')}`);
    }
  });

  const groff = spawnSync('groff', ['-man', '-ww', '-Tascii', '-P-c'], { input: manual, encoding: 'utf8' });
  if (groff.error) console.warn('Not tried, for want of groff: how the manual page is set.');

  it.skipIf(groff.error)('is set without a warning', () => {
    expect(groff.stderr).toBe('');
    const page = groff.stdout.replace(/.\u0008/g, '');
    expect(page).toMatch(/^NAME\n {7}slantwise +- plans and guides/m);
    expect(page.replace(/\s+/g, ' ')).toContain(
      'slantwise plan BRIEF [BRIEF...] [--json] [--from-yarn] [--colours-turned]',
    );
    expect(page).toMatch(/^ {7}sheet/m);
  });
});
