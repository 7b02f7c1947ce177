import { Box } from 'ink';
import type { Said } from '../../chat/transcript.ts';
import { Text, Wrapped, wrappedRows } from './rows.tsx';

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
  const style = loud.has(line.tone) ? { bold: true } : { dimColor: true };
  const before = widthBefore(line);
  return (
    <Box width={columns}>
      <Box width={before} flexShrink={0}>
        <Text {...style}>{marks[line.tone]}</Text>
      </Box>
      <Box flexGrow={1} flexShrink={1}>
        <Wrapped text={line.text.trimStart()} width={columns - before} {...style} />
      </Box>
    </Box>
  );
}
