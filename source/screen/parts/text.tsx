/** All text that a screen shows goes through here: what came from outside can be read, and cannot act on the terminal. */
import { Text as InkText, type TextProps } from 'ink';
import { harmless } from '../../shared/plain-text.ts';

interface Props extends Omit<TextProps, 'children'> {
  readonly children: string;
}

export const Text = ({ children, ...style }: Props) => <InkText {...style}>{harmless(children)}</InkText>;

/** Rows that `formatLine` has coloured: it lets nothing else through. */
export const Painted = ({ children, ...style }: Props) => <InkText {...style}>{children}</InkText>;
