/**
 * Where a text stops being JSON (RFC 8259) and what was probably meant, in more detail than the engine's own message,
 * which gives no place for a short text. Nothing here recurses, so deep nesting cannot run out of stack.
 */

export type JsonSlip =
  | 'ends-early'
  | 'comment'
  | 'wrong-quotes'
  | 'unclosed-text'
  | 'odd-escape'
  | 'odd-number'
  | 'decimal-comma'
  | 'extra-comma'
  | 'comma-missing'
  | 'colon-missing'
  | 'key-unquoted'
  | 'key-twice'
  | 'word-unquoted'
  | 'value-missing'
  | 'wrong-bracket'
  | 'after-the-end'
  | 'not-expected';

interface FoundSlip {
  readonly slip: JsonSlip;
  readonly offset: number;
  /** What stands there. */
  readonly found: string;
}

type Wanted = 'value' | 'first-value' | 'key' | 'first-key' | 'colon' | 'comma' | 'end';
type TokenKind = 'end' | 'text' | 'broken-text' | 'number' | 'literal' | 'word' | 'mark';

interface JsonToken {
  readonly kind: TokenKind;
  readonly text: string;
  readonly offset: number;
}

/** A group or list not closed yet; a list has no keys. */
type Level =
  | { readonly close: '}'; readonly keys: Set<string> }
  | { readonly close: ']'; readonly keys: null };

/** The first slip in `text`; null when it is sound JSON and no group has a key twice. */
export function findJsonSlip(text: string): FoundSlip | null {
  const open: Level[] = [];
  let wanted: Wanted = 'value';
  let before: JsonToken | null = null;
  for (;;) {
    const token = tokenAt(text, before ? before.offset + before.text.length : 0);
    if (wanted === 'end' && token.kind === 'end') return null;
    if (token.kind === 'text' && isKeyTwice(wanted, token, open)) return slipAt(token, 'key-twice');
    const next = advance(wanted, token, open);
    if (!next) return slipAt(token, nameSlip(wanted, token, before));
    [wanted, before] = [next, token];
  }
}

const slipAt = ({ offset, text }: JsonToken, slip: JsonSlip): FoundSlip => ({ slip, offset, found: text });

const tokenPatterns: readonly (readonly [TokenKind, RegExp])[] = [
  ['text', /"[^"\\\0-\x1f]*(?:\\(?:["\\/bfnrt]|u[\da-fA-F]{4})[^"\\\0-\x1f]*)*"/y],
  ['broken-text', /"[^\n]*/y],
  ['number', /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y],
  ['literal', /(?:true|false|null)(?![\w$])/y],
  ['word', /[\p{L}_$][\p{L}\d_$]*/uy],
  ['mark', /./suy],
];

function tokenAt(text: string, from: number): JsonToken {
  const blank = /[ \t\r\n]*/y;
  blank.lastIndex = from;
  const offset = from + (blank.exec(text)?.[0].length ?? 0);
  for (const [kind, pattern] of tokenPatterns) {
    pattern.lastIndex = offset;
    const match = pattern.exec(text);
    if (match) return { kind, text: match[0], offset };
  }
  return { kind: 'end', text: '', offset };
}

/** Notes the key on its level; true when it was there before. */
function isKeyTwice(wanted: Wanted, { text }: JsonToken, open: readonly Level[]): boolean {
  const keys = open.at(-1)?.keys;
  if (!keys || (wanted !== 'key' && wanted !== 'first-key')) return false;
  const key: string = JSON.parse(text);
  if (keys.has(key)) return true;
  keys.add(key);
  return false;
}

/** What must follow `token`; null when it cannot stand where `wanted` is wanted. */
function advance(wanted: Wanted, { kind, text }: JsonToken, open: Level[]): Wanted | null {
  const closes = text === open.at(-1)?.close;
  const level = open.at(-1);
  switch (wanted) {
    case 'value':
    case 'first-value':
      if (kind === 'text' || kind === 'number' || kind === 'literal') return level ? 'comma' : 'end';
      if (text === '{') return push(open, { close: '}', keys: new Set() });
      if (text === '[') return push(open, { close: ']', keys: null });
      return wanted === 'first-value' && closes ? pop(open) : null;
    case 'key':
    case 'first-key':
      if (kind === 'text') return 'colon';
      return wanted === 'first-key' && closes ? pop(open) : null;
    case 'colon':
      return text === ':' ? 'value' : null;
    case 'comma':
      if (text === ',') return level?.keys ? 'key' : 'value';
      return closes ? pop(open) : null;
    case 'end':
      return null;
  }
}

function push(open: Level[], level: Level): Wanted {
  open.push(level);
  return level.keys ? 'first-key' : 'first-value';
}

function pop(open: Level[]): Wanted {
  open.pop();
  return open.length > 0 ? 'comma' : 'end';
}

/** What the maker most likely did. */
function nameSlip(wanted: Wanted, token: JsonToken, before: JsonToken | null): JsonSlip {
  const { kind, text } = token;
  if (kind === 'end') return 'ends-early';
  if (wanted === 'end') return 'after-the-end';
  if (text === '/' || text === '#') return 'comment';
  if (/^['`´‘’“”„«»]$/.test(text)) return 'wrong-quotes';
  if (kind === 'broken-text') return text.lastIndexOf('"') > 0 ? 'odd-escape' : 'unclosed-text';
  const touches = before?.kind === 'number' && before.offset + before.text.length === token.offset;
  if (touches && !/^[}\]]$/.test(text)) return 'odd-number';
  const closes = text === '}' || text === ']';
  switch (wanted) {
    case 'key':
    case 'first-key':
      if (kind === 'number') return 'decimal-comma';
      if (kind === 'word' || kind === 'literal') return 'key-unquoted';
      return closes && before?.text === ',' ? 'extra-comma' : 'not-expected';
    case 'colon':
      return 'colon-missing';
    case 'comma':
      if (closes) return 'wrong-bracket';
      if (kind === 'word' && before?.kind === 'number') return 'odd-number';
      return kind === 'mark' && text !== '{' && text !== '[' ? 'not-expected' : 'comma-missing';
    default:
      if (kind === 'word') return 'word-unquoted';
      if (/^[-+.]$/.test(text)) return 'odd-number';
      if (closes && before?.text === ',') return 'extra-comma';
      return /^[}\],:]$/.test(text) ? 'value-missing' : 'not-expected';
  }
}
