import type { Said } from '../../chat/talk.ts';
import type { Line } from '../../sheet/terminal/ansi.ts';
import { wrap } from '../../wording/page.ts';
import { colourDepth, Rows, wrappedRows } from './rows.tsx';

const marks: Readonly<Record<Said['tone'], string>> = {
  typed: '> ',
  done: '+ ',
  answer: '  ',
  caution: '! ',
  fault: '? ',
};

const markWidth = 2;

/** What was said is quieter than what is to do: dim, save for cautions and faults. */
const loud: ReadonlySet<Said['tone']> = new Set(['caution', 'fault']);

/** The width of the mark, and of the spaces with which the text is set in. */
const widthBefore = ({ text }: Said): number => markWidth + text.length - text.trimStart().length;

export const transcriptLineRows = (line: Said, columns: number): number =>
  wrappedRows(line.text.trimStart(), columns - widthBefore(line));

/** One line of the transcript; its mark tells the tone where there is no colour. What is set in stays so when it wraps. */
export function TranscriptLine({ line, columns }: { readonly line: Said; readonly columns: number }) {
  const style = loud.has(line.tone) ? { bold: true } : { dim: true };
  const before = widthBefore(line);
  const rows = wrap(line.text.trimStart(), columns - before).map((text, i): Line => {
    const mark = (i === 0 ? marks[line.tone] : '').padEnd(before);
    return [{ text: mark + text, ...style }];
  });
  return <Rows rows={rows} depth={colourDepth(process.env)} />;
}
