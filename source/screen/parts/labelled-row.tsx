import { Box } from 'ink';
import type { ReactNode } from 'react';
import { Text } from './text.tsx';

/** Width of the labels' column, the space behind it included. */
export const labelWidth = 7;

interface Props {
  /** Null where there is no room for a label's column. */
  readonly label: string | null;
  readonly minHeight?: number;
  readonly children: ReactNode;
}

/** A row of the bench: a quiet label, and what it is about beside it. */
export function LabelledRow({ label, minHeight = 1, children }: Props) {
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
