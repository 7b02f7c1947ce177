import { Box, Text } from 'ink';
import type { Line } from '../../chat/line.ts';
import { Wrapped } from './wrapped.tsx';

const marks: Readonly<Record<Line['tone'], string>> = {
  typed: '> ',
  done: '+ ',
  answer: '  ',
  caution: '! ',
  fault: '? ',
};

const markWidth = 2;

/** One line of the transcript; its mark tells the tone where there is no colour. What is set in stays so when it wraps. */
export function TranscriptLine({ line, columns }: { readonly line: Line; readonly columns: number }) {
  const quiet = line.tone === 'done' || line.tone === 'typed';
  const text = line.text.trimStart();
  const before = markWidth + line.text.length - text.length;
  return (
    <Box width={columns}>
      <Box width={before} flexShrink={0}>
        <Text dimColor={quiet}>{marks[line.tone]}</Text>
      </Box>
      <Box flexGrow={1} flexShrink={1}>
        <Wrapped
          text={text}
          width={columns - before}
          dimColor={quiet}
          {...(line.tone === 'fault' ? { color: 'yellow' } : {})}
        />
      </Box>
    </Box>
  );
}
