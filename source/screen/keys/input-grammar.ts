// How terminal input falls apart into pieces (ECMA-48): text, control sequences, control strings. Every
// piece can be told from its own characters, so it never matters how the input was cut on the way here.

export type InputToken =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'csi' | 'ss3'; readonly body: string; readonly final: string; readonly alt: boolean }
  | { readonly kind: 'alt'; readonly character: string }
  | { readonly kind: 'escape' }
  | { readonly kind: 'nothing' };

type Rule = readonly [pattern: RegExp, make: (parts: readonly string[]) => InputToken];

const nothing = (): InputToken => ({ kind: 'nothing' });
const sequence =
  (kind: 'csi' | 'ss3') =>
  ([, esc, body, final]: readonly string[]): InputToken => ({
    kind,
    body: body ?? '',
    final: final ?? '',
    alt: esc === '\x1b',
  });

// The eight-bit forms (\x9b for ESC [ and so on) are the same controls by the standard.
const csi = String.raw`(\x1b?)(?:\x1b\[|\x9b)`;
const ss3 = String.raw`(\x1b?)(?:\x1bO|\x8f)`;
const controlString = String.raw`(?:\x1b[\]PX^_]|[\x90\x98\x9d-\x9f])[^\x00-\x1f\x9c]*`;
const sticky = (pattern: string): RegExp => new RegExp(pattern, 'uy');

const rules: readonly Rule[] = [
  [sticky(String.raw`[^\x1b\x80-\x9f\p{Cs}]+`), ([text]) => ({ kind: 'text', text: text ?? '' })],
  // Half a character at the very end waits for its other half; anywhere else it is broken.
  [sticky(String.raw`\p{Cs}(?!$)`), nothing],
  // The oldest mouse report is CSI M and three characters of any sort.
  [sticky(`${csi}M(?:[^\\x00-\\x1f]{3}|[^\\x00-\\x1f]{0,2}(?=[\\x00-\\x1f]))`), nothing],
  // The Linux console has [ behind the introducer, where it would otherwise end the sequence.
  [sticky(String.raw`${csi}(?!M)(\[*[ -?]*)([@-Z\\-~]|(?<=[ -?])\[)`), sequence('csi')],
  [sticky(String.raw`${csi}\[*[ -?]*(?=[^ -~])`), nothing],
  [sticky(String.raw`${ss3}([0-9;]*)([ -\/:<-~])`), sequence('ss3')],
  [sticky(String.raw`\x1bO(?=[^ -~])`), () => ({ kind: 'alt', character: 'O' })],
  [sticky(`${ss3}[0-9;]*(?=[^ -~])`), nothing],
  // Control strings end with BEL or ST; any other control breaks them off, so Ctrl-C is never swallowed.
  [
    sticky(
      String.raw`${controlString}(?:\x07|\x9c|\x1b\\|(?=[\x00-\x06\x08-\x1a\x1c-\x1f])|(?=\x1b(?:[^\\\p{Cs}]|\p{Cs}(?!$))))`,
    ),
    nothing,
  ],
  [sticky(String.raw`\x1b(?=\x1b[^\[O]|[\x80-\x8e\x90-\x9a\x9c-\x9f])`), () => ({ kind: 'escape' })],
  [
    sticky(String.raw`\x1b((?!\p{Cs}$)[^\x1b\[O\]PX^_\x80-\x9f])`),
    ([, character]) => ({ kind: 'alt', character: character ?? '' }),
  ],
  [sticky(String.raw`[\x80-\x8e\x91-\x97\x99\x9a\x9c]`), nothing],
];

/** The piece that begins at `from` and where it ends, or undefined while its end has not arrived. */
export function readToken(
  input: string,
  from: number,
): { readonly token: InputToken; readonly end: number } | undefined {
  for (const [pattern, make] of rules) {
    pattern.lastIndex = from;
    const parts = pattern.exec(input);
    if (parts) return { token: make(parts), end: pattern.lastIndex };
  }
  return undefined;
}

const longestRest = 256;

/**
 * Keeps an unfinished piece from growing without end: one that is longer than any key is replaced by a
 * short one of the same sort that stands for no key, so that its end is still recognised when it comes.
 */
export function shortenRest(rest: string): string {
  if (rest.length <= longestRest) return rest;
  if (/^\x1b?(?:\x1b\[|\x9b)/.test(rest)) return '\x1b[?';
  if (/^\x1b?(?:\x1bO|\x8f)/.test(rest)) return '\x1bO;';
  return rest.endsWith('\x1b') ? '\x1b_\x1b' : '\x1b_';
}
