import { Text } from 'ink';
import { afterEach, describe, expect, test } from 'vitest';
import { mountScreen, type Screen } from '../../../test/terminal/rig/in-process.tsx';
import { createKeyDecoder } from '../keys/decode-keys.ts';
import { silentInput } from './hold-screen.ts';
import { editLine, emptyLine, lineOf, type TypedLine } from './prompt.ts';
import { PromptField } from './prompt-field.tsx';

let screen: Screen | null = null;
afterEach(() => screen?.unmount());

const unwrapped = (text: string): string => text.replaceAll('\n', '');
const shows = (text: string) => (drawn: string) => unwrapped(drawn).startsWith(`[${text}]`);

/** Text of letters that tells every loss and every exchange of neighbours. */
const letters = Array.from({ length: 200 }, (_, place) => String.fromCharCode(97 + ((place * 7) % 26))).join(
  '',
);

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

/** As the program has it: keys change the line, and the field shows it. */
function typeInto(first: TypedLine = emptyLine, placeholder = '') {
  const decoder = createKeyDecoder();
  let line = first;
  const draw = () => (
    <Text>
      [<PromptField line={line} placeholder={placeholder} />]
    </Text>
  );
  const mounted = mountScreen(draw(), { columns: 60, stdin: silentInput() });
  screen = mounted;
  const show = (next: TypedLine): void => {
    line = next;
    mounted.rerender(draw());
  };
  return {
    screen: mounted,
    show,
    type: (chunk: string) => show(decoder.push(chunk).reduce(editLine, line)),
  };
}

describe('the prompt', () => {
  test('shows 200 letters typed 1 ms apart, each once and in order', async () => {
    const { screen, type } = typeInto();
    await eachMillisecond([...letters], type);
    await screen.waitFor(shows(`${letters} `));
  });

  test('shows letters that come several in a chunk', async () => {
    const { screen, type } = typeInto();
    await eachMillisecond(letters.match(/.{1,7}/g) ?? [], type);
    await screen.waitFor(shows(`${letters} `));
  });

  test('has the cursor where the line has it', async () => {
    const { screen, type } = typeInto();
    type('rip bck 12\x1b[1;5D\x1b[D\x1b[D\x1b[D');
    type('a');
    await screen.waitFor(shows('rip back 12'));
    type('\x1b[Hplease \x1b[F!');
    await screen.waitFor(shows('please rip back 12! '));
    type('\x1b[1;5D\x1b[1;5D\x17');
    await screen.waitFor(shows('please rip 12!'));
  });

  test('takes a line out of the history, and is typed into at its end', async () => {
    const { screen, show, type } = typeInto(lineOf('help'));
    await screen.waitFor(shows('help '));
    show(lineOf('a longer line out of the history'));
    type('!');
    await screen.waitFor(shows('a longer line out of the history! '));
    show(emptyLine);
    type('next');
    await screen.waitFor(shows('next '));
  });

  test('takes characters of several parts whole', async () => {
    const { screen, type } = typeInto();
    type('plum 🧶 mint');
    type('\x1b[1;5D\x1b[D\x1b[D');
    type('\x7fx');
    await screen.waitFor(shows('plumx🧶 mint'));
    type('\x1b[3~');
    await screen.waitFor(shows('plumx mint'));
  });

  test('shows its placeholder while it is empty, never when the cursor is at the start', async () => {
    const { screen, show } = typeInto({ text: 'undo', cursor: 0 }, 'say something');
    await screen.waitFor('undo');
    expect(screen.raw()).not.toContain('say');
    show(emptyLine);
    await screen.waitFor('say something');
  });
});
