import { Box, Text } from 'ink';
import type { FieldStream } from './field-stream.ts';
import { LineField } from './line-field.tsx';
import type { Prompt } from './prompt.ts';

interface Props {
  readonly prompt: Prompt;
  readonly field: FieldStream;
  readonly placeholder: string;
}

/** The words that Tab found, and the line being typed: two rows below everything else. */
export const PromptRows = ({ prompt, field, placeholder }: Props) => (
  <>
    <Text dimColor wrap="truncate-end">
      {prompt.choices.length > 0 ? `       ${prompt.choices.join('  ')}` : ' '}
    </Text>
    <Box>
      <Box flexShrink={0} width={2}>
        <Text bold>{'> '}</Text>
      </Box>
      <LineField line={prompt.line} field={field} placeholder={placeholder} />
    </Box>
  </>
);
