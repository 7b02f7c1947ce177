/** A log as version 1 was first written, with a bag invented for it. It must be readable for ever. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { tallyLog } from '../../source/journal/check.ts';
import { readLog } from '../../source/journal/read-log.ts';

it('a log of version 1 is read', () => {
  const bytes = readFileSync(new URL('log-version-1.jsonl', import.meta.url));
  expect(tallyLog(readLog(bytes))).toMatchObject({
    ok: true,
    value: {
      name: 'Card sleeve',
      events: 17,
      skipped: 1,
      sittings: 2,
      finished: true,
      step: 225,
      stepCount: 225,
    },
  });
});
