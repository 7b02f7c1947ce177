/** What every screen has in its state, and what every screen is told. */
import type { Key } from '../keys/key.ts';
import type { Prompt } from './prompt.ts';

export interface ScreenState<End> {
  readonly prompt: Prompt;
  /** How it ended; null while it goes on. */
  readonly end: End | null;
}

export type ScreenMessage =
  /** A key, with the time it came, by a clock that does not jump. */
  | { readonly is: 'key'; readonly key: Key; readonly at: number }
  /** The maker wants to leave: by Ctrl-D where nothing is typed, or by Ctrl-C. */
  | { readonly is: 'quit'; readonly how: 'left' | 'interrupted' };
