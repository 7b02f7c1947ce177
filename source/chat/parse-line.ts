import { nearest } from '../shared/nearest.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { findWord } from '../wording/explain.ts';
import type { Words } from '../wording/words.ts';
import type { ChatCommand } from './commands/chat-command.ts';
import { chatCommands, findCommand } from './commands/chat-commands.ts';
import { type ChatFault, type Intent, type Known, nothingKnown, saysSomething } from './grammar/intent.ts';
import { parseFind } from './grammar/parse-seen.ts';
import { isSeeingWord } from './grammar/seen-words.ts';
import { troubleIn } from './grammar/trouble.ts';
import { wishIn } from './grammar/wish.ts';

/** What a line typed at the prompt asks for. An empty line confirms the step; a leading slash is allowed. */
export function parseLine(
  line: string,
  words: Words,
  known: Known = nothingKnown,
): Result<Intent, ChatFault> {
  const text = line.trim().replace(/^\//, '').trim();
  if (text === '') return succeed({ kind: 'do', command: { do: 'confirm', count: 1 } });
  const [word = ''] = text.split(/\s+/, 1);
  const command = commandFor(word.toLowerCase().replace(/(?<=.)\?+$/, ''));
  if (!command.ok && text.endsWith('?') && findWord(text, words))
    return succeed({ kind: 'words', about: text });
  const parsed = command.ok ? command.value.parse(text.slice(word.length).trim(), words, known) : command;
  const isBegun = command.ok && findCommand(word.toLowerCase()) === undefined;
  const wish = wishIn(text, words);
  if (parsed.ok && !(isBegun && isSeeingWord(word, words, known))) {
    // A command's other names, and words that it begins, may be the beginning of a sentence.
    const isName = command.ok && command.value.name === word.toLowerCase();
    return wish?.isSure && text !== word && (wish.isWhole || !isName) ? carryOut(wish.line, words) : parsed;
  }
  const seen = !command.ok || isBegun ? seenIn(text, words, known) : null;
  const trouble = parsed.ok ? null : troubleIn(text, words);
  // Where the work has fallen, the place tells which loops are open.
  if (trouble && !(trouble === 'fallen-work' && seen)) return succeed({ kind: 'trouble', what: trouble });
  if (wish && (wish.isSure || wish.isFirst)) return carryOut(wish.line, words);
  return seen ?? (wish && !command.ok ? carryOut(wish.line, words) : parsed);
}

/** What changes neither the bag nor where it is open is done at once; all else is only told. */
const harmless: ReadonlySet<Intent['kind']> = new Set([
  ...(['show', 'again', 'help', 'words', 'why', 'bags', 'set', 'draw', 'rip', 'replan'] as const),
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
