import { replayLines } from '../chat/say-done.ts';
import type { InUse } from '../journal/fault.ts';
import { entryJson } from '../journal/notation.ts';
import { type Player, showFirst, speeds, startPlayer } from '../journal/player.ts';
import type { Words } from '../wording/words.ts';
import { complain, exitCodes, hasScreen, prepareScreen, print, printJson } from './outcome.ts';
import { openRecording, sayCutOff } from './read-input.ts';

interface ReplayOptions {
  readonly json: boolean;
  /** Times the recorded pace, as it was typed. */
  readonly speed: string | undefined;
  readonly words: Words;
}

/** Plays a log in the terminal; elsewhere prints it, each step with the time at which it was confirmed. */
export async function replay(path: string, { json, speed: typed, words }: ReplayOptions): Promise<number> {
  const speed = typed === undefined ? 1 : Number(typed.replace(',', '.'));
  const [slowest = 1, fastest = 1] = [speeds[0], speeds.at(-1)];
  if (!(speed >= slowest && speed <= fastest))
    return complain(words.cli.notASpeed(typed ?? '', slowest, fastest), exitCodes.usage);
  const recording = openRecording(path, words);
  if (!recording.ok) return complain(recording.fault);
  const { tornBytes, frames } = recording.value;
  const cutOff = sayCutOff(path, tornBytes, frames.length, words);
  if (!json && hasScreen()) return play(startPlayer(recording.value, { speed }), words, cutOff);
  if (json) for (const { entry } of frames) printJson(entryJson(entry));
  else for (const line of replayLines(recording.value, words)) print(line);
  if (cutOff !== null) complain(cutOff);
  return exitCodes.done;
}

/** Shows a log that another process writes, as far as it has come. */
export async function look(fault: InUse, words: Words): Promise<number> {
  const recording = openRecording(fault.path, words);
  if (!recording.ok) return complain(recording.fault);
  const player = startPlayer(recording.value);
  const { length } = recording.value.frames;
  return play({ ...showFirst(player, length), playing: false }, words, words.player.onlyLooking(fault));
}

/** `message` is said first, where there is one. */
async function play(player: Player, words: Words, message: string | null): Promise<number> {
  prepareScreen();
  const { runPlayer } = await import('../screen/player/player-app.tsx');
  const end = await runPlayer(player, { words, ...(message === null ? {} : { message }) });
  return end === 'interrupted' ? exitCodes.interrupted : exitCodes.done;
}
