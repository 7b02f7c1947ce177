import { Box, Static, Text, useInput, useStdout } from 'ink';
import { useState } from 'react';
import { afterEach, expect, test } from 'vitest';
import { mountScreen, type Screen, type ScreenOptions } from './in-process.tsx';

const mounted: Screen[] = [];
const mount = (...parts: [React.ReactNode, ScreenOptions?]): Screen => {
  const screen = mountScreen(...parts);
  mounted.push(screen);
  return screen;
};
afterEach(() => {
  for (const screen of mounted.splice(0)) screen.unmount();
});

function Counter() {
  const [count, setCount] = useState(0);
  const { stdout } = useStdout();
  useInput(() => setCount((before) => before + 1));
  return (
    <Box borderStyle="single" width={stdout.columns}>
      <Text>count {count}</Text>
    </Box>
  );
}

test('a component is drawn as a terminal shows it, and hears keys', async () => {
  const screen = mount(<Counter />, { columns: 12 });
  expect(await screen.waitFor('count 0')).toBe('┌──────────┐\n│count 0   │\n└──────────┘');
  screen.send('x');
  await screen.waitFor('count 1');
});

test('a new size is what the component sees at its next drawing', async () => {
  const screen = mount(<Counter />, { columns: 12 });
  await screen.waitFor('count 0');
  screen.resize(20, 24);
  screen.rerender(<Counter />);
  await screen.waitFor(`┌${'─'.repeat(18)}┐`);
});

test('what is too tall clears no scrollback, as in the program', async () => {
  const tall = (word: string) => <Text>{`${'row\n'.repeat(6)}${word}`}</Text>;
  const screen = mount(tall('first'), { rows: 5 });
  await screen.waitFor('first');
  screen.rerender(tall('second'));
  await screen.waitFor('second');
  expect(screen.clears()).toBe(0);
});

test('lines above the live part stay in the transcript', async () => {
  const items = Array.from({ length: 12 }, (_, place) => `line ${place + 1}`);
  const screen = mount(<Static items={items}>{(item) => <Text key={item}>{item}</Text>}</Static>, {
    rows: 5,
  });
  await screen.waitFor('line 12');
  expect(screen.transcript().split('\n')).toEqual(items);
});

test('waiting in vain fails with the screen', async () => {
  const screen = mount(<Text>plum and mint</Text>);
  await expect(screen.waitFor('teal', 50)).rejects.toThrow('the screen was:\nplum and mint');
});
