import { createInterface } from 'node:readline';
import { Transform } from 'node:stream';

/** Lines of a stream, one whenever it is asked for; null at its end. Several may read from it in turn, and none is lost. */
export interface LineSource {
  readonly next: () => Promise<string | null>;
  readonly close: () => void;
  /** A line did not end: the stream was given up, which counts as its end. */
  readonly isEndless: () => boolean;
}

/** No command and no paste is longer (a rule of thumb). */
const mostLineBytes = 1000 * 1024;
const lineEnd = 10;

export function createLineSource(input: NodeJS.ReadableStream): LineSource {
  let isEndless = false;
  const checked = endAtEndlessLine(() => {
    isEndless = true;
    input.unpipe(checked);
    checked.end();
  });
  // A terminal that goes away is the end of what is typed there.
  input.on('error', () => checked.end());
  const reader = createInterface({ input: input.pipe(checked), crlfDelay: Number.POSITIVE_INFINITY });
  const lines = reader[Symbol.asyncIterator]();
  return {
    next: async () => {
      const { done, value } = await lines.next();
      return done || isEndless ? null : value;
    },
    // Without this a terminal would be read from for ever.
    close: () => {
      reader.close();
      input.unpipe(checked);
      input.pause();
    },
    isEndless: () => isEndless,
  };
}

function endAtEndlessLine(onEndless: () => void): Transform {
  let length = 0;
  return new Transform({
    transform: (chunk: Buffer, _, pass) => {
      const last = chunk.lastIndexOf(lineEnd);
      length = last < 0 ? length + chunk.length : chunk.length - last - 1;
      if (length <= mostLineBytes) return pass(null, chunk);
      pass();
      onEndless();
    },
  });
}
