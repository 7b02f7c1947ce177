/** What every screen has in its state, and what every screen is told. */
import type { Arrival, Key } from '../keys/key.ts';
import type { Prompt } from './prompt.ts';

export interface ScreenState<End> {
  readonly prompt: Prompt;
  /** How it ended; null while it goes on. */
  readonly end: End | null;
}

export type ScreenMessage =
  | { readonly is: 'key'; readonly key: Key; readonly came: Arrival }
  /** The maker wants to leave: by Ctrl-D where nothing is typed, or by Ctrl-C. */
  | { readonly is: 'quit'; readonly how: 'left' | 'interrupted' };
