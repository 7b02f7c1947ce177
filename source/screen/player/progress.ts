/** How far the player has come, in a row: a bar, elapsed and total, the speed, and whether it plays. */
import type { PlayerView } from '../../journal/player.ts';
import type { Words } from '../../wording/words.ts';

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
const narrowestBar = 5;
/** Kept for the words beside the bar, whatever they are: a bar that shrank would seem to jump back. */
const roomForWords = 42;

export function progressRow(view: PlayerView, width: number, { player: say }: Words): string {
  const { elapsedMs, totalMs, speed, ended } = view;
  const part = ended ? 1 : totalMs === 0 ? 0 : Math.min(elapsedMs / totalMs, 1 - Number.EPSILON);
  const time = say.time(formatClock(elapsedMs), formatClock(totalMs));
  const text = `${time}  ${say.speed(speed)}  ${say.state(view)}`;
  const bar = Math.min(widestBar, width - roomForWords);
  return bar < narrowestBar ? text : `${formatBar(part, bar)}  ${text}`;
}
