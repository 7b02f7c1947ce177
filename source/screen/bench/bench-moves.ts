/** What confirming and taking back do: a command for the log, or a step of the way that the hands are on. */
import { answer, type Line } from '../../chat/line.ts';
import { sayDone } from '../../chat/reply.ts';
import { sayWayStep, stepBack, stepOn, type Way, wayAfter } from '../../chat/way.ts';
import { formatFault } from '../../chat/wording/faults.ts';
import { sayBegun, sayHalfMended, sayLeft } from '../../chat/wording/finding-answer.ts';
import type { Command, SessionFault } from '../../session/command.ts';
import type { Session } from '../../session/session.ts';
import type { Settings } from '../../settings/settings.ts';
import type { Result } from '../../shared/result.ts';
import { unitsFor } from '../../shared/units.ts';

/** What they look at and change. */
export interface Scene {
  readonly session: Session;
  readonly lines: readonly Line[];
  readonly settings: Settings;
  readonly way: Way | null;
}

export interface Moves {
  readonly perform: (command: Command) => void;
  readonly begin: (way: Way) => void;
  readonly leave: (way: Way) => void;
}

export interface MovesOptions {
  readonly get: () => Scene;
  readonly publish: (next: Partial<Scene>) => void;
  readonly record: (command: Command) => Result<Session, SessionFault>;
}

export function createMoves({ get, publish, record }: MovesOptions): Moves {
  const publishWith = (more: readonly Line[], next: Partial<Scene>): void =>
    publish({ ...next, lines: [...get().lines, ...more] });

  /** The session after a command and what is said of it; null where it was refused, and why is said. */
  const carryOut = (command: Command): { session: Session; told: readonly Line[] } | null => {
    const { session: before, settings } = get();
    const after = record(command);
    if (!after.ok) {
      publishWith([{ tone: 'fault', text: formatFault(after.fault, unitsFor(settings.units)) }], {});
      return null;
    }
    return {
      session: after.value,
      told: sayDone(before, after.value, command, unitsFor(settings.units)),
    };
  };

  const move = (command: Command): void => {
    const done = carryOut(command);
    if (!done) return;
    publishWith(done.told, { session: done.session, way: wayAfter(get().way, command, done.session) });
  };

  /** The next step of a way is done: the place follows where the log can keep it. */
  const goOn = (way: Way): boolean => {
    const { command, text } = way.steps[way.at] ?? { command: null, text: '' };
    const line: Line = { tone: 'done', text: sayWayStep(way) ?? text };
    const next = stepOn(way);
    if (command === null) {
      publishWith([line], { way: next });
      return true;
    }
    const done = carryOut(command);
    if (!done) return false;
    publishWith([line, ...(next ? [] : done.told)], { session: done.session, way: next });
    return true;
  };

  const leave = (way: Way): void =>
    publishWith(answer(way.kind === 'mend' && way.at > 0 ? sayHalfMended() : sayLeft()), { way: null });

  const perform = (command: Command): void => {
    const { way } = get();
    if (way && command.do === 'confirm') {
      let goes = true;
      for (let left = command.count; left > 0 && goes; left--) {
        const now = get().way;
        goes = now !== null && goOn(now);
      }
      return;
    }
    if (way && command.do === 'take-back') {
      const back = stepBack(way);
      if (back === 'leave') return leave(way);
      if (back !== 'take-back') return publish({ way: back });
    }
    move(command);
  };

  return { perform, begin: (way) => publishWith(answer(sayBegun()), { way }), leave };
}
