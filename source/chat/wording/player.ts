/** What the player says about itself: how far it is, why it stands, which keys it knows. */
import type { InUse } from '../../journal/file-fault.ts';
import type { PlayerView } from '../../journal/player.ts';
import { say } from '../../shared/say.ts';
import type { PlayerLineFault } from '../player-line.ts';

/** `0:07`, `12:30`, `1:04:10`. */
export function formatClock(ms: number): string {
  const seconds = Math.floor(ms / 1000);
  const [hours, minutes] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60];
  const two = (number: number): string => String(number).padStart(2, '0');
  return hours > 0 ? `${hours}:${two(minutes)}:${two(seconds % 60)}` : `${minutes}:${two(seconds % 60)}`;
}

/** A bar of `width` cells, brackets included, full only when all has been played. */
export function formatBar(part: number, width: number): string {
  const cells = Math.max(0, width - 2);
  const full = Math.floor(Math.min(1, part) * cells);
  return `[${'#'.repeat(full)}${'-'.repeat(cells - full)}]`;
}

const widestBar = 40;

/** One row: the bar, elapsed and total, the speed, and whether it plays. */
export function sayProgress(view: PlayerView, width: number): string {
  const { elapsedMs, totalMs, speed, ended } = view;
  const part = ended ? 1 : totalMs === 0 ? 0 : Math.min(elapsedMs / totalMs, 1 - Number.EPSILON);
  const time = say`${formatClock(elapsedMs)} of ${formatClock(totalMs)}`;
  const text = `  ${time}  ${say`${speed}x`}  ${sayState(view)}`;
  const room = Math.min(widestBar, width - text.length);
  return room < 5 ? text.trimStart() : `${formatBar(part, room)}${text}`;
}

function sayState({ playing, ended, last }: PlayerView): string {
  if (playing) return say`playing`;
  if (ended) return say`the end`;
  if (last?.event.do === 'mark') return say`stopped at the mark ${last.event.name}`;
  return last?.event.do === 'pause-here' ? say`a place to pause` : say`paused`;
}

/** The note that was made at this very place; null where none was. */
export function noteHere({ session }: PlayerView): string | null {
  const note = session.notes.at(-1);
  return note && note.done === session.done ? note.text : null;
}

/** The keys, as many as fit in one row. */
export const sayPlayerKeys = (width: number): string =>
  [
    say`Space: pause  Left, Right: a step  Up, Down: speed  M: mark  E: end  Q: leave  go stripe 3`,
    say`Space pause  Left Right step  Up Down speed  M mark  E end  Q leave`,
    say`Space, arrows, M mark, E end, Q leave`,
  ].find((text) => text.length <= width) ?? say`Q leaves`;

export const formatPlayerLineFault = (_: PlayerLineFault): string =>
  say`A replay goes to a part of the work or to a stripe. For example: go graft, or go stripe 3.`;

/** The bag is open elsewhere, and there is no screen to show it on. */
export const sayHowToLook = (path: string): string => say`To look: slantwise replay ${path}`;

/** The bag is open elsewhere, so this one may look. */
export const sayOnlyLooking = ({ pid, host, lockPath }: InUse): string =>
  say`Another Slantwise (${host === null ? say`process ${pid}` : say`process ${pid} on ${host}`}) has this bag open: here you only look, as far as it has come. If there is none, delete ${lockPath}.`;
