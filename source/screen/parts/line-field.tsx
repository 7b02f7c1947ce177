import TextInput from 'ink-text-input';
import { memo, useEffect, useLayoutEffect, useRef, useState, useSyncExternalStore } from 'react';
import type { Line } from '../keys/edit-line.ts';
import type { FieldStream } from './field-stream.ts';
import { fieldStrokes } from './field-strokes.ts';

type Props = { readonly line: Line; readonly field: FieldStream; readonly placeholder?: string };
/** What ink-text-input has, and what is still to be put behind it. */
type Shown = { readonly beginning: number; readonly text: string; readonly rest: string };

// More than these are slower than a fresh field.
const mostStrokes = 3;

const begun = ({ text, cursor }: Line, beginning: number): Shown => ({
  beginning,
  text: text.slice(0, cursor),
  rest: text.slice(cursor),
});

/**
 * Shows a line in ink-text-input, cursor and all. The line is the truth and changes at once, by `editLine`
 * or from outside; the field follows by being typed into through `field`, whose `stdin` Ink reads. For
 * greater changes, or should the two ever differ, a fresh field is put in its place. A fresh one has its
 * cursor at the end and leaves it there when its text grows from outside: so it begins with the text before
 * the cursor and is given the rest at once. At a press it stays as it is, so it is not drawn anew.
 */
export const LineField = memo(function LineField({ line, field, placeholder = '' }: Props) {
  const [shown, setShown] = useState(() => begun(line, 0));
  const typed = useRef(line);
  const handed = useSyncExternalStore(field.subscribe, field.handed);

  const beginAnew = () => {
    field.clear();
    typed.current = line;
    setShown(({ beginning }) => begun(line, beginning + 1));
  };

  useLayoutEffect(() => {
    if (shown.rest !== '') setShown({ ...shown, text: shown.text + shown.rest, rest: '' });
  }, [shown]);

  useEffect(() => field.drawn(handed), [field, handed]);

  useEffect(() => {
    const strokes = fieldStrokes(typed.current, line);
    const isSettled = strokes.length === 0 && field.isIdle() && shown.rest === '';
    if (strokes.length > mostStrokes || (isSettled && shown.text !== line.text)) return beginAnew();
    typed.current = line;
    field.send(strokes);
  });

  useEffect(() => field.clear, [field]);

  return (
    <TextInput
      key={shown.beginning}
      value={shown.text}
      onChange={(text) => setShown((before) => ({ ...before, text }))}
      placeholder={line.text === '' ? placeholder : ''}
    />
  );
});
