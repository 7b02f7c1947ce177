import type { PlayerAction } from '../../journal/player.ts';
import { fail, type Result, succeed } from '../../shared/result.ts';
import type { NumberedPlace } from '../../steps/landmarks.ts';
import { type Phase, phases } from '../../steps/step.ts';
import type { Words } from '../../wording/words.ts';
import type { ChatFault, NamedPlace } from './intent.ts';

const numbered = [
  'stripe',
  'row',
  'move',
  'step',
  'stitch',
  'bar',
  'round',
  'hole',
] as const satisfies NumberedPlace[];

/** What is counted in a phase, so that `graft 12` is a place too. */
const countedIn: Readonly<Partial<Record<Phase, (typeof numbered)[number]>>> = {
  graft: 'stitch',
  seam: 'bar',
  cord: 'round',
};

/** It may be said where the stitch or the round is: `stitch 12 of the graft`. */
const whereItIs = /\s+(?:(?:of|in)\s+)?(?:the\s+)?(?:graft|seam|cord)$/i;

/** Words that may follow `go` and `rip`. */
export const placeWords: readonly string[] = [...phases, ...numbered, 'mark'];

type Read = Result<NamedPlace, ChatFault>;

/** Reads what follows `verb`: a phase, a numbered place, or a mark; words may be shortened. */
export function parsePlace(rest: string, verb: 'go' | 'rip', words: Words): Read {
  const usage = `${verb} stripe 3`;
  if (rest === '') return fail({ code: 'chat/needs-more', usage });
  const joined = rest.toLowerCase().replace(/\s+/g, '-');
  const phase = phases.find((one) => one === joined);
  if (phase) return succeed({ at: 'phase', phase });
  const back = verb === 'rip' ? rowsBack(rest, words) : null;
  if (back !== null) return succeed({ at: 'rows-back', count: back });
  if (verb === 'rip' && /^\d+$/.test(rest)) return fail({ code: 'chat/meant', line: `rip ${rest} rows` });
  const [word = '', ...others] = rest.replace(whereItIs, '').split(/\s+/);
  const meant = words.understand(word, new Set(placeWords)).toLowerCase();
  const place = expand(loops.has(meant) ? 'stitch' : meant, others.length > 0);
  if (place === null) return fail({ code: 'chat/unknown-place', word, usage, verb });
  if (place === 'mark') return parseMark(others.join(' '), verb);
  const number = numbered.find((one) => one === place);
  if (number) return parseNumber(number, others.join(' '), verb);
  const named = phases.find((one) => one === place);
  const counted = named && countedIn[named];
  if (counted && others.length > 0) return parseNumber(counted, others.join(' '), verb);
  return named && others.length === 0
    ? succeed({ at: 'phase', phase: named })
    : fail({ code: 'chat/unknown-place', word: others.length > 0 ? rest : word, usage, verb });
}

/** What a stitch of the graft is called too. */
const loops: ReadonlySet<string> = new Set(['loop', 'bite']);

const fewRows: Readonly<Record<string, number>> = { last: 1, a: 1, one: 1, two: 2, three: 3 };

/** `3 rows`, `last row`, `one row`: so many rows back from here. */
function rowsBack(rest: string, words: Words): number | null {
  const own = new Set(['row', 'rows', 'last', 'a', 'the']);
  const [first = '', second = '', ...others] = rest
    .toLowerCase()
    .split(/\s+/)
    .map((word) => words.understand(word, own))
    .filter((word) => word !== 'the');
  if (others.length > 0 || !/^rows?$/.test(second)) return null;
  return fewRows[first] ?? (/^[1-9]\d*$/.test(first) ? Number(first) : null);
}

/** The one place word that `word` begins; null when there is none or more than one. A number tells `stripe` from `stripes`. */
function expand(word: string, numbers: boolean): string | null {
  if (placeWords.includes(word)) return word;
  const matches = placeWords.filter((one) => one.startsWith(word));
  const fitting = matches.filter((one) => numbered.some((name) => name === one) === numbers);
  if (fitting.length === 1) return fitting[0] ?? null;
  return matches.length === 1 ? (matches[0] ?? null) : null;
}

function parseMark(name: string, verb: string): Read {
  if (name === '') return fail({ code: 'chat/needs-more', usage: `${verb} mark NAME` });
  return succeed({ at: 'mark', name });
}

function parseNumber(at: (typeof numbered)[number], text: string, verb: string): Read {
  const number = Number(text);
  const usage = `${verb} ${at} 3`;
  if (text === '') return fail({ code: 'chat/needs-more', usage });
  if (!Number.isInteger(number)) return fail({ code: 'chat/not-a-count', word: text, usage });
  return succeed({ at, number });
}

interface PlayerLineFault {
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
