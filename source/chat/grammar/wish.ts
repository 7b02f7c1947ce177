/** What a maker wants, said in their own words, as the line of the prompt that does it: `rip out to row 20`, `rip row 20`. */
import { phases } from '../../steps/step.ts';
import { stemsIn } from '../../wording/named.ts';
import type { Words } from '../../wording/words.ts';

export interface Wish {
  readonly line: string;
  /** All that was typed is in the saying. */
  readonly isWhole: boolean;
  /** Of one word alone it may be part of something else. */
  readonly isSure: boolean;
  readonly isFirst: boolean;
}

/** The wish of which all words of one saying are in the text, in any order; of several the one that takes most words. */
export function wishIn(text: string, words: Words): Wish | null {
  const [first = '', ...others] = stemsIn(text);
  const typed = new Set([first, ...others]);
  let best: { readonly line: string; readonly length: number; readonly isFirst: boolean } | null = null;
  for (const [line, sayings] of Object.entries(words.wishes.sayings)) {
    for (const saying of sayings) {
      const stems = new Set(stemsIn(saying));
      if ([...stems].every((stem) => typed.has(stem)) && stems.size > (best?.length ?? 0))
        best = { line, length: stems.size, isFirst: stems.has(first) };
    }
  }
  if (best === null) return null;
  const isWhole = best.length === typed.size;
  const isSure = isWhole || best.length > 1;
  return { line: lineFor(best.line, text, words), isWhole, isSure, isFirst: best.isFirst };
}

const counted = ['row', 'stripe', 'step', 'move', 'stitch', 'round', 'bar'] as const;
const places: ReadonlySet<string> = new Set([...counted, ...phases, 'rows', 'last']);

/** With the place that was typed, where it was one. */
function lineFor(line: string, text: string, words: Words): string {
  const [verb = ''] = line.split(' ');
  if (verb !== 'rip' && verb !== 'go') return line;
  const spoken = text
    .toLowerCase()
    .split(/[^\p{L}\p{N}-]+/u)
    .map((word) => words.understand(word, places))
    .join(' ');
  const [, place, number] = /\b(row|stripe|step|move|stitch|round|bar) (\d+)\b/.exec(spoken) ?? [];
  if (place) return `${verb} ${place} ${number}`;
  const phase = phases.find((one) => spoken.split(' ').includes(one));
  if (phase && verb === 'go') return `go ${phase}`;
  const [, count] = /\b(\d+|two|three|zwei|drei) rows\b/.exec(spoken) ?? [];
  return count && verb === 'rip' ? `rip ${numbers[count] ?? count} rows` : line;
}

const numbers: Readonly<Record<string, string>> = { two: '2', three: '3', zwei: '2', drei: '3' };
