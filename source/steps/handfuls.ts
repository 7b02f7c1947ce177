/** How many times the hands do the same thing in one step: ten rounds of cord are ten, a pass is one. */
import type { Act } from './step.ts';

export function handfulsIn(act: Act): number {
  switch (act.kind) {
    case 'cast-on':
    case 'rehang':
    case 'cast-on-cord':
      return act.count;
    case 'bars':
    case 'rounds':
    case 'flat-rows':
    case 'waste-rows':
      return act.through - act.from + 1;
    case 'thread-eyelets':
      return 2;
    default:
      return 1;
  }
}
