import { EventEmitter } from 'node:events';
import { createListeners } from './listeners.ts';

/** Input for Ink that holds at most one stroke. Ink reads in its `readable` handler and asks no more of it. */
class FieldInput extends EventEmitter {
  readonly isTTY = true;
  #stroke: string | null = null;

  offer(stroke: string): void {
    this.#stroke = stroke;
    this.emit('readable');
  }

  read(): string | null {
    const stroke = this.#stroke;
    this.#stroke = null;
    return stroke;
  }

  setEncoding(): this {
    return this;
  }

  setRawMode(): this {
    return this;
  }

  ref(): this {
    return this;
  }

  unref(): this {
    return this;
  }
}

export type FieldStream = {
  /** For Ink's `render(…, { stdin })`. */
  readonly stdin: NodeJS.ReadStream;
  /** Puts strokes behind those that wait: text, Backspace, Left or Right, each a string of its own. */
  readonly send: (strokes: readonly string[]) => void;
  /** Drops what waits. */
  readonly clear: () => void;
  /** How many strokes have been handed to Ink; `subscribe` hears of each. */
  readonly handed: () => number;
  readonly subscribe: (listener: () => void) => () => void;
  /** To be called when the drawing that follows stroke number `count` is complete. */
  readonly drawn: (count: number) => void;
  /** Nothing waits and the last stroke has been drawn. */
  readonly isIdle: () => boolean;
};

/**
 * An input stream for Ink that hands over one stroke at a time. ink-text-input reads its value and cursor
 * from the last drawing, and Ink attaches its handler anew in an effect after each one: a stroke that comes
 * in between is lost or put in the wrong place. So the next one waits for `drawn`, which must come from an
 * effect of a component around the field (effects of children run first), and drawing again must be asked
 * for through `subscribe`, since moving the cursor redraws nothing but the field itself. Ink's own render
 * callback comes too early for this, before effects. Should `drawn` not come within `drawWaitMs`, the next
 * stroke is handed over all the same.
 */
export function createFieldStream({ drawWaitMs = 200 }: { readonly drawWaitMs?: number } = {}): FieldStream {
  const input = new FieldInput();
  const { subscribe, tellAll } = createListeners();
  let queue: string[] = [];
  let count = 0;
  let isOut = false;
  let timer: NodeJS.Timeout | undefined;

  const handNext = (): void => {
    if (isOut || input.listenerCount('readable') === 0) return;
    const stroke = queue.shift();
    if (stroke === undefined) return;
    isOut = true;
    count++;
    timer = setTimeout(settle, drawWaitMs, count);
    timer.unref();
    input.offer(stroke);
    tellAll();
  };
  const settle = (drawnCount: number): void => {
    if (!isOut || drawnCount !== count) return;
    clearTimeout(timer);
    isOut = false;
    // Not at once: we are inside React's effects here.
    setImmediate(handNext);
  };
  // Ink listens only while a field is there, and its field only a moment later.
  input.on('newListener', (event) => {
    if (event === 'readable') setImmediate(handNext);
  });

  return {
    stdin: input as unknown as NodeJS.ReadStream,
    send(strokes) {
      queue = [...queue, ...strokes];
      if (strokes.length > 0) setImmediate(handNext);
    },
    clear() {
      queue = [];
    },
    handed: () => count,
    subscribe,
    drawn: settle,
    isIdle: () => !isOut && queue.length === 0,
  };
}
