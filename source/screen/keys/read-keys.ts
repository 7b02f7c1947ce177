import { StringDecoder } from 'node:string_decoder';
import { createTimedDecoder, patientTimer, type SetTimer, type WaitsMs } from './decode-keys.ts';
import type { Arrival, Key } from './key.ts';

/** Runs the action when all input that is there has been read: an immediate alone comes before the next look at it. */
export const afterLookAtInput = (action: () => void): void => {
  setImmediate(() => setImmediate(action));
};

interface InputWatch {
  /** To be called as input is read. */
  readonly read: () => Arrival;
  readonly stop: () => void;
}

/** As long as any window of a switch, or the wait of a held key for its first repeat. */
const watchMs = 1000;
const shortestMs = 10;
/** The longer ago the last event, the less the time of the next has to be known. */
const lookEveryMs = (sinceReadMs: number): number => Math.max(shortestMs, sinceReadMs / 10);

/**
 * Since when an event may have waited to be read. A read alone does not tell: while the program draws, waits for the disk or
 * for a processor, a switch bounces unseen, and what it sent comes to hand when a second press would. So the input is
 * looked at again and again for a while after each read. Timer and look must run their actions after a look at the input.
 */
export function watchInput(
  now: () => number,
  setTimer: SetTimer,
  afterLook: (action: () => void) => void = afterLookAtInput,
): InputWatch {
  let readAt = Number.NEGATIVE_INFINITY;
  let emptyAt = readAt;
  let reads = 0;
  let cancel = (): void => {};

  const look = (): void => {
    emptyAt = now();
    const sinceReadMs = emptyAt - readAt;
    if (sinceReadMs < watchMs) cancel = setTimer(look, lookEveryMs(sinceReadMs));
  };
  const cameSince = (at: number): number => {
    const isWatched = emptyAt - readAt < watchMs;
    const isLate = at - emptyAt > 2 * lookEveryMs(emptyAt - readAt);
    return isWatched && isLate ? emptyAt : at;
  };
  return {
    read() {
      const at = now();
      const since = cameSince(at);
      readAt = at;
      emptyAt = at;
      cancel();
      cancel = () => {};
      const number = ++reads;
      afterLook(() => number === reads && look());
      return { since, at };
    },
    stop() {
      reads++;
      cancel();
    },
  };
}

const pasteOn = '\x1b[?2004h';
const pasteOff = '\x1b[?2004l';
// Flags of the kitty keyboard protocol: 1 tell keys apart, 2 report kinds, 8 text keys too, 16 with their text.
const kindsOn = '\x1b[>27u';
const kindsOff = '\x1b[<u';

type TerminalModes = {
  readonly set: () => void;
  readonly reset: () => void;
  readonly again: () => void;
  /** Asks for kinds of key events, or no longer. */
  readonly reportKinds: (on: boolean) => void;
};

/** Raw input and bracketed paste, on request also kinds of key events; `reset` puts back what was before. */
function terminalModes(
  stdin: NodeJS.ReadStream,
  output: { write(text: string): unknown },
  kindsWanted: boolean,
): TerminalModes {
  const wasRaw = stdin.isRaw;
  let reportsKinds = kindsWanted;
  // A terminal keeps a stack of them: what is pushed twice and popped once stays on in the shell.
  let isPushed = false;
  const pushKinds = (on: boolean): void => {
    if (on !== isPushed) output.write(on ? kindsOn : kindsOff);
    isPushed = on;
  };
  const set = (): void => {
    stdin.setRawMode(true);
    output.write(pasteOn);
    pushKinds(reportsKinds);
  };
  const reset = (): void => {
    pushKinds(false);
    output.write(pasteOff);
    stdin.setRawMode(wasRaw);
  };
  // Someone else has changed the terminal; Node believes that raw mode is on still and would do nothing.
  const again = (): void => {
    stdin.setRawMode(false);
    set();
  };
  const reportKinds = (on: boolean): void => {
    if (on === reportsKinds) return;
    reportsKinds = on;
    pushKinds(on);
  };
  return { set, reset, again, reportKinds };
}

export type ReadKeysOptions = {
  /** Where terminal modes are switched: standard output. */
  readonly output: { write(text: string): unknown };
  /** An Escape with nothing behind it for so long is the Escape key. */
  readonly escapeWaitMs?: number;
  /** A broken sequence is given up after so long, a paste after so long without more of it. */
  readonly sequenceWaitMs?: number;
  readonly pasteWaitMs?: number;
  /** Asks for repeats and releases by the kitty keyboard protocol; terminals without it ignore this. */
  readonly reportKinds?: boolean;
  /** Milliseconds of a clock that does not jump. */
  readonly now?: () => number;
  /** Runs the action after so long; what it returns cancels it. */
  readonly setTimer?: SetTimer;
  /** The program goes on after having been stopped; modes are set again, the screen is to be redrawn. */
  readonly onResume?: () => void;
  /** Standard input has ended: the terminal is gone. */
  readonly onEnd?: () => void;
};

type KeyReader = {
  /** Puts the terminal back as it was and lets go of standard input. Safe to call twice. */
  readonly stop: () => void;
  /** What Ctrl-Z does elsewhere: puts the terminal back and stops the process group until `fg`. */
  readonly suspend: () => void;
  /** Asks for repeats and releases, or no longer. */
  readonly reportKinds: (on: boolean) => void;
};

// A screen has it hidden; a shell wants it.
const cursorShown = '\x1b[?25h';
const cursorHidden = '\x1b[?25l';

const waits = (options: ReadKeysOptions): WaitsMs => ({
  escape: options.escapeWaitMs ?? 30,
  sequence: options.sequenceWaitMs ?? 250,
  paste: options.pasteWaitMs ?? 2000,
});

/**
 * The one owner of standard input: raw mode, bracketed paste, and every key with the time its input
 * arrived. Ctrl-C and Ctrl-Z come as keys. Needs a terminal (`stdin.isTTY`).
 */
export function readKeys(
  stdin: NodeJS.ReadStream,
  onKey: (key: Key, came: Arrival) => void,
  options: ReadKeysOptions,
): KeyReader {
  const { now = () => performance.now(), setTimer = patientTimer, onResume, onEnd } = options;
  const modes = terminalModes(stdin, options.output, options.reportKinds ?? false);
  const decoder = createTimedDecoder(onKey, waits(options), setTimer);
  const watch = watchInput(now, patientTimer);
  const utf8 = new StringDecoder('utf8');
  let isSuspended = false;

  const read = (chunk: Buffer | string): void =>
    decoder.feed(typeof chunk === 'string' ? chunk : utf8.write(chunk), watch.read());
  const end = (): void => onEnd?.();
  const resume = (): void => {
    if (isSuspended) options.output.write(cursorHidden);
    isSuspended = false;
    modes.again();
    onResume?.();
  };
  const suspend = (): void => {
    isSuspended = true;
    modes.reset();
    options.output.write(cursorShown);
    process.kill(0, 'SIGTSTP');
    // Without a shell that knows jobs nothing stops, and nobody sends SIGCONT.
    setImmediate(() => isSuspended && resume());
  };
  let isStopped = false;
  const stop = (): void => {
    if (isStopped) return;
    isStopped = true;
    isSuspended = false;
    decoder.stop();
    watch.stop();
    process.off('SIGCONT', resume);
    stdin.off('data', read).off('end', end).off('error', end).pause();
    modes.reset();
  };

  modes.set();
  process.on('SIGCONT', resume);
  // One who read before may have paused it.
  stdin.on('data', read).on('end', end).on('error', end).resume();
  return { stop, suspend, reportKinds: modes.reportKinds };
}
