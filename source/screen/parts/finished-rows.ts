/**
 * Rows that are finished before Ink sees them. Ink takes all that it draws apart into characters and puts it together
 * again, and of what a press costs that is the most. So a row goes through Ink as one character of a private plane of
 * Unicode, which takes one cell and which no text has, and it is put in its place as it is written.
 */
import { cellsOf } from '../../sheet/text.ts';

/** Plane 16 is for private use (The Unicode Standard, 23.5). More rows than are ever said and drawn at once can be told apart. */
const firstCharacter = 0x100000;
const mostRows = 4096;

interface FinishedRow {
  readonly text: string;
  readonly cells: number;
}

const rows: FinishedRow[] = [];
const places = new Map<string, number>();
let next = 0;

const style = /\u001b\[[0-9;]*m/g;

/** The character that stands for the row; those that have not been asked for longest are forgotten. */
export function standIn(text: string): string {
  let place = places.get(text);
  if (place === undefined) {
    place = next;
    next = (next + 1) % mostRows;
    const old = rows[place];
    if (old) places.delete(old.text);
    rows[place] = { text, cells: cellsOf(text.replace(style, '')) };
    places.set(text, place);
  }
  return String.fromCodePoint(firstCharacter + place);
}

const standIns = /[\u{100000}-\u{100fff}]/u;
const withGap = /([\u{100000}-\u{100fff}])( *)/gu;

/** The text with each row in the place of its character, and of the blanks for the rest of its cells. */
export const putIn = (text: string): string =>
  standIns.test(text)
    ? text.replace(withGap, (_, character: string, gap: string) => {
        const row = rows[(character.codePointAt(0) ?? 0) - firstCharacter];
        return row ? row.text + gap.slice(row.cells - 1) : gap;
      })
    : text;
