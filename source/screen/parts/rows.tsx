/** Texts and rows of a screen. What came from outside can be read, and cannot act on the terminal. */
import { Box, Text as InkText, type TextProps } from 'ink';
import type { ReactNode } from 'react';
import type { Said } from '../../chat/talk.ts';
import type { ColourDepth } from '../../shared/colour.ts';
import { harmless } from '../../shared/plain-text.ts';
import { formatLine, type Line } from '../../sheet/terminal/ansi.ts';
import { wrap } from '../../wording/page.ts';
import { standIn } from './screen-output.ts';

interface OwnTextProps extends Omit<TextProps, 'children'> {
  readonly children: string;
}

export const Text = ({ children, ...style }: OwnTextProps) => (
  <InkText {...style}>{harmless(children)}</InkText>
);

/** Rows that `formatLine` has coloured: it lets nothing else through. */
const Painted = ({ children, ...style }: OwnTextProps) => <InkText {...style}>{children}</InkText>;

/** Rows of cells as they are. Ink's own styles are not used: it knows neither 256 colours as such nor bold without colours. */
export const Rows = ({ rows, depth }: { readonly rows: readonly Line[]; readonly depth: ColourDepth }) => (
  <FinishedRows rows={rows.map((line) => formatLine(line, depth))} />
);

export const FinishedRows = ({ rows }: { readonly rows: readonly string[] }) => (
  <Painted>{rows.map((row) => (row === '' ? ' ' : standIn(row))).join('\n')}</Painted>
);

interface WrappedProps extends Omit<TextProps, 'children' | 'wrap'> {
  readonly text: string;
  readonly width: number;
}

/** A text in rows of whole words. Ink itself would begin a row with the space at which it broke. */
export const Wrapped = ({ text, width, ...style }: WrappedProps) => (
  <Text {...style}>{wrap(text, width).join('\n')}</Text>
);

/** The whole text, or where there is no room for it one row. */
export const Fitting = ({ whole, ...props }: WrappedProps & { readonly whole: boolean }) => {
  if (whole) return <Wrapped {...props} />;
  const { text, width: _, ...style } = props;
  return (
    <Text {...style} wrap="truncate-end">
      {text}
    </Text>
  );
};

/** Rows that the text takes. */
export const wrappedRows = (text: string, width: number): number => wrap(text, width).length;

/** Width of the labels' column, the space behind it included. */
export const labelWidth = 7;

interface LabelledRowProps {
  /** Null where there is no room for a label's column. */
  readonly label: string | null;
  readonly minHeight?: number;
  readonly children: ReactNode;
}

/** A row of the bench: a quiet label, and what it is about beside it. */
export function LabelledRow({ label, minHeight = 1, children }: LabelledRowProps) {
  return (
    <Box minHeight={minHeight} flexShrink={0}>
      {label === null ? null : (
        <Box width={labelWidth} flexShrink={0}>
          <Text dimColor>{label}</Text>
        </Box>
      )}
      <Box flexDirection="column" flexGrow={1} flexShrink={1}>
        {children}
      </Box>
    </Box>
  );
}

/** Colours that the terminal has, by what its environment says of it. */
export function colourDepth({ NO_COLOR, COLORTERM, TERM }: NodeJS.ProcessEnv): ColourDepth {
  if (NO_COLOR || TERM === 'dumb') return 'none';
  if (COLORTERM === 'truecolor' || COLORTERM === '24bit') return 'true';
  return TERM?.includes('256') ? '256' : '16';
}

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
