import { spawn, spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { inScratch, scratchFolder } from '../../test/fixtures/disk/scratch.ts';
import { smallBrief } from '../../test/fixtures/sample-log.ts';
import { faultIn } from '../../test/tools/result.ts';
import { parseBrief } from '../planning/parse-brief.ts';
import { formatFileFault } from '../wording/file-faults.ts';
import { englishWords } from '../wording/words.ts';
import { readBriefText, writeBriefFile } from './kept-files.ts';

function fileWith(content: string | Uint8Array): string {
  const path = inScratch();
  writeFileSync(path, content);
  return path;
}

describe('a brief file', () => {
  it('is written and read back', () => {
    const path = inScratch();
    expect(writeBriefFile(path, smallBrief)).toEqual({ ok: true, value: null });
    const text = readBriefText(path);
    expect(text.ok && JSON.parse(text.value)).toEqual(smallBrief);
    expect(text.ok && parseBrief(text.value)).toMatchObject({ ok: true });
    expect(statSync(path).mode & 0o777).toBe(0o600);
  });

  it('is read without its byte order mark', () => {
    expect(readBriefText(fileWith('\uFEFF{}'))).toEqual({ ok: true, value: '{}' });
  });

  it('of exactly 1 MiB is read, of one byte more it is not', () => {
    const most = 1024 * 1024;
    expect(readBriefText(fileWith(' '.repeat(most)))).toMatchObject({ ok: true });
    const path = fileWith(' '.repeat(most + 1));
    expect(readBriefText(path)).toEqual({
      ok: false,
      fault: { code: 'files/too-large', path, mostBytes: most },
    });
  });

  it('is never written over another file', () => {
    const path = fileWith('my diary');
    expect(writeBriefFile(path, smallBrief)).toMatchObject({ fault: { code: 'files/exists' } });
    expect(readFileSync(path, 'utf8')).toBe('my diary');
    expect(writeBriefFile(inScratch('x', 'y.json'), smallBrief)).toMatchObject({
      fault: { code: 'files/no-folder' },
    });
  });

  it.each([
    ['files/missing', inScratch],
    ['files/missing', () => join(fileWith('{}'), 'inside a file')],
    ['files/is-folder', scratchFolder],
    ['files/not-text', () => fileWith(Uint8Array.of(0xff, 0xfe, 0x7b, 0))],
  ])('that cannot be read is %s', (code, make) => {
    const path = make();
    const fault = faultIn(readBriefText(path));
    expect(fault).toMatchObject({ code, path });
    expect(formatFileFault(fault, englishWords)).toMatch(/^\/.*\. .*\.$/s);
  });

  it.skipIf(process.platform === 'win32')('may be a pipe, but not one without end', () => {
    const pipe = inScratch('pipe');
    spawnSync('mkfifo', [pipe]);
    // A pipe can be opened only once somebody writes to it, and that must be another process.
    const write = 'fs.writeFileSync(process.argv[1], \'{"name": 1}\')';
    spawn(process.execPath, ['-e', write, pipe], { stdio: 'ignore' });
    expect(readBriefText(pipe)).toEqual({ ok: true, value: '{"name": 1}' });
    expect(readBriefText('/dev/zero')).toMatchObject({ fault: { code: 'files/too-large' } });
  });

  it('does not mind a folder of the same name beside it', () => {
    const folder = scratchFolder();
    mkdirSync(join(folder, 'bag'));
    expect(writeBriefFile(join(folder, 'bag.json'), smallBrief)).toMatchObject({ ok: true });
  });
});
