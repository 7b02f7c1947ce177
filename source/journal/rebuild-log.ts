/**
 * A log whose first line is damaged, begun again from the brief at hand: what was recorded behind it is sound by the sum
 * that the first line states. Half of that line must still say that it is the log of this very brief.
 */

import { headerJson } from './header.ts';
import { statedSum } from './line.ts';
import { type Beginning, beginLog, type LogState, recordEvent, takeLine, type Written } from './log-state.ts';
import { isInstant } from './notation.ts';
import { lineIn } from './read-log.ts';

const lineEnd = 10;

export interface Rebuilt {
  readonly bytes: Uint8Array;
  readonly state: LogState;
}

/** Null where it is the log of another brief, or nothing behind its first line is sound. */
export function rebuildLog(bytes: Uint8Array, beginning: Beginning): Rebuilt | null {
  const headerEnd = bytes.indexOf(lineEnd);
  const header = lineIn(bytes, 0, Math.max(0, headerEnd));
  const text = new TextDecoder().decode(header);
  const begun = beginLog({ ...beginning, ...fieldsIn(text) });
  if (!begun.ok || !isLogOf(text, begun.value)) return null;
  // Where the sum itself is what was damaged, that of the line as it should be is the one.
  for (const sum of [statedSum(header), begun.value.state.sum]) {
    const copied = sum === null ? null : copyEvents(bytes, headerEnd + 1, sum, begun.value);
    if (copied) return copied;
  }
  return null;
}

/** What else the line says, where it can be read. */
function fieldsIn(header: string): Partial<Beginning> {
  const textOf = (field: string): string | undefined =>
    new RegExp(`"${field}":"([^"\\\\]+)"`).exec(header)?.[1];
  const [program, startedAt] = [textOf('program'), textOf('startedAt')];
  return {
    ...(program === undefined ? {} : { program }),
    ...(startedAt !== undefined && isInstant(startedAt) ? { startedAt } : {}),
  };
}

function isLogOf(header: string, { state }: Written): boolean {
  const { brief, figures } = headerJson(state.header);
  return [brief, figures].some((part) => header.includes(JSON.stringify(part)));
}

/** Each line is read by the sums of the old log and written by those of the new one. */
function copyEvents(bytes: Uint8Array, begins: number, sum: number, begun: Written): Rebuilt | null {
  const lines = [begun.line];
  let read = { ...begun.state, sum };
  let { state } = begun;
  let from = begins;
  for (let end = bytes.indexOf(lineEnd, from); end >= 0; end = bytes.indexOf(lineEnd, from)) {
    const taken = takeLine(read, lineIn(bytes, from, end));
    if (!taken.ok) break;
    read = taken.value.state;
    const { event, afterMs } = taken.value.entry;
    const written = recordEvent(state, event, afterMs);
    if (!written.ok) break;
    lines.push(written.value.line);
    state = written.value.state;
    from = end + 1;
  }
  return lines.length === 1 ? null : { bytes: new TextEncoder().encode(lines.join('')), state };
}
