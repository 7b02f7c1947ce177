import { PassThrough, Writable } from 'node:stream';
import { type Instance, render } from 'ink';
import type { ReactNode } from 'react';
import { screenOutput } from '../../../source/screen/parts/screen-output.ts';
import { createEmulator, type Emulator } from './emulator.ts';

export type ScreenOptions = {
  readonly columns?: number;
  readonly rows?: number;
  /** Input for Ink in place of the rig's own, to which `send` writes. */
  readonly stdin?: NodeJS.ReadStream;
};

export type Screen = Pick<Emulator, 'screen' | 'transcript' | 'raw' | 'clears' | 'waitFor' | 'resize'> & {
  readonly send: (text: string) => void;
  readonly rerender: (node: ReactNode) => void;
  readonly unmount: () => void;
  readonly exited: Promise<unknown>;
};

class EmulatorOutput extends Writable {
  readonly isTTY = true;
  readonly #emulator: Emulator;

  constructor(emulator: Emulator) {
    super({ decodeStrings: false });
    this.#emulator = emulator;
  }

  get columns(): number {
    return this.#emulator.size().columns;
  }

  get rows(): number {
    return this.#emulator.size().rows;
  }

  override _write(chunk: string | Buffer, _encoding: string, done: () => void): void {
    this.#emulator.write(String(chunk));
    done();
  }
}

class TypedInput extends PassThrough {
  readonly isTTY = true;
  setRawMode = (): this => this;
  ref = (): this => this;
  unref = (): this => this;
}

// Ink decides this once, when it is loaded; a test that goes on regardless would wait for nothing.
function refuseCi(): void {
  const off = ['0', 'false'];
  const names = ['CI', 'CONTINUOUS_INTEGRATION'].filter((name) => name in process.env);
  if (names.some((name) => !off.includes(process.env[name] ?? ''))) {
    throw new Error(`${names.join(' and ')} must be "false" when Ink is loaded, or it draws nothing`);
  }
}

/** Draws a component with Ink on a terminal emulator in this process: real rows, wrapping, scrolling. */
export function mountScreen(node: ReactNode, options: ScreenOptions = {}): Screen {
  refuseCi();
  const emulator = createEmulator(options.columns ?? 80, options.rows ?? 24, true);
  const output = new EmulatorOutput(emulator);
  const input = new TypedInput();
  // As the program has it: the changed Ink does not say again what a cleared terminal would have lost.
  const stdout = screenOutput(output as unknown as NodeJS.WriteStream);
  const app: Instance = render(node, {
    stdout,
    stderr: stdout,
    stdin: options.stdin ?? (input as unknown as NodeJS.ReadStream),
    exitOnCtrlC: false,
    patchConsole: false,
    maxFps: 1000,
  });
  return {
    ...emulator,
    send: (text) => void input.write(text),
    resize(columns, rows) {
      emulator.resize(columns, rows);
      output.emit('resize');
    },
    rerender: app.rerender,
    unmount: app.unmount,
    exited: app.waitUntilExit(),
  };
}
