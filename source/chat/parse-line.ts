import { nearest } from '../shared/nearest.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { phases } from '../steps/step.ts';
import { findWord } from '../wording/explain.ts';
import { stemsIn } from '../wording/named.ts';
import type { Words } from '../wording/words.ts';
import type { ChatCommand } from './commands/chat-command.ts';
import { chatCommands, findCommand } from './commands/chat-commands.ts';
import { bareAnswer } from './grammar/bare-answer.ts';
import { type ChatFault, type Intent, type Known, nothingKnown, saysSomething } from './grammar/intent.ts';
import { goToHandWork, parseFind } from './grammar/parse-seen.ts';
import { isNumber, isSeeingWord } from './grammar/seen-words.ts';
import { troubleIn } from './grammar/trouble.ts';

/** What a maker wants, said in their own words, as the line of the prompt that does it: `rip out to row 20`, `rip row 20`. */
interface LineWish {
  readonly line: string;
  /** All that was typed is in the saying. */
  readonly isWhole: boolean;
  /** It takes several words; one alone may be part of something else. */
  readonly isSeveral: boolean;
  readonly isSure: boolean;
  readonly isFirst: boolean;
}

/** The wish of which all words of one saying are in the text, in any order; of several the one that takes most words. */
function wishIn(text: string, words: Words, known: Known): LineWish | null {
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
  const isSeveral = best.length > 1;
  const isSure = isWhole || isSeveral;
  return { line: lineFor(best.line, text, words, known), isWhole, isSeveral, isSure, isFirst: best.isFirst };
}

const counted = ['row', 'stripe', 'step', 'move', 'stitch', 'round', 'bar', 'hole'] as const;
const places: ReadonlySet<string> = new Set([...counted, ...phases, 'rows', 'last']);

/** With the place that was typed, where it was one. */
function lineFor(line: string, text: string, words: Words, { yarns }: Known): string {
  const [verb = '', what] = line.split(' ');
  if (verb === 'replan' && what === 'cord') {
    const yarn = yarns.find((one) => isNamedIn(text, one));
    return yarn === undefined ? line : line.replace('YARN', yarn);
  }
  if (verb !== 'rip' && verb !== 'go') return line;
  const spoken = text
    .toLowerCase()
    .split(/[^\p{L}\p{N}-]+/u)
    .map((word) => words.understand(word, places))
    .join(' ');
  const [, place, number] = /\b(row|stripe|step|move|stitch|round|bar|hole) (\d+)\b/.exec(spoken) ?? [];
  if (place) return `${verb} ${place} ${number}`;
  const phase = phases.find((one) => spoken.split(' ').includes(one));
  if (phase && verb === 'go') return `go ${phase}`;
  const [, count] = /\b(\d+|two|three|zwei|drei) rows\b/.exec(spoken) ?? [];
  return count && verb === 'rip' ? `rip ${numbers[count] ?? count} rows` : line;
}

const numbers: Readonly<Record<string, string>> = { two: '2', three: '3', zwei: '2', drei: '3' };

/** In every language, as commands are. */
const yesOrNo: ReadonlyMap<string, boolean> = new Map([
  ...(['y', 'yes', 'j', 'ja'] as const).map((word) => [word, true] as const),
  ...(['n', 'no', 'nein'] as const).map((word) => [word, false] as const),
]);

/** What a line typed at the prompt asks for. An empty line confirms the step; a leading slash is allowed. */
export function parseLine(
  line: string,
  words: Words,
  known: Known = nothingKnown,
): Result<Intent, ChatFault> {
  const text = line.trim().replace(/^\//, '').trim();
  if (text === '') return succeed({ kind: 'do', command: { do: 'confirm', count: 1 } });
  const yes = yesOrNo.get(text.toLowerCase());
  const told = known.question ? bareAnswer(text, known.question, yes, words) : null;
  if (told) return succeed({ kind: 'find', more: true, told, unsure: false });
  if (isNumber(text) && known.question?.about === 'many-steps' && known.question.part === 'cord')
    return fail({ code: 'chat/meant', line: ['go', 'round', text].join(' ') });
  if (isNumber(text) && Number(text) > 0 && Number(text) <= (known.offers ?? 0))
    return fail({ code: 'chat/meant', line: `choose ${text}` });
  if (yes !== undefined) return succeed({ kind: 'yes-no', yes });
  const [word = ''] = text.split(/\s+/, 1);
  const command = commandFor(word.toLowerCase().replace(/(?<=.)\?+$/, ''));
  if (!command.ok && text.endsWith('?') && findWord(text, words))
    return succeed({ kind: 'words', about: text });
  const parsed = command.ok ? command.value.parse(text.slice(word.length).trim(), words, known) : command;
  const isBegun = command.ok && findCommand(word.toLowerCase()) === undefined;
  // Which needles hang where is seen, and no wish.
  const wish = namesNeedle.test(text) ? null : wishIn(withYarn(text, words, known), words, known);
  if (parsed.ok && !(isBegun && isSeeingWord(word, words, known))) {
    // A command's other names, and words that it begins, may be the beginning of a sentence.
    const isName = command.ok && command.value.name === word.toLowerCase();
    return wish?.isSure && text !== word && (wish.isWhole || !isName) ? carryOut(wish.line, words) : parsed;
  }
  const seen = !command.ok || isBegun ? seenIn(text, words, known) : null;
  // Where the work has fallen, the place tells which loops are open.
  if (seen && isEmptyBed(seen)) return seen;
  const trouble = parsed.ok ? null : troubleIn(withYarn(text, words, known), words);
  if (trouble && !(seen && trouble === 'fallen-work')) return succeed({ kind: 'trouble', what: trouble });
  // Where a command is named, one word alone is no wish.
  const isCommand = command.ok && !isBegun;
  const isMeant = wish && (isCommand ? wish.isSeveral : wish.isSure || wish.isFirst);
  // What is seen to its last word is no wish: `I still have plum in the feeder`. A place is gone to rather.
  if (isMeant && !(seen && isWhollyHeard(seen) && !/^(?:go|rip) /.test(wish.line)))
    return carryOut(wish.line, words);
  if (seen ?? (wish && !command.ok)) return seen ?? carryOut(wish?.line ?? '', words);
  const byHand = command.ok ? null : goToHandWork(text, words);
  if (byHand !== null) return fail({ code: 'chat/meant', line: byHand });
  // A needle alone says what is seen, though not of which edge.
  if (beginsWithNeedle.test(text)) return parseFind(text, words, known);
  // `no` begins `note`, and yet a sentence that begins with it is no note.
  return yesOrNo.has(word.toLowerCase())
    ? fail({ code: 'chat/unknown-command', word, nearest: null })
    : parsed;
}

const beginsWithNeedle = /^[lr]\s?\d+\b/i;
const namesNeedle = /\b[lr]\s?\d+\b/i;

/** A yarn is yarn, by its own name too: `mint ran out`. */
const withYarn = (text: string, { wishes }: Words, { yarns }: Known): string =>
  yarns.some((yarn) => isNamedIn(text, yarn)) ? `${text} ${wishes.aYarn}` : text;

const isNamedIn = (text: string, yarn: string): boolean =>
  ` ${text.toLowerCase().replace(/[,.;:!?]/g, ' ')} `.includes(` ${yarn.toLowerCase()} `);

const isWhollyHeard = (seen: Result<Intent, ChatFault>): boolean =>
  seen.ok && seen.value.kind === 'find' && seen.value.told.leftOut.length === 0;

const isEmptyBed = (seen: Result<Intent, ChatFault>): boolean =>
  seen.ok && seen.value.kind === 'find' && seen.value.told.seen.left === null;

/** What changes neither the bag nor where it is open is done at once; all else is only told. */
const harmless: ReadonlySet<Intent['kind']> = new Set([
  ...(['show', 'again', 'help', 'words', 'why', 'bags', 'set', 'draw', 'find', 'rip', 'replan'] as const),
]);

function carryOut(line: string, words: Words): Result<Intent, ChatFault> {
  const [word = ''] = line.split(' ', 1);
  const parsed = findCommand(word)?.parse(line.slice(word.length).trim(), words, nothingKnown);
  return parsed?.ok && harmless.has(parsed.value.kind) ? parsed : fail({ code: 'chat/meant', line });
}

/** What is seen may be typed without a command. */
function seenIn(text: string, words: Words, known: Known): Result<Intent, ChatFault> | null {
  const found = parseFind(text, words, known);
  return found.ok && found.value.kind === 'find' && (found.value.unsure || saysSomething(found.value.told))
    ? found
    : null;
}

/** The command that `word` names or begins; a command's own name beats any it begins. */
function commandFor(word: string): Result<ChatCommand, ChatFault> {
  const exact = findCommand(word);
  if (exact) return succeed(exact);
  const begun = chatCommands.filter((command) => command.name.startsWith(word));
  const shortest = begun.find((command) => begun.every((other) => other.name.startsWith(command.name)));
  if (shortest) return succeed(shortest);
  if (begun.length > 1) {
    return fail({ code: 'chat/ambiguous', word, choices: begun.map((command) => command.name) });
  }
  const names = chatCommands.flatMap((command) => [
    command.name,
    ...command.aliases.filter((alias) => alias.length > 2),
  ]);
  return fail({ code: 'chat/unknown-command', word, nearest: nearest(word, names) });
}

/** Whole lines that `text` may become, in the order of the table. */
export function completeLine(text: string, marks: readonly string[] = []): readonly string[] {
  const slash = text.startsWith('/') ? '/' : '';
  const [word = '', ...rest] = text.slice(slash.length).split(/\s+/);
  if (rest.length === 0) {
    return chatCommands
      .filter((command) => command.name.startsWith(word.toLowerCase()))
      .map((command) => `${slash}${command.name}`);
  }
  const command = findCommand(word.toLowerCase());
  if (!command) return [];
  const [first = '', ...more] = rest;
  const ends = more.length === 0 ? command.follows : first === 'mark' ? marks : [];
  const begun = more.length === 0 ? first : more.join(' ');
  const kept = more.length === 0 ? `${slash}${word}` : `${slash}${word} ${first}`;
  return ends.filter((end) => end.startsWith(begun.toLowerCase())).map((end) => `${kept} ${end}`);
}
