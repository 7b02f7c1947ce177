import { chmodSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { press, scratchFolder, start, stepIn } from '../../test/fixtures/disk/scratch.ts';
import { buildScript, run } from '../../test/fixtures/disk/scripts.ts';

// Root may write anywhere, so the one who may not is nobody (65534 on Linux); anybody else takes away their own right.
const isRoot = process.getuid?.() === 0;
const someoneElse = isRoot ? { uid: 65_534 } : {};
const script = buildScript('open-as-anyone.ts');

it('in a folder that only lets itself be read, a session goes on in memory and settings are left alone', async () => {
  const folder = scratchFolder();
  chmodSync(join(script, '..'), 0o755);
  const path = join(folder, 'bag.jsonl');
  const log = start(path);
  press(log, 4);
  log.leave();
  chmodSync(path, 0o644);
  const settings = join(folder, 'settings');
  mkdirSync(settings);
  writeFileSync(join(settings, 'settings.json'), '{"bell": tru');
  chmodSync(settings, 0o555);
  chmodSync(folder, 0o555);
  const child = run(script, [path, settings], someoneElse);
  expect(await child.said('log')).toBe(
    'log {"state":"unsaved","waiting":2,"trouble":"no-permission","slowFlushMs":null} 5',
  );
  const found = JSON.parse((await child.said('settings')).slice('settings '.length));
  expect(found).toMatchObject({
    fault: { code: 'files/trouble', trouble: 'no-permission' },
    setAsideAs: null,
    saved: { ok: false },
  });
  await child.ended;
  chmodSync(folder, 0o755);
  chmodSync(settings, 0o755);
  expect([stepIn(path), readFileSync(join(settings, 'settings.json'), 'utf8')]).toEqual([4, '{"bell": tru']);
});
