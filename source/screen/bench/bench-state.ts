/** What a bench knows, what it is told, and what it wants done. */
import type { Intent, Picture } from '../../chat/grammar/intent.ts';
import { noTalk, type Said, type Talk } from '../../chat/talk.ts';
import type { SaveStatus } from '../../journal/fault.ts';
import type { MatchWish } from '../../journal/match.ts';
import type { Pace } from '../../journal/pace.ts';
import type { BriefFile } from '../../planning/brief.ts';
import type { Command } from '../../session/command.ts';
import type { Spell } from '../../session/rest.ts';
import type { Session } from '../../session/session.ts';
import type { PedalAct, SettingChange, Settings, Warning } from '../../settings/settings.ts';
import type { Language, Words } from '../../wording/words.ts';
import { emptyPrompt } from '../parts/prompt.ts';
import type { LongAnswer, Window } from '../parts/reading.ts';
import type { ScreenMessage, ScreenState, Store } from '../parts/store.ts';
import { type Switches, startSwitches } from './switches.ts';

/** `new`: to plan another bag; `practice`: for the practice bag; `open`: for the bag of another log; `discard`: to throw this one away, so called. */
export type Leaving =
  | 'left'
  | 'interrupted'
  | 'new'
  | 'practice'
  | { readonly open: string }
  | { readonly discard: string }
  | Another;

export type ShelfWish = Extract<Intent, { readonly kind: 'keep' | 'forget' | 'shelf' }>;

/** A bag to match this one: its brief, what is to be noted first, and what is said of it. */
export interface Another {
  readonly another: BriefFile;
  readonly notes: readonly string[];
  readonly told: string;
}

export interface BenchState extends ScreenState<Leaving> {
  readonly session: Session;
  /** The end of the transcript, which only ever grows: what was said long ago is left to the terminal. */
  readonly lines: readonly Said[];
  /** Lines said before these. */
  readonly linesBefore: number;
  /** Whether every press is on disk. */
  readonly saving: SaveStatus;
  readonly settings: Settings;
  readonly language: Language;
  /** In the language and the units of the settings. */
  readonly words: Words;
  /** What the next key pressed is to do: a foot switch is being assigned. */
  readonly assigning: PedalAct | null;
  /** The drawing that stands in place of the bench's lower part. */
  readonly picture: Picture | null;
  /** What was seen and offered. */
  readonly talk: Talk;
  readonly switches: Switches;
  /** Of the maker's own bags; null until it has been read. */
  readonly pace: Pace | null;
  /** Work without a rest so far. */
  readonly spell: Spell | null;
  /** Null where there is no screen. */
  readonly window: Window | null;
  /** A long answer that is being read in place of the bench. */
  readonly reading: LongAnswer | null;
  readonly toldOfSlowDisk: boolean;
  /** The session that the maker was told not all of is on disk. */
  readonly toldOfLoss: Session | null;
}

/** `next`: another step is to be done. `again`: it is asked for again. `rest`: hands are due one. */
export type Announcement = 'next' | 'again' | 'rest' | Warning;

export type BenchMessage =
  | ScreenMessage
  /** A whole line was typed. */
  | { readonly is: 'line'; readonly text: string }
  /** The window has this size. */
  | { readonly is: 'window'; readonly columns: number; readonly rows: number }
  /** A command to be recorded, from neither key nor line. */
  | { readonly is: 'command'; readonly command: Command }
  /** A command was recorded, at this time of the day. */
  | { readonly is: 'recorded'; readonly atMs: number; readonly saving: SaveStatus }
  /** How it stands with saving, tried again meanwhile. */
  | { readonly is: 'saving'; readonly saving: SaveStatus }
  | { readonly is: 'tried-to-save'; readonly saving: SaveStatus; readonly how: Leaving }
  | { readonly is: 'told'; readonly lines: readonly Said[] }
  /** The language of a setting has come. */
  | { readonly is: 'language'; readonly language: Language; readonly setting: string }
  /** The log of the bag that was asked for. */
  | { readonly is: 'found-bag'; readonly path: string }
  /** A bag to match is ready to be begun. */
  | { readonly is: 'another'; readonly another: Another }
  /** This bag is to be thrown away, so called. */
  | { readonly is: 'discard-this'; readonly called: string }
  /** The pace of the maker's own bags, and what is to be answered now that it is known. */
  | { readonly is: 'pace'; readonly pace: Pace; readonly asked: Intent | null }
  /** The picture was printed, where there is no screen for it to stay on. */
  | { readonly is: 'picture-shown' }
  /** No key can be told here. */
  | { readonly is: 'no-switch-here' };

export type BenchEffect =
  /** Puts the command on disk, or into memory where that fails; answers `recorded`. */
  | { readonly do: 'record'; readonly command: Command; readonly first: true }
  | (LaterEffect & { readonly first?: never });

type LaterEffect =
  /** Keeps a setting for the next time. */
  | { readonly do: 'keep'; readonly change: SettingChange }
  /** Answers `language`. */
  | { readonly do: 'load-language'; readonly setting: string }
  | { readonly do: 'announce'; readonly why: Announcement }
  /** Answers `tried-to-save`. */
  | { readonly do: 'save-and-leave'; readonly how: Leaving }
  /** Writes the printable sheet of a bag; tells what came of it. */
  | { readonly do: 'write-sheet'; readonly session: Session; readonly out: string }
  /** Writes the whole log elsewhere and goes on there; tells what came of it. */
  | { readonly do: 'save-elsewhere'; readonly out: string }
  /** Writes a gift tag; tells what came of it. */
  | { readonly do: 'write-tag'; readonly session: Session; readonly out: string }
  /** Tells what the bag took so far. */
  | { readonly do: 'tell-record' }
  /** Plans a bag to match; answers `another`, or tells why there is none. */
  | { readonly do: 'plan-another'; readonly wish: MatchWish }
  /** Keeps something on the shelf, takes something off it, or tells what is there. */
  | { readonly do: 'use-shelf'; readonly wish: ShelfWish }
  /** Plans a party, tells how it stands, or answers `found-bag` or `another` for its next bag. */
  | { readonly do: 'use-party'; readonly what: 'tally' | 'next' | number }
  /** Tells of the bags on the go and finished. */
  | { readonly do: 'list-bags' }
  /** Looks for a bag by its number or name; answers `found-bag`, or tells why there is none. */
  | { readonly do: 'find-bag'; readonly bag: string }
  /** Asks, or throws a bag away, null for this one; answers `discard-this`, or tells what came of it. */
  | { readonly do: 'discard-bag'; readonly bag: string | null; readonly sure: boolean }
  /** Brings back what was thrown away last. */
  | { readonly do: 'restore-bag' }
  /** Answers `pace`. */
  | { readonly do: 'read-pace'; readonly asked: Intent | null };

export type BenchStore = Store<BenchState, BenchMessage>;

/** A state, and what is to be done for it. */
export type Reaction = readonly [BenchState, readonly BenchEffect[]];

export const only = (state: BenchState): Reaction => [state, []];

/** Goes on from where another reaction led. */
export function andThen([state, effects]: Reaction, next: (state: BenchState) => Reaction): Reaction {
  const [after, more] = next(state);
  return [after, [...effects, ...more]];
}

export const withLines = (state: BenchState, lines: readonly Said[]): BenchState =>
  lines.length === 0 ? state : { ...state, lines: [...state.lines, ...lines] };

const noTrouble: SaveStatus = { state: 'saved', slowFlushMs: null };

export const startBench = (
  given: Pick<BenchState, 'session' | 'settings' | 'language' | 'words'> & Partial<BenchState>,
): BenchState => ({
  lines: [],
  linesBefore: 0,
  saving: noTrouble,
  assigning: null,
  picture: null,
  talk: noTalk,
  prompt: emptyPrompt,
  switches: startSwitches(given.session.done),
  pace: null,
  spell: null,
  window: null,
  reading: null,
  toldOfSlowDisk: false,
  toldOfLoss: null,
  end: null,
  ...given,
});

/** What was read goes where all answers go. */
export const putAway = (state: BenchState): BenchState =>
  state.reading === null ? state : withLines({ ...state, reading: null }, state.reading.lines);
