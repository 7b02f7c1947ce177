import { EventEmitter } from 'node:events';

/** The input that Ink is given: a terminal on which nobody types, since all keys go to `readKeys`. */
class SilentInput extends EventEmitter {
  readonly isTTY = true;
  readonly read = (): null => null;
  readonly setEncoding = (): this => this;
  readonly setRawMode = (): this => this;
  readonly ref = (): this => this;
  readonly unref = (): this => this;
}

export const silentInput = (): NodeJS.ReadStream => new SilentInput() as unknown as NodeJS.ReadStream;
