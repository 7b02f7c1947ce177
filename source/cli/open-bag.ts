import { bagToOpen } from './bag-to-open.ts';
import type { Asked } from './command.ts';
import { complain } from './outcome.ts';
import { sitDown } from './sit-down.ts';

/** Goes on with a bag by its number in the list of bags, or by its name. */
export async function openBag(asked: Asked, bag: string): Promise<number> {
  const found = bagToOpen(bag, null, asked.words);
  if (!found.ok) return complain(found.fault);
  return sitDown({
    ...asked,
    brief: null,
    log: found.value,
    like: undefined,
    fresh: false,
    mayAsk: false,
    asksFirst: false,
    plain: asked.given.has('plain'),
    json: false,
  });
}
