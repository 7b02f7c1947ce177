import { useStdout } from 'ink';
import { useEffect, useRef, useState } from 'react';

/** Size of the window, and how often it has changed. */
export interface WindowSize {
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

/**
 * The first transcript line to show. A resize clears the window, since a terminal breaks what was drawn for another
 * width; the lines that were last seen are then shown again.
 */
export function useShownFrom(lineCount: number, resizes: number, rows: number): number {
  const shown = useRef({ resizes: 0, from: 0 });
  if (shown.current.resizes !== resizes) shown.current = { resizes, from: Math.max(0, lineCount - rows) };
  return shown.current.from;
}
