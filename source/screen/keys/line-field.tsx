import TextInput from 'ink-text-input';
import { useEffect, useRef, useState, useSyncExternalStore } from 'react';
import { type Line, lineOf } from './edit-line.ts';
import type { FieldStream } from './field-stream.ts';
import { fieldStrokes } from './field-strokes.ts';

type Props = { readonly line: Line; readonly field: FieldStream; readonly placeholder?: string };

/**
 * Shows a line in ink-text-input, cursor and all. The line is the truth and changes at once; the field
 * follows by being typed into (`field.stdin` is what Ink reads). Where typing would take longer than
 * starting afresh with the whole text, or if the two should ever differ, the field is put there anew.
 */
export function LineField({ line, field, placeholder = '' }: Props) {
  const [shown, setShown] = useState({ text: line.text, generation: 0 });
  const target = useRef(lineOf(line.text));
  const handed = useSyncExternalStore(field.subscribe, field.handed);

  useEffect(() => {
    const strokes = fieldStrokes(target.current, line);
    const afresh = fieldStrokes(lineOf(line.text), line);
    const isAstray = strokes.length === 0 && field.isIdle() && shown.text !== line.text;
    if (isAstray || strokes.length > afresh.length + 2) {
      field.clear();
      setShown(({ generation }) => ({ text: line.text, generation: generation + 1 }));
      target.current = lineOf(line.text);
    }
  });
  return null;
}
