import { createInterface } from 'node:readline';

/** Lines of a stream, one whenever it is asked for; null at its end. Several may read from it in turn, and none is lost. */
export interface LineSource {
  readonly next: () => Promise<string | null>;
  readonly close: () => void;
}

export function createLineSource(input: NodeJS.ReadableStream): LineSource {
  const reader = createInterface({ input, crlfDelay: Number.POSITIVE_INFINITY });
  const lines = reader[Symbol.asyncIterator]();
  return {
    next: async () => {
      const { done, value } = await lines.next();
      return done ? null : value;
    },
    // Without this a terminal would be read from for ever.
    close: () => reader.close(),
  };
}
