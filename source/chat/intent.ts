import type { Command } from '../session/command.ts';
import type { PedalAct, SettingChange } from '../settings/settings.ts';
import type { Landmark } from '../steps/landmarks.ts';

/** What can be drawn in place of the counters. */
export type Picture = 'strip' | 'bag' | 'fold' | 'bed';

/** What a typed line asks for. Parsing makes one of these and performs nothing. */
export type Intent =
  | { readonly kind: 'do'; readonly command: Command }
  | { readonly kind: 'go'; readonly to: Landmark | { readonly at: 'mark'; readonly name: string } }
  | { readonly kind: 'show'; readonly what: 'where' | 'plan' | 'marks' | 'notes' }
  | { readonly kind: 'help'; readonly topic: string | null }
  | { readonly kind: 'set'; readonly change: SettingChange }
  /** Waits for a press of a foot switch and gives it this to do; `off` forgets all switches, null lists them. */
  | { readonly kind: 'pedal'; readonly act: PedalAct | 'off' | null }
  | { readonly kind: 'again' }
  | { readonly kind: 'draw'; readonly picture: Picture | null }
  /** Writes the printable sheet to a file. */
  | { readonly kind: 'sheet'; readonly out: string }
  | { readonly kind: 'leave' };

/** Why a typed line is not understood. */
export type ChatFault =
  | { readonly code: 'chat/unknown-command'; readonly word: string; readonly nearest: string | null }
  | { readonly code: 'chat/ambiguous'; readonly word: string; readonly choices: readonly string[] }
  | { readonly code: 'chat/not-a-count'; readonly word: string; readonly usage: string }
  | { readonly code: 'chat/not-a-choice'; readonly word: string; readonly choices: readonly string[] }
  | { readonly code: 'chat/needs-more'; readonly usage: string }
  | { readonly code: 'chat/unknown-place'; readonly word: string; readonly usage: string }
  | { readonly code: 'chat/no-such-mark'; readonly name: string; readonly known: readonly string[] };
