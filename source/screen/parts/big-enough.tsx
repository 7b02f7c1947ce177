import type { ReactNode } from 'react';
import { Text } from './text.tsx';
import { useWindowSize } from './use-window-size.ts';

/** Below this nothing can be read: what is drawn would be higher than the window, or cut into letters. */
export const smallest = { columns: 24, rows: 8 } as const;

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
