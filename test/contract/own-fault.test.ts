/** A mistake of the program's own: one sentence with the place of the work, exit status 70, and none of its text. */
import { cpSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { emptyFolder, slantwise } from '../tools/slantwise.ts';

function withoutItsDemo(): string {
  const folder = emptyFolder();
  cpSync('dist', join(folder, 'dist'), { recursive: true });
  return join(folder, 'dist/cli.js');
}

describe('a mistake of its own', () => {
  it.each([
    ['C.UTF-8', /^slantwise: Slantwise has a bug \(.*dice-bag\.json.*\)\. .*bags.*\n$/],
    [
      'de_DE.UTF-8',
      /^slantwise: Slantwise hat selbst einen Fehler gemacht \(.*dice-bag\.json.*\)\. .*bags.*\n$/,
    ],
  ])('is one sentence, in %s', (locale, sentence) => {
    const ran = slantwise(['--practice'], { program: withoutItsDemo(), locale });
    expect(ran.stderr).toMatch(sentence);
    expect(ran.stderr.length).toBeLessThan(1000);
    expect({ status: ran.status, stdout: ran.stdout }).toEqual({ status: 70, stdout: '' });
  });
});
