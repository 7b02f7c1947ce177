import { Box } from 'ink';
import type { Prompt } from './prompt.ts';
import { PromptField } from './prompt-field.tsx';
import { Text } from './text.tsx';

interface Props {
  readonly prompt: Prompt;
  readonly placeholder: string;
}

/** The words that Tab found, and the line being typed: two rows below everything else. */
export const PromptRows = ({ prompt, placeholder }: Props) => (
  <>
    <Text dimColor wrap="truncate-end">
      {prompt.choices.length > 0 ? `       ${prompt.choices.join('  ')}` : ' '}
    </Text>
    <Box>
      <Box flexShrink={0} width={2}>
        <Text bold>{'> '}</Text>
      </Box>
      <PromptField line={prompt.line} placeholder={placeholder} />
    </Box>
  </>
);
