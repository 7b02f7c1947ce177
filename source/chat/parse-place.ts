import { fail, type Result, succeed } from '../shared/result.ts';
import { phases } from '../steps/step.ts';
import type { ChatFault, Intent } from './intent.ts';

const numbered = ['stripe', 'row', 'move', 'step'] as const;

/** Words that may follow `go`. */
export const placeWords: readonly string[] = [...phases, ...numbered, 'mark'];

const usage = 'go stripe 3';

/** Reads what follows `go`: a phase, a numbered place, or a mark; words may be shortened. */
export function parsePlace(rest: string): Result<Intent, ChatFault> {
  if (rest === '') return fail({ code: 'chat/needs-more', usage });
  const joined = rest.toLowerCase().replace(/\s+/g, '-');
  const phase = phases.find((one) => one === joined);
  if (phase) return succeed({ kind: 'go', to: { at: 'phase', phase } });
  const [word = '', ...others] = rest.split(/\s+/);
  const place = expand(word.toLowerCase());
  if (place === null) return fail({ code: 'chat/unknown-place', word, usage });
  if (place === 'mark') return parseMark(others.join(' '));
  const number = numbered.find((one) => one === place);
  if (number) return parseNumber(number, others.join(' '));
  const named = phases.find((one) => one === place);
  return named
    ? succeed({ kind: 'go', to: { at: 'phase', phase: named } })
    : fail({ code: 'chat/unknown-place', word, usage });
}

/** The one place word that `word` begins; null when there is none or more than one. */
function expand(word: string): string | null {
  if (placeWords.includes(word)) return word;
  const matches = placeWords.filter((one) => one.startsWith(word));
  return matches.length === 1 ? (matches[0] ?? null) : null;
}

function parseMark(name: string): Result<Intent, ChatFault> {
  if (name === '') return fail({ code: 'chat/needs-more', usage: 'go mark NAME' });
  return succeed({ kind: 'go', to: { at: 'mark', name } });
}

function parseNumber(at: (typeof numbered)[number], text: string): Result<Intent, ChatFault> {
  const number = Number(text);
  if (text === '') return fail({ code: 'chat/needs-more', usage: `go ${at} 3` });
  if (!Number.isInteger(number)) return fail({ code: 'chat/not-a-count', word: text, usage: `go ${at} 3` });
  return succeed({ kind: 'go', to: { at, number } });
}
