import { expect, it } from 'vitest';
import { watchInput } from './read-keys.ts';

/** A program that reads at given times, and in between does nothing until it is busy. */
function watched() {
  let time = 0;
  let due: { readonly at: number; readonly action: () => void } | undefined;
  const looks: { readonly at: number; readonly action: () => void }[] = [];
  const watch = watchInput(
    () => time,
    (action, waitMs) => {
      due = { at: time + waitMs, action };
      return () => {
        due = undefined;
      };
    },
    (action) => {
      looks.push({ at: time, action });
    },
  );
  /** Lets the timers of an idle program run. */
  const idleUntil = (until: number): void => {
    for (const { at, action } of looks.splice(0)) {
      time = Math.max(time, at);
      action();
    }
    while (due && due.at <= until) {
      const { at, action } = due;
      due = undefined;
      time = at;
      action();
    }
    time = until;
  };
  const busyUntil = (until: number): void => {
    time = until;
  };
  return { read: watch.read, stop: watch.stop, idleUntil, busyUntil, isWatching: () => due !== undefined };
}

it('gives what an idle program reads one time', () => {
  const { read, idleUntil } = watched();
  expect(read()).toEqual({ since: 0, at: 0 });
  for (const at of [12, 112, 700, 5000]) {
    idleUntil(at);
    expect(read()).toEqual({ since: at, at });
  }
});

it('says that what came while the program was busy may have come at any time since it last looked', () => {
  const { read, idleUntil, busyUntil } = watched();
  read();
  busyUntil(150);
  expect(read()).toEqual({ since: 0, at: 150 });
  idleUntil(650);
  busyUntil(900);
  const { since, at } = read();
  expect(at).toBe(900);
  // It looked within the last tenth of the half second that had gone by.
  expect(since).toBeGreaterThan(600);
  expect(since).toBeLessThanOrEqual(650);
});

it('stops looking when no switch can be in doubt any more, and when the screen ends', () => {
  const { read, idleUntil, stop, isWatching } = watched();
  read();
  idleUntil(900);
  expect(isWatching()).toBe(true);
  idleUntil(1200);
  expect(isWatching()).toBe(false);
  read();
  stop();
  expect(isWatching()).toBe(false);
});
