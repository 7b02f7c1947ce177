const pasteOn = '\x1b[?2004h';
const pasteOff = '\x1b[?2004l';
// Flags of the kitty keyboard protocol: 1 tell keys apart, 2 report kinds, 8 text keys too, 16 with their text.
const kindsOn = '\x1b[>27u';
const kindsOff = '\x1b[<u';

export type TerminalModes = {
  readonly set: () => void;
  readonly reset: () => void;
  readonly again: () => void;
  /** Asks for kinds of key events, or no longer. */
  readonly reportKinds: (on: boolean) => void;
};

/** Raw input and bracketed paste, on request also kinds of key events; `reset` puts back what was before. */
export function terminalModes(
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
