/**
 * The prompt's line, drawn by ink-text-input, cursor and all. Keys never reach it: `editLine` changes the line at once,
 * and the field shows what came of it.
 *
 * Its own reading of keys would not do here. It takes text and cursor from its last drawing, so letters that come between
 * two drawings are lost or change places: of 200 letters sent 1 ms apart it showed 103 to 118, out of order. And what is typed would be
 * known only once it is drawn, while the very next press of a foot switch must know whether the line is empty.
 */

import { Box } from 'ink';
import TextInput from 'ink-text-input';
import { memo, useLayoutEffect, useState } from 'react';
import { harmless } from '../../shared/plain-text.ts';
import type { Prompt, TypedLine } from './prompt.ts';
import { Text } from './rows.tsx';

interface Props {
  readonly line: TypedLine;
  readonly placeholder?: string;
}

const nothing = (): void => undefined;

/** A changed line is a fresh field; a press leaves the line as it is, and the field is not drawn again. */
export const PromptField = memo(function PromptField({ line, placeholder = '' }: Props) {
  return (
    <Field
      key={`${line.cursor} ${line.text}`}
      line={line}
      placeholder={line.text === '' ? placeholder : ''}
    />
  );
});

/** A fresh field has its cursor at the end of its text, and leaves it there when more is put behind it. */
function Field({ line, placeholder }: Required<Props>) {
  const [text, setText] = useState(harmless(line.text.slice(0, line.cursor)));
  useLayoutEffect(() => setText(harmless(line.text)), [line]);
  return <TextInput value={text} onChange={nothing} placeholder={harmless(placeholder)} />;
}

/** The line being typed, behind its sign. */
export const PromptRow = (field: Props) => (
  <Box>
    <Box flexShrink={0} width={2}>
      <Text bold>{'> '}</Text>
    </Box>
    <PromptField {...field} />
  </Box>
);

interface PromptRowsProps {
  readonly prompt: Prompt;
  readonly placeholder: string;
}

/** The words that Tab found, and the line being typed: two rows below everything else. */
export const PromptRows = ({ prompt, placeholder }: PromptRowsProps) => (
  <>
    <Text dimColor wrap="truncate-end">
      {prompt.choices.length > 0 ? `       ${prompt.choices.join('  ')}` : ' '}
    </Text>
    <PromptRow line={prompt.line} placeholder={placeholder} />
  </>
);
