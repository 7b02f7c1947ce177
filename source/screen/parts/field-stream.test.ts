import { expect, test, vi } from 'vitest';
import { createFieldStream } from './field-stream.ts';

/** Reads as Ink does: all there is, whenever something is. */
function reading(drawWaitMs = 60_000) {
  const field = createFieldStream({ drawWaitMs });
  const read: string[] = [];
  const listen = () =>
    field.stdin.on('readable', () => {
      for (let stroke = field.stdin.read(); stroke !== null; stroke = field.stdin.read()) read.push(stroke);
    });
  return { field, read, listen };
}
const nextTurn = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

test('one stroke is handed over, and the next when that one has been drawn', async () => {
  const { field, read, listen } = reading();
  listen();
  field.send(['a', 'b', 'c']);
  await vi.waitFor(() => expect(read).toEqual(['a']));
  field.drawn(0);
  await nextTurn();
  expect(read).toEqual(['a']);
  field.drawn(1);
  await vi.waitFor(() => expect(read).toEqual(['a', 'b']));
  expect(field.isIdle()).toBe(false);
});

test('a drawing that is not said is not waited for without end', async () => {
  const { field, read, listen } = reading(1);
  listen();
  field.send(['a', 'b', 'c']);
  await vi.waitFor(() => expect(read).toEqual(['a', 'b', 'c']));
});

test('strokes wait while nobody reads', async () => {
  const { field, read, listen } = reading();
  field.send(['a']);
  await nextTurn();
  expect(field.handed()).toBe(0);
  listen();
  await vi.waitFor(() => expect(read).toEqual(['a']));
});

test('each stroke handed over is told, and what waits can be dropped', async () => {
  const { field, read, listen } = reading();
  const told: number[] = [];
  const leave = field.subscribe(() => told.push(field.handed()));
  listen();
  field.send(['a', 'b']);
  await vi.waitFor(() => expect(told).toEqual([1]));
  field.clear();
  field.drawn(1);
  expect(field.isIdle()).toBe(true);
  leave();
  field.send(['c']);
  await vi.waitFor(() => expect(read).toEqual(['a', 'c']));
  expect(told).toEqual([1]);
});
