import { useStdout } from 'ink';
import { type ReactNode, useEffect, useLayoutEffect, useRef, useState } from 'react';
import { Text } from './rows.tsx';

/** Size of the window, and how often it has changed. */
interface WindowSize {
  readonly columns: number;
  readonly rows: number;
  readonly resizes: number;
}

export function useWindowSize(): WindowSize {
  const { stdout } = useStdout();
  const [size, setSize] = useState(() => measure(stdout, 0));
  useEffect(() => {
    const update = (): void => setSize(({ resizes }) => measure(stdout, resizes + 1));
    stdout.on('resize', update);
    return () => {
      stdout.off('resize', update);
    };
  }, [stdout]);
  return size;
}

const measure = (stdout: NodeJS.WriteStream, resizes: number): WindowSize => ({
  columns: stdout.columns || 80,
  rows: stdout.rows || 24,
  resizes,
});

/** Every drawing copies what is handed to `Static`, and of a long day's transcript that would be much. */
const mostHandedOn = 200;

interface ShownFrom {
  /** The first transcript line to hand to `Static`. */
  readonly from: number;
  /** How often this began again: the key of a fresh `Static`. */
  readonly beginning: number;
  /** The window was blank then. */
  readonly isBlank: boolean;
}

/**
 * From where the transcript is shown. A resize clears the window, since a terminal breaks what was drawn for another
 * width; the lines that were last seen are then shown again. Lines drawn long ago are left out; those before
 * `linesBefore` are not at hand any more.
 */
export function useShownFrom(
  linesBefore: number,
  lineCount: number,
  resizes: number,
  rows: number,
): ShownFrom {
  const shown = useRef({ resizes: 0, drawn: 0, from: 0, beginning: 0, isBlank: true });
  const { current } = shown;
  const begin = (from: number): void => {
    const isBlank = current.resizes !== resizes;
    shown.current = { ...current, resizes, from, beginning: current.beginning + 1, isBlank };
  };
  if (current.resizes !== resizes) begin(Math.max(linesBefore, lineCount - rows));
  else if (current.drawn - current.from > mostHandedOn || current.from < linesBefore) begin(current.drawn);
  useLayoutEffect(() => {
    shown.current.drawn = lineCount;
  }, [lineCount]);
  return shown.current;
}

/** Below this nothing can be read: what is drawn would be higher than the window, or cut into letters. */
const smallest = { columns: 24, rows: 8 } as const;

interface Props {
  /** Said in place of the screen, as much of it as there is room for. */
  readonly tooSmall: (columns: number, rows: number) => string;
  readonly children: ReactNode;
}

export function BigEnough({ tooSmall, children }: Props) {
  const { columns, rows } = useWindowSize();
  if (columns >= smallest.columns && rows >= smallest.rows) return children;
  return <Text>{tooSmall(smallest.columns, smallest.rows).slice(0, columns)}</Text>;
}
