import { type InputToken, readToken, shortenRest } from './input-grammar.ts';
import { type Arrival, type Key, makeKey } from './key.ts';
import { decodeCsi, decodeSs3 } from './sequence-keys.ts';
import { pasteKey, textKeys, typedKey, withAlt } from './text-keys.ts';

/**
 * `escape`: what has arrived is a key of its own if nothing follows at once. `sequence`: the rest of a
 * control sequence is to come. `paste`: the end of a paste is.
 */
export type Waiting = 'nothing' | 'escape' | 'sequence' | 'paste';

type KeyDecoder = {
  readonly push: (chunk: string) => readonly Key[];
  /** Gives up waiting: a lone Escape becomes a key, a paste ends, a broken sequence is dropped. */
  readonly flush: () => readonly Key[];
  readonly waitingFor: () => Waiting;
};

type State = { readonly rest: string; readonly paste?: string; readonly afterReturn: boolean };
type Decoded = { readonly state: State; readonly keys: readonly Key[] };

const idle: State = { rest: '', afterReturn: false };
const pasteEnd = '\x1b[201~';
const longestPaste = 65_536;

const isPasteStart = (token: InputToken): boolean =>
  token.kind === 'csi' && token.final === '~' && token.body === '200';

function sequenceKey(token: InputToken): Key | undefined {
  switch (token.kind) {
    case 'csi':
      return decodeCsi(token.body, token.final);
    case 'ss3':
      return decodeSs3(token.body, token.final);
    case 'alt':
      return withAlt(typedKey(token.character));
    case 'escape':
      return makeKey('escape');
    default:
      return undefined;
  }
}

function tokenKeys(token: InputToken, afterReturn: boolean): readonly Key[] {
  if (token.kind === 'text') return textKeys(afterReturn ? token.text.replace(/^\n/, '') : token.text);
  const key = sequenceKey(token);
  if (!key) return [];
  const alt = 'alt' in token && token.alt;
  return [(alt && withAlt(key)) || key];
}

const endsInReturn = (token: InputToken): boolean => token.kind === 'text' && token.text.endsWith('\r');

/** Takes one piece off the input, or undefined when no whole piece is there. */
function takePiece(
  state: State,
  input: string,
  from: number,
): (Decoded & { readonly end: number }) | undefined {
  const found = readToken(input, from);
  if (!found) return undefined;
  const { token, end } = found;
  if (isPasteStart(token)) return { state: { rest: '', paste: '', afterReturn: false }, keys: [], end };
  const keys = tokenKeys(token, state.afterReturn);
  return { state: { rest: '', afterReturn: endsInReturn(token) }, keys, end };
}

/** Collects a paste up to its end mark; without one all but the characters that may begin the mark. */
function takePaste(paste: string, input: string, from: number): Decoded & { readonly end: number } {
  const mark = input.indexOf(pasteEnd, from);
  const end = mark === -1 ? Math.max(from, input.length - pasteEnd.length + 1) : mark;
  const text = (paste + input.slice(from, end)).slice(0, longestPaste);
  if (mark === -1) return { state: { rest: '', paste: text, afterReturn: false }, keys: [], end };
  return { state: idle, keys: [pasteKey(text)], end: mark + pasteEnd.length };
}

function pushChunk(before: State, chunk: string): Decoded {
  const input = before.rest + chunk;
  const keys: Key[] = [];
  let state = before;
  let from = 0;
  while (from < input.length) {
    const { paste } = state;
    const step = paste === undefined ? takePiece(state, input, from) : takePaste(paste, input, from);
    if (!step || step.end === from) break;
    for (const key of step.keys) keys.push(key);
    state = step.state;
    from = step.end;
  }
  return { state: { ...state, rest: shortenRest(input.slice(from)) }, keys };
}

function waitingFor({ rest, paste }: State): Waiting {
  if (paste !== undefined) return 'paste';
  if (rest === '') return 'nothing';
  return /^\x1b(?:\x1b|[[O\]PX^_])?$/.test(rest) ? 'escape' : 'sequence';
}

function flushKeys(state: State): readonly Key[] {
  const { rest, paste } = state;
  const waiting = waitingFor(state);
  if (waiting === 'paste') return [pasteKey(paste + rest)];
  if (waiting !== 'escape') return [];
  if (rest === '\x1b' || rest === '\x1b\x1b') return [...rest].map(() => makeKey('escape'));
  const key = withAlt(typedKey(rest.slice(1)));
  return key ? [key] : [];
}

/**
 * Turns terminal input into keys. Input may be cut anywhere, since only `flush` lets time decide; the one
 * thing a cut changes is whether a long run of plain text without bracketed paste is one `paste` or single
 * keys. What is no known key is swallowed, never typed. A paste holds at most 65,536 characters; no input
 * makes it throw.
 */
export function createKeyDecoder(): KeyDecoder {
  let state = idle;
  return {
    push(chunk) {
      const step = pushChunk(state, chunk);
      state = step.state;
      return step.keys;
    },
    flush() {
      const keys = flushKeys(state);
      if (state.rest !== '' || state.paste !== undefined) state = idle;
      return keys;
    },
    waitingFor: () => waitingFor(state),
  };
}

export type SetTimer = (action: () => void, waitMs: number) => () => void;
export type WaitsMs = Readonly<Record<Exclude<Waiting, 'nothing'>, number>>;
type TimedDecoder = {
  readonly feed: (chunk: string, came: Arrival) => void;
  readonly stop: () => void;
};

// Timers are served before input that is already there: look at the input once more before giving up.
export const patientTimer: SetTimer = (action, waitMs) => {
  let look: NodeJS.Immediate | undefined;
  const timer = setTimeout(() => {
    look = setImmediate(action);
  }, waitMs);
  return () => {
    clearTimeout(timer);
    clearImmediate(look);
  };
};

/**
 * The key decoder with a clock: gives up waiting after `waitsMs`. Each key comes with the time its input
 * arrived, a lone Escape with that of the Escape.
 */
export function createTimedDecoder(
  onKey: (key: Key, came: Arrival) => void,
  waitsMs: WaitsMs,
  setTimer: SetTimer,
): TimedDecoder {
  const decoder = createKeyDecoder();
  let waiting: Waiting = 'nothing';
  let cancelTimer = (): void => {};
  let isStopped = false;

  const deliver = (keys: readonly Key[], came: Arrival): void => {
    for (const key of keys) if (!isStopped) onKey(key, came);
  };
  const giveUp = (came: Arrival) => (): void => {
    waiting = 'nothing';
    deliver(decoder.flush(), came);
  };
  const keepTime = (came: Arrival): void => {
    const before = waiting;
    waiting = decoder.waitingFor();
    // Typing on does not keep a broken sequence alive.
    if (waiting === 'sequence' && before === 'sequence') return;
    cancelTimer();
    cancelTimer = waiting === 'nothing' ? () => {} : setTimer(giveUp(came), waitsMs[waiting]);
  };
  return {
    feed(chunk, came) {
      const keys = decoder.push(chunk);
      keepTime(came);
      deliver(keys, came);
    },
    stop() {
      isStopped = true;
      cancelTimer();
    },
  };
}
