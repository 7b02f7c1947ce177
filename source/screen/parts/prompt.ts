/** The prompt as data: the line being typed, and what was typed before. Pure; a screen shows it. */
import { type Key, keyId } from '../keys/key.ts';

/** A line being typed; `cursor` counts UTF-16 units and never stands inside a character. */
export type TypedLine = { readonly text: string; readonly cursor: number };

export const emptyLine: TypedLine = { text: '', cursor: 0 };

/** A line with the cursor at its end, as after history or completion. */
export const lineOf = (text: string): TypedLine => ({ text, cursor: text.length });

/** What goes beyond this many UTF-16 units is not taken: a prompt must stay lower than the screen. */
export const longestLine = 500;

let segmenter: Intl.Segmenter | null = null;

/** The first one loads tables of all scripts, for some ten milliseconds: not while the program starts. */
const charactersOf = (text: string): Intl.Segments => {
  segmenter ??= new Intl.Segmenter(undefined, { granularity: 'grapheme' });
  return segmenter.segment(text);
};

const before = ({ text, cursor }: TypedLine): string => text.slice(0, cursor);
const after = ({ text, cursor }: TypedLine): string => text.slice(cursor);

type CursorMotion = (line: TypedLine) => number;

const characterLeft: CursorMotion = (line) => [...charactersOf(before(line))].at(-1)?.index ?? 0;
const characterRight: CursorMotion = (line) => {
  const [next] = charactersOf(after(line));
  return line.cursor + (next?.segment.length ?? 0);
};
// Words are those of Node's readline, which follows common practice: a run of letters and figures or a run
// of other marks, with the spaces beside it.
const wordLeft: CursorMotion = (line) => {
  const word = /(?:[^\p{L}\p{N}\p{M}_\s]+|[\p{L}\p{N}\p{M}_]+)?\s*$/u.exec(before(line));
  return line.cursor - (word?.[0].length ?? 0);
};
const wordRight: CursorMotion = (line) => {
  const word = /^(?:\s+|[^\p{L}\p{N}\p{M}_\s]+|[\p{L}\p{N}\p{M}_]+)\s*/u.exec(after(line));
  return line.cursor + (word?.[0].length ?? 0);
};
const start: CursorMotion = () => 0;
const end: CursorMotion = (line) => line.text.length;

const move =
  (reach: CursorMotion) =>
  (line: TypedLine): TypedLine => ({ ...line, cursor: reach(line) });

const cut =
  (reach: CursorMotion) =>
  (line: TypedLine): TypedLine => {
    const [from, to] = [reach(line), line.cursor].sort((one, other) => one - other);
    return { text: line.text.slice(0, from) + line.text.slice(to), cursor: from ?? 0 };
  };

// The keys of GNU readline's default bindings, as far as a prompt of one line has use for them.
export const editKeys: ReadonlyMap<string, (line: TypedLine) => TypedLine> = new Map([
  ...['left', 'ctrl+b'].map((id) => [id, move(characterLeft)] as const),
  ...['right', 'ctrl+f'].map((id) => [id, move(characterRight)] as const),
  ...['ctrl+left', 'alt+left', 'alt+b'].map((id) => [id, move(wordLeft)] as const),
  ...['ctrl+right', 'alt+right', 'alt+f'].map((id) => [id, move(wordRight)] as const),
  ...['home', 'ctrl+a'].map((id) => [id, move(start)] as const),
  ...['end', 'ctrl+e'].map((id) => [id, move(end)] as const),
  ...['backspace', 'shift+backspace'].map((id) => [id, cut(characterLeft)] as const),
  ...['delete', 'ctrl+d'].map((id) => [id, cut(characterRight)] as const),
  ...['ctrl+w', 'alt+backspace', 'ctrl+backspace'].map((id) => [id, cut(wordLeft)] as const),
  ...['alt+d', 'ctrl+delete', 'alt+delete'].map((id) => [id, cut(wordRight)] as const),
  ['ctrl+u', cut(start)],
  ['ctrl+k', cut(end)],
]);

// A prompt has one line: what is pasted onto it is brought onto one.
const onOneLine = (text: string): string => text.replace(/\n+$/, '').replace(/[\n\t]+/g, ' ');

function insert(line: TypedLine, text: string): TypedLine {
  const taken = text.slice(0, longestLine - line.text.length).replace(/[\ud800-\udbff]$/, '');
  return { text: before(line) + taken + after(line), cursor: line.cursor + taken.length };
}

/**
 * The line after a key, by character as a reader sees it. A key that means nothing to a line gives back
 * the very same object, so `===` tells whether the key was used. Return, Tab, history and the like are the
 * caller's.
 */
export function editLine(line: TypedLine, key: Key): TypedLine {
  if (key.kind === 'release') return line;
  const edit = editKeys.get(keyId(key));
  if (edit) return edit(line);
  return key.text === '' ? line : insert(line, onOneLine(key.text));
}

export interface Prompt {
  readonly line: TypedLine;
  /** Lines sent, newest last. */
  readonly history: readonly string[];
  /** Place in the history while looking back; its length stands for the line being typed. */
  readonly lookingAt: number;
  /** What was being typed before looking back. */
  readonly draft: string;
  /** Words that Tab found when there was more than one. */
  readonly choices: readonly string[];
}

export const emptyPrompt: Prompt = { line: emptyLine, history: [], lookingAt: 0, draft: '', choices: [] };

export const isEmpty = (prompt: Prompt): boolean => prompt.line.text === '';

const longestHistory = 200;

/** The prompt once its line has been sent. */
export function sent(prompt: Prompt): Prompt {
  const { text } = prompt.line;
  const fresh =
    text.trim() === '' || text === prompt.history.at(-1) ? prompt.history : [...prompt.history, text];
  const history = fresh.slice(-longestHistory);
  return { ...emptyPrompt, history, lookingAt: history.length };
}

/** Whole lines that a text may become. */
type Complete = (text: string) => readonly string[];

/** Keys of the prompt besides those that edit its line. */
export const promptKeys: ReadonlyMap<string, (prompt: Prompt, completions: Complete) => Prompt> = new Map([
  ['up', (prompt) => lookAt(prompt, prompt.lookingAt - 1)],
  ['down', (prompt) => lookAt(prompt, prompt.lookingAt + 1)],
  ['tab', (prompt, completions) => complete(prompt, completions)],
  ['escape', (prompt) => (isEmpty(prompt) ? prompt : { ...prompt, line: emptyLine, choices: [] })],
]);

/** The prompt after a key that edits, completes or looks back; the very same object when the key does neither. */
export function promptKey(prompt: Prompt, key: Key, completions: Complete = () => []): Prompt {
  if (key.kind === 'release') return prompt;
  const own = promptKeys.get(keyId(key));
  if (own) return own(prompt, completions);
  const line = editLine(prompt.line, key);
  return line === prompt.line ? prompt : { ...prompt, line, lookingAt: prompt.history.length, choices: [] };
}

function lookAt(prompt: Prompt, place: number): Prompt {
  const { history, lookingAt } = prompt;
  if (place < 0 || place > history.length) return prompt;
  const draft = lookingAt === history.length ? prompt.line.text : prompt.draft;
  return { ...prompt, draft, lookingAt: place, line: lineOf(history[place] ?? draft), choices: [] };
}

function complete(prompt: Prompt, completions: Complete): Prompt {
  const found = completions(prompt.line.text);
  const [first] = found;
  if (first === undefined) return prompt;
  if (found.length === 1) return { ...prompt, line: lineOf(`${first} `), choices: [] };
  const shared = found.reduce(commonStart);
  const line = shared.length > prompt.line.text.length ? lineOf(shared) : prompt.line;
  return { ...prompt, line, choices: found };
}

function commonStart(one: string, other: string): string {
  let length = 0;
  while (length < one.length && one[length] === other[length]) length++;
  return one.slice(0, length);
}

/** The prompt after a key, and the line that Enter sent; null where none was. The one place that knows Enter. */
export function typeKey(
  prompt: Prompt,
  key: Key,
  completions?: Complete,
): { readonly prompt: Prompt; readonly line: string | null } {
  if (keyId(key) !== 'enter') return { prompt: promptKey(prompt, key, completions), line: null };
  return key.kind === 'press' ? { prompt: sent(prompt), line: prompt.line.text } : { prompt, line: null };
}
