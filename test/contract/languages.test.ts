/** Sentences stand in `wording/` alone, and a language that lacks one, or has it otherwise, does not compile. */
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { programFiles, readSentences } from './read-sentences.ts';

it('no sentence stands outside the wording', () => {
  const found = readSentences(programFiles());
  expect(found.map(({ at, text }) => `${at} ${text}`)).toEqual([]);
});

/** What the compiler says of the German help, changed like this, compiled where no other test looks for files. */
function compile(change: (german: string) => string): string {
  mkdirSync('node_modules/.cache', { recursive: true });
  const folder = mkdtempSync('node_modules/.cache/compiled-');
  const german = readFileSync('source/wording/help.de.ts', 'utf8');
  writeFileSync(
    join(folder, 'help.de.ts'),
    change(german).replaceAll("from './", "from '../../../source/wording/"),
  );
  writeFileSync(
    join(folder, 'tsconfig.json'),
    JSON.stringify({ extends: '../../../tsconfig.json', include: ['*.ts'] }),
  );
  try {
    execFileSync('npx', ['tsc', '--noEmit', '-p', folder], { encoding: 'utf8', stdio: 'pipe' });
    return '';
  } catch (error) {
    return String((error as { readonly stdout?: unknown }).stdout);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

describe('the compiler', () => {
  it('takes the German as it is', () => expect(compile((german) => german)).toBe(''), 60_000);

  it('refuses an entry that is missing', () => {
    expect(compile((german) => german.replace(/^ {2}more: .*$/m, ''))).toContain("'more' is missing");
  }, 60_000);

  it('refuses an entry of another type', () => {
    expect(compile((german) => german.replace(/^ {2}more: .*$/m, '  more: 3,'))).toMatch(
      /'number' is not assignable to type 'string'/,
    );
  }, 60_000);
});
