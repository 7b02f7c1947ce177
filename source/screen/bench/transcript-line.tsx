import { Box, Text } from 'ink';
import type { Line } from '../../chat/line.ts';

const marks: Readonly<Record<Line['tone'], string>> = {
  typed: '> ',
  done: '+ ',
  answer: '  ',
  caution: '! ',
  fault: '? ',
};

/** One line of the transcript; its mark tells the tone where there is no colour. */
export function TranscriptLine({ line, columns }: { readonly line: Line; readonly columns: number }) {
  const quiet = line.tone === 'done' || line.tone === 'typed';
  return (
    <Box width={columns}>
      <Box width={2} flexShrink={0}>
        <Text dimColor={quiet}>{marks[line.tone]}</Text>
      </Box>
      <Box flexGrow={1} flexShrink={1}>
        <Text dimColor={quiet} {...(line.tone === 'fault' ? { color: 'yellow' } : {})}>
          {line.text}
        </Text>
      </Box>
    </Box>
  );
}
