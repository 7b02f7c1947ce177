import type { TextProps } from 'ink';
import { wrap } from '../../wording/page.ts';
import { Text } from './text.tsx';

interface Props extends Omit<TextProps, 'children' | 'wrap'> {
  readonly text: string;
  readonly width: number;
}

/** A text in rows of whole words. Ink itself would begin a row with the space at which it broke. */
export const Wrapped = ({ text, width, ...style }: Props) => (
  <Text {...style}>{wrap(text, width).join('\n')}</Text>
);

/** The whole text, or where there is no room for it one row. */
export const Fitting = ({ whole, ...props }: Props & { readonly whole: boolean }) => {
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
