import { type Key, keyId } from './key.ts';

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

// Words are those of Node's readline, which follows common practice: a run of letters and figures or a run
// of other marks, with the spaces beside it.
const mark = String.raw`[^\p{L}\p{N}\p{M}_\s]`;
const letter = String.raw`[\p{L}\p{N}\p{M}_]`;
const wordBefore = new RegExp(String.raw`(?:${mark}+|${letter}+)?\s*$`, 'u');
const wordAfter = new RegExp(String.raw`^(?:\s+|${mark}+|${letter}+)\s*`, 'u');

type CursorMotion = (line: TypedLine) => number;

const characterLeft: CursorMotion = (line) => [...charactersOf(before(line))].at(-1)?.index ?? 0;
const characterRight: CursorMotion = (line) => {
  const [next] = charactersOf(after(line));
  return line.cursor + (next?.segment.length ?? 0);
};
const wordLeft: CursorMotion = (line) => line.cursor - (wordBefore.exec(before(line))?.[0].length ?? 0);
const wordRight: CursorMotion = (line) => line.cursor + (wordAfter.exec(after(line))?.[0].length ?? 0);
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
