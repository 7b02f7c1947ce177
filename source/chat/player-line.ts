import type { PlayerAction } from '../journal/player-actions.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import type { Words } from '../wording/words.ts';
import { parsePlace } from './parse-place.ts';

export interface PlayerLineFault {
  readonly code: 'player/cannot-go-there';
}

/** What a line typed in the player asks for: `go graft`, `go stripe 3`, with or without the `go`. */
export function parsePlayerLine(line: string, words: Words): Result<PlayerAction, PlayerLineFault> {
  const rest = line.trim().replace(/^\/?(go\b)?\s*/i, '');
  const place = parsePlace(rest, 'go', words);
  if (place.ok && place.value.at === 'phase') return succeed({ do: 'to-phase', phase: place.value.phase });
  if (place.ok && place.value.at === 'stripe')
    return succeed({ do: 'to-stripe', stripe: place.value.number });
  return fail({ code: 'player/cannot-go-there' });
}
