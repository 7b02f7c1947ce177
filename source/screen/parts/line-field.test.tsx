import { Text } from 'ink';
import TextInput from 'ink-text-input';
import { useEffect, useState, useSyncExternalStore } from 'react';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { mountScreen, type Screen } from '../../../test/terminal/rig/in-process.tsx';
import { createKeyDecoder } from '../keys/decode-keys.ts';
import { editLine, emptyLine, type Line, lineOf } from '../keys/edit-line.ts';
import { createFieldStream, type FieldStream } from './field-stream.ts';
import { LineField } from './line-field.tsx';

const mounted: Screen[] = [];
const mount = (node: React.ReactNode, field: FieldStream): Screen => {
  const screen = mountScreen(node, { columns: 60, stdin: field.stdin });
  mounted.push(screen);
  return screen;
};
afterEach(() => {
  for (const screen of mounted.splice(0)) screen.unmount();
});
const unwrapped = (screen: string): string => screen.replaceAll('\n', '');
const shows = (text: string) => (screen: string) => unwrapped(screen).startsWith(`[${text}]`);

/** Text of letters that tells every loss and every exchange of neighbours. */
const letters = Array.from({ length: 200 }, (_, place) => String.fromCharCode(97 + ((place * 7) % 26))).join(
  '',
);

/** Chunks of 1 to 5 letters; the sizes come from a fixed run of odd numbers, so a failure can be repeated. */
function chunksOf(text: string): string[] {
  const chunks: string[] = [];
  for (let from = 0, seed = 1; from < text.length; ) {
    seed = (seed * 75) % 65_537;
    const size = 1 + (seed % 5);
    chunks.push(text.slice(from, from + size));
    from += size;
  }
  return chunks;
}

/** Runs the action for each item, one a millisecond. */
const eachMillisecond = <T,>(items: readonly T[], action: (item: T) => void): Promise<void> =>
  new Promise((resolve) => {
    let next = 0;
    const timer = setInterval(() => {
      const item = items[next++];
      if (item !== undefined) return action(item);
      clearInterval(timer);
      resolve();
    }, 1);
  });

/** Nothing but the field and the stream: no second copy of the text that could put it right. */
function Plain({ field }: { readonly field: FieldStream }) {
  const [text, setText] = useState('');
  const handed = useSyncExternalStore(field.subscribe, field.handed);
  useEffect(() => field.drawn(handed), [field, handed]);
  return (
    <Text>
      [<TextInput value={text} onChange={setText} showCursor />]
    </Text>
  );
}

describe('ink-text-input fed through the field stream', () => {
  test('shows 200 letters typed 1 ms apart', async () => {
    const field = createFieldStream();
    const screen = mount(<Plain field={field} />, field);
    await eachMillisecond([...letters], (letter) => field.send([letter]));
    await screen.waitFor(shows(`${letters} `));
  });

  test('shows 200 letters decoded from chunks of any size', async () => {
    const field = createFieldStream();
    const decoder = createKeyDecoder();
    const screen = mount(<Plain field={field} />, field);
    await eachMillisecond(chunksOf(letters), (chunk) =>
      field.send(decoder.push(chunk).map((key) => key.text)),
    );
    await screen.waitFor(shows(`${letters} `));
  });

  test('does as it is told with Left, Right and Backspace in one go', async () => {
    const field = createFieldStream();
    const screen = mount(<Plain field={field} />, field);
    field.send([...'mlot', '\x1b[D', '\x1b[D', '\x1b[D', '\x7f', 'p', '\x1b[C', 'u', '\x1b[D', '\x7f', 'b']);
    await screen.waitFor(shows('pbuot'));
  });
});

describe('a line in its field', () => {
  /** As the program has it: the line is changed by keys, the field follows. */
  function prompt(first: Line = emptyLine) {
    const field = createFieldStream();
    const decoder = createKeyDecoder();
    const draw = (line: Line) => (
      <Text>
        [<LineField line={line} field={field} />]
      </Text>
    );
    const screen = mount(draw(first), field);
    let line = first;
    const show = (next: Line): void => {
      line = next;
      screen.rerender(draw(line));
    };
    return {
      ...{ screen, field, show },
      line: () => line,
      type: (chunk: string) => show(decoder.push(chunk).reduce(editLine, line)),
    };
  }

  test('shows 200 letters typed 1 ms apart and in chunks, each typed once', async () => {
    const { screen, field, type } = prompt();
    await eachMillisecond([...letters], type);
    await screen.waitFor(shows(`${letters} `));
    expect(field.handed()).toBeLessThanOrEqual(letters.length);
    const chunks = chunksOf(letters);
    await eachMillisecond(chunks, type);
    await screen.waitFor(shows(`${letters}${letters} `));
  });

  test('has the cursor where the line has it', async () => {
    const { screen, type } = prompt();
    type('rip bck 12\x1b[1;5D\x1b[D\x1b[D\x1b[D');
    type('a');
    await screen.waitFor(shows('rip back 12'));
    type('\x1b[Hplease \x1b[F!');
    await screen.waitFor(shows('please rip back 12! '));
    type('\x1b[1;5D\x1b[1;5D\x17');
    await screen.waitFor(shows('please rip 12!'));
  });

  test('takes a line from outside, and is typed into at its end', async () => {
    const { screen, field, show, type } = prompt(lineOf('help'));
    await screen.waitFor(shows('help '));
    show(lineOf('a longer line out of the history'));
    type('!');
    await screen.waitFor(shows('a longer line out of the history! '));
    // Nothing was typed but the mark: the field was begun anew with the line.
    expect(field.handed()).toBe(1);
    show(emptyLine);
    type('next');
    await screen.waitFor(shows('next '));
  });

  test('takes characters of several parts whole', async () => {
    const { screen, type } = prompt();
    type('plum 🧶 mint');
    type('\x1b[1;5D\x1b[D\x1b[D');
    type('\x7fx');
    await screen.waitFor(shows('plumx🧶 mint'));
    type('\x1b[3~');
    await screen.waitFor(shows('plumx mint'));
  });

  test('comes back right when something else has typed into the field', async () => {
    const { screen, field, type } = prompt(lineOf('mint'));
    await screen.waitFor(shows('mint '));
    field.send(['x']);
    await vi.waitFor(() => expect(field.handed()).toBe(1));
    type('!');
    await screen.waitFor(shows('mint! '));
  });

  test('shows its placeholder while it is empty, never when the cursor is at the start', async () => {
    const field = createFieldStream();
    const draw = (line: Line) => <LineField line={line} field={field} placeholder="say something" />;
    const screen = mount(draw({ text: 'undo', cursor: 0 }), field);
    await screen.waitFor('undo');
    expect(screen.raw()).not.toContain('say');
    screen.rerender(draw(emptyLine));
    await screen.waitFor('say something');
  });

  test('lets go of strokes that wait when it begins anew or goes away', async () => {
    const { screen, field, show } = prompt(lineOf('mint'));
    await screen.waitFor(shows('mint '));
    field.send([...'stale']);
    show(lineOf('another line'));
    await screen.waitFor(shows('another line '));
    await vi.waitFor(() => expect(field.isIdle()).toBe(true));
    expect(field.handed()).toBeLessThanOrEqual(1);
    field.send([...'stale']);
    screen.rerender(<Text>gone</Text>);
    await screen.waitFor('gone');
    field.drawn(field.handed());
    expect(field.isIdle()).toBe(true);
  });
});
