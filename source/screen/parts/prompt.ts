/** The prompt as data: the line being typed, and what was typed before. Pure; a screen shows it. */
import { editLine, emptyLine, lineOf, type TypedLine } from '../keys/edit-line.ts';
import { type Key, keyId } from '../keys/key.ts';

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
