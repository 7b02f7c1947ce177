/** What a bench shows and can be asked, and what it needs of the machine. */
import type { Picture } from '../../chat/intent.ts';
import type { Line } from '../../chat/line.ts';
import type { Way } from '../../chat/way.ts';
import type { Warning } from '../../chat/wording/settings.ts';
import type { Plan } from '../../planning/plan.ts';
import type { Command, SessionFault } from '../../session/command.ts';
import type { Session } from '../../session/session.ts';
import type { PedalAct, SettingChange, Settings } from '../../settings/settings.ts';
import type { Result } from '../../shared/result.ts';

export interface BenchState {
  readonly session: Session;
  /** The end of the transcript, which only ever grows: what was said long ago is left to the terminal. */
  readonly lines: readonly Line[];
  /** Lines said before these. */
  readonly linesBefore: number;
  /** What is wrong with saving, in a sentence; null while every press is on disk. */
  readonly trouble: string | null;
  readonly settings: Settings;
  /** What the next key pressed is to do: a foot switch is being assigned. */
  readonly assigning: PedalAct | null;
  /** The drawing that stands in place of the counters. */
  readonly picture: Picture | null;
  /** A way back or a mend that the hands are on: its steps come before the plan's. */
  readonly way: Way | null;
}

/** Carries out a command and has it on disk before it answers. */
export type Recorder = (command: Command) => Result<Session, SessionFault>;

/** The engine of a bench, outside React: keys and lines come in, states go out to whoever subscribes. */
export interface BenchStore {
  readonly get: () => BenchState;
  readonly subscribe: (listener: () => void) => () => void;
  readonly perform: (command: Command) => void;
  /** Carries out a typed line; whether it asks to leave, perhaps to plan another bag. */
  readonly submit: (text: string) => 'left' | 'new' | null;
  readonly say: (lines: readonly Line[]) => void;
  readonly set: (change: SettingChange) => void;
  readonly assign: (act: PedalAct | null) => void;
  readonly again: () => void;
  /** A press did nothing: says why, to the ears too. */
  readonly warn: (warning: Warning) => void;
  readonly draw: (picture: Picture | null) => void;
  /** Whether nothing would be lost by leaving, or the maker was told so and asks again. */
  readonly mayLeave: () => boolean;
  /** Waits for what the last line has begun. */
  readonly untilDone: () => Promise<void>;
}

export interface BenchStoreOptions {
  readonly session: Session;
  readonly record: Recorder;
  readonly settings: Settings;
  readonly lines?: readonly Line[];
  /** Asked after each record. */
  readonly trouble?: () => string | null;
  /** From here on says everything in the language of this setting. */
  readonly speakIn?: (language: string) => Promise<void>;
  /** Keeps a setting for the next time. */
  readonly keep?: (change: SettingChange) => void;
  /** Writes the sheet of a plan to a file; what came of it, in a sentence. */
  readonly writeSheet?: (plan: Plan, out: string) => Promise<string>;
  /** Writes the whole log elsewhere and goes on there; what came of it, in a sentence. */
  readonly saveElsewhere?: (out: string) => string;
  /** What would be lost by leaving now, in a sentence; null where nothing would. */
  readonly lossOnLeaving?: () => string | null;
  /** Minutes that a row takes this maker; null before the first bag is finished. */
  readonly minutesPerRow?: () => number | null;
  /** The bags on the go and finished, a line each. */
  readonly bags?: () => readonly string[];
  /** The time, in milliseconds; without it nobody is reminded to rest. */
  readonly nowMs?: () => number;
  /** Told whenever there is something for the ears. */
  readonly announce?: Announce;
}

/** `next`: another step is to be done. `again`: it is asked for again. `rest`: hands are due one. The others: a press did nothing. */
export type Announce = (state: BenchState, why: 'next' | 'again' | 'rest' | Warning) => void;
