import fc from 'fast-check';
import { expect, it } from 'vitest';
import { Kept } from './session.ts';

it('keeps what it was, whatever is added to it and to what came of it', () => {
  fc.assert(
    fc.property(fc.array(fc.record({ to: fc.nat(), item: fc.nat() })), (additions) => {
      const states: { readonly kept: Kept<number>; readonly items: readonly number[] }[] = [
        { kept: Kept.none, items: [] },
      ];
      for (const { to, item } of additions) {
        const { kept, items } = states[to % states.length] as (typeof states)[number];
        states.push({ kept: kept.add(item), items: [...items, item] });
      }
      for (const { kept, items } of states)
        expect([[...kept], kept.length, kept.last]).toEqual([items, items.length, items.at(-1)]);
    }),
  );
});

it('copies nothing at the end', () => {
  let kept: Kept<number> = Kept.none;
  const from = process.cpuUsage().user;
  for (let i = 0; i < 300_000; i++) kept = kept.add(i);
  // By copying each time it takes minutes.
  expect(process.cpuUsage().user - from).toBeLessThan(2_000_000);
  expect(kept.length).toBe(300_000);
});
