import xterm from '@xterm/headless';

export type Wanted = string | RegExp | ((screen: string) => boolean);

export type Emulator = {
  /** Feeds what a program writes. */
  readonly write: (data: string) => void;
  /** The rows in view, without blanks at line ends and blank lines at the end. */
  readonly screen: () => string;
  /** The same with all that has scrolled away. */
  readonly transcript: () => string;
  /** Everything written so far, control sequences and all. */
  readonly raw: () => string;
  /** How often the scrollback was cleared. */
  readonly clears: () => number;
  /** Resolves with the screen as soon as it is as wanted; looks each time something has been drawn. */
  readonly waitFor: (wanted: Wanted, timeoutMs?: number) => Promise<string>;
  readonly resize: (columns: number, rows: number) => void;
  readonly size: () => { readonly columns: number; readonly rows: number };
  /** The terminal's replies to queries. */
  readonly onReply: (listener: (reply: string) => void) => void;
  /** Nothing more will be drawn: resolves when the last of it is, and whoever still waits fails. */
  readonly end: (reason: string) => Promise<void>;
};

type Waiter = { readonly look: (screen: string) => boolean; readonly fail: (reason: string) => void };

const meets = (wanted: Wanted, screen: string): boolean => {
  if (typeof wanted === 'string') return screen.includes(wanted);
  return wanted instanceof RegExp ? wanted.test(screen) : wanted(screen);
};

export function createEmulator(columns: number, rows: number, convertEol: boolean): Emulator {
  const terminal = new xterm.Terminal({
    cols: columns,
    rows,
    convertEol,
    allowProposedApi: true,
    scrollback: 20_000,
  });
  const waiters = new Set<Waiter>();
  let raw = '';
  let ended: string | undefined;

  const lines = (from: number, to: number): string => {
    const { active } = terminal.buffer;
    const texts = Array.from({ length: to - from }, (_, row) => active.getLine(from + row));
    return texts
      .map((line) => line?.translateToString(true) ?? '')
      .join('\n')
      .trimEnd();
  };
  const screen = (): string => {
    const top = terminal.buffer.active.baseY;
    return lines(top, top + terminal.rows);
  };
  const look = (): void => {
    // Half of a drawing is not for the eye.
    if (terminal.modes.synchronizedOutputMode) return;
    const now = screen();
    for (const waiter of waiters) if (waiter.look(now)) waiters.delete(waiter);
  };
  const waitFor = (wanted: Wanted, timeoutMs = 10_000): Promise<string> =>
    new Promise((resolve, reject) => {
      const fail = (reason: string): void => {
        clearTimeout(timer);
        waiters.delete(waiter);
        reject(new Error(`${reason} while waiting for ${wanted}; the screen was:\n${screen()}`));
      };
      const waiter: Waiter = {
        look(now) {
          if (!meets(wanted, now)) return false;
          clearTimeout(timer);
          resolve(now);
          return true;
        },
        fail,
      };
      const timer = setTimeout(fail, timeoutMs, `${timeoutMs} ms went by`);
      waiters.add(waiter);
      look();
      if (ended !== undefined && waiters.has(waiter)) fail(ended);
    });

  return {
    write(data) {
      raw += data;
      terminal.write(data, look);
    },
    screen,
    transcript: () => lines(0, terminal.buffer.active.length),
    raw: () => raw,
    clears: () => raw.split('\x1b[3J').length - 1,
    waitFor,
    resize: (newColumns, newRows) => terminal.resize(newColumns, newRows),
    size: () => ({ columns: terminal.cols, rows: terminal.rows }),
    onReply: (listener) => void terminal.onData(listener),
    end: (reason) =>
      new Promise((resolve) => {
        terminal.write('', () => {
          look();
          ended = reason;
          for (const waiter of waiters) waiter.fail(reason);
          resolve();
        });
      }),
  };
}
