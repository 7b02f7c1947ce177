/** What a typed line asks for, and what it says of the bench; and what is known of the bag for reading it. */

import type { MatchWish } from '../../journal/match.ts';
import type { ShelfKind } from '../../planning/shelf.ts';
import type { Command } from '../../session/command.ts';
import type { OpenQuestion } from '../../session/diagnose/question.ts';
import type { SlipMoment } from '../../session/diagnose/slip-moment.ts';
import { type Look, yarnsSeen } from '../../session/locate/seen.ts';
import { marksOf } from '../../session/marks.ts';
import type { Session } from '../../session/session.ts';
import type { PedalAct, SettingChange, SettingName } from '../../settings/settings.ts';
import type { Landmark } from '../../steps/landmarks.ts';
import type { WhichUnit } from '../../wording/replan.ts';
import type { Amount } from '../first-run/amounts.ts';
import type { Trouble } from './trouble.ts';

/** What is known of the bag that is on the needles, for names and numbers that could be read two ways. */
export interface Known {
  readonly yarns: readonly string[];
  readonly marks: readonly string[];
  readonly knittedRows: number;
  /** Rows of the highest stripe. */
  readonly stripeRows: number;
  /** What was asked and waits for an answer. */
  readonly question?: OpenQuestion | null;
  /** So many offers stand. */
  readonly offers?: number;
}

export const nothingKnown: Known = { yarns: [], marks: [], knittedRows: 0, stripeRows: 0 };

export const knownOf = (session: Session, waiting: Pick<Known, 'question' | 'offers'> = {}): Known => ({
  marks: [...marksOf(session).keys()],
  yarns: yarnsSeen(session.job),
  knittedRows: session.job.plan.knittedRows,
  stripeRows: Math.max(...session.job.plan.stripes.map(({ rows }) => rows)),
  ...waiting,
});

/** The yarn of which it is asked where it is. */
export const yarnAskedIn = ({ question }: Known): string | undefined =>
  question?.about === 'yarn-where' ? question.yarn : undefined;

/** What a line says. */
export interface Told {
  readonly seen: Look;
  readonly moment: SlipMoment | null;
  /** A row that may be one of the counter or one of the stripe. */
  readonly askRow: number | null;
  /** A single stitch has dropped. */
  readonly ladder: boolean;
  /** A yarn was told by its name alone: it may hang in the newest row, or only be in the feeder. */
  readonly bareYarn: boolean;
  readonly leftOut: readonly string[];
}

export const nothingTold: Told = {
  seen: {},
  moment: null,
  askRow: null,
  ladder: false,
  bareYarn: false,
  leftOut: [],
};

/**
 * Whether a line without a command says anything that could be seen. `nothing` among other words may be of anything: that no
 * loop hangs has to be said alone.
 */
export const saysSomething = ({ seen, moment, ladder, askRow, leftOut }: Told): boolean =>
  Object.values(seen).some((look) => look !== null || leftOut.length === 0) ||
  moment !== null ||
  ladder ||
  askRow !== null;

/** A length of the piece, or a weight. */
export type MeasuredAmount = Amount<'mm' | 'cm' | 'in' | 'g' | 'oz'>;

/** What the scales show of a yarn. */
export interface Weighed {
  readonly yarn: string;
  readonly amount: MeasuredAmount;
}

export interface ReplanWish {
  /** A width over so many stitches, a height over so many rows, measured on the piece. */
  readonly stitches: { readonly count: number; readonly length: MeasuredAmount } | null;
  readonly rows: { readonly count: number; readonly length: MeasuredAmount } | null;
  readonly weighed: readonly Weighed[];
  readonly recolour: {
    readonly from: string;
    readonly to: string;
    readonly colour: string | null;
    readonly metresPer100g: number | null;
  } | null;
  /** The cord in another yarn, one that comes with its colour and thickness where the bag has none of it. */
  readonly cord: {
    readonly to: string;
    readonly colour: string | null;
    readonly metresPer100g: number | null;
  } | null;
  /** Which lengths to show: all, only shorter, only longer, or this many rows round. */
  readonly want: 'any' | 'shorter' | 'longer' | number;
}

/** A place as a maker names it. */
export type NamedPlace =
  | Landmark
  | { readonly at: 'mark'; readonly name: string }
  /** So many rows of the bag before where the work stands. */
  | { readonly at: 'rows-back'; readonly count: number };

/** What can be drawn in place of the counters. */
export type Picture = 'strip' | 'bag' | 'fold' | 'bed' | 'graft' | 'hem' | 'seam' | 'cord';

/** What a typed line asks for. Parsing makes one of these and performs nothing. */
export type Intent =
  /** `times` over where it is said; once where it is not. */
  | { readonly kind: 'do'; readonly command: Command; readonly times?: number }
  | { readonly kind: 'go'; readonly to: NamedPlace }
  /** What is seen at the bench; `more` adds to what was said before, `unsure` passes by the question that was asked. */
  | { readonly kind: 'find'; readonly more: boolean; readonly told: Told; readonly unsure: boolean }
  | { readonly kind: 'rip'; readonly to: NamedPlace }
  | { readonly kind: 'replan'; readonly wish: ReplanWish }
  | { readonly kind: 'weigh'; readonly weighed: Weighed }
  /** The bag's size as it was measured. */
  | { readonly kind: 'measured'; readonly width: MeasuredAmount; readonly depth: MeasuredAmount }
  /** So long are the first rounds of the cord. */
  | { readonly kind: 'cord-length'; readonly length: MeasuredAmount }
  /** Accepts one of the things offered last. */
  | { readonly kind: 'choose'; readonly number: number | null }
  /** Leaves a way back or a mend where it is. */
  | { readonly kind: 'stop' }
  | { readonly kind: 'bags' }
  /** Leaves this bag as it is and plans another. */
  | { readonly kind: 'new' | 'practice' }
  /** Leaves for another bag, by its number in the list or its name. */
  | { readonly kind: 'open'; readonly bag: string }
  /** Throws a bag away, by number or name, null for the one that is open; `sure` once it was asked. */
  | { readonly kind: 'discard'; readonly bag: string | null; readonly sure: boolean }
  /** Brings back what was thrown away last. */
  | { readonly kind: 'restore' }
  | { readonly kind: 'show'; readonly what: 'where' | 'plan' | 'tools' | 'cautions' | 'marks' | 'notes' }
  /** Something went wrong at the bench; null lists what can. */
  | { readonly kind: 'trouble'; readonly what: Trouble | null }
  | { readonly kind: 'help'; readonly topic: string | null }
  /** A word of the trade, or null for all of them. */
  | { readonly kind: 'words'; readonly about: string | null }
  /** A topic of the craft, as it was asked; null for the list of them. */
  | { readonly kind: 'why'; readonly about: string | null }
  | { readonly kind: 'set'; readonly change: SettingChange }
  /** How a setting stands; null for all of them. */
  | { readonly kind: 'settings'; readonly of: SettingName | null }
  /** Waits for a press of a foot switch and gives it this to do; `off` forgets all switches, null lists them. */
  | { readonly kind: 'pedal'; readonly act: PedalAct | 'off' | null }
  | { readonly kind: 'again' }
  | { readonly kind: 'draw'; readonly picture: Picture | null }
  /** Writes the printable sheet to a file. */
  | { readonly kind: 'sheet'; readonly out: string }
  /** Writes a gift tag to a file. */
  | { readonly kind: 'tag'; readonly out: string }
  /** What the bag took so far. */
  | { readonly kind: 'record' }
  /** Keeps something of this bag on the shelf, under a name or, of a yarn, with what is told of it. */
  | { readonly kind: 'keep'; readonly what: ShelfKind | 'yarns'; readonly text: string }
  | { readonly kind: 'forget'; readonly what: ShelfKind; readonly name: string }
  | { readonly kind: 'shelf' }
  /** How the party stands, a party of so many bags like this one, or its next bag. */
  | { readonly kind: 'party'; readonly what: 'tally' | 'next' | number }
  /** Leaves this bag for one that matches it. */
  | { readonly kind: 'another'; readonly wish: MatchWish }
  /** Writes the whole log to another file and goes on there. */
  | { readonly kind: 'save'; readonly out: string }
  /** The answer to a question that is put so. */
  | { readonly kind: 'yes-no'; readonly yes: boolean }
  | { readonly kind: 'quit' };

/** Why a typed line is not understood. */
export type ChatFault =
  | { readonly code: 'chat/unknown-command'; readonly word: string; readonly nearest: string | null }
  /** What was said in other words is done by this line. */
  | { readonly code: 'chat/meant'; readonly line: string }
  | { readonly code: 'chat/ambiguous'; readonly word: string; readonly choices: readonly string[] }
  /** A word is null where nothing was typed; a usage is a line as it can be typed in every language. */
  | { readonly code: 'chat/not-a-count'; readonly word: string | null; readonly usage: string }
  | { readonly code: 'chat/not-a-choice'; readonly word: string | null; readonly choices: readonly string[] }
  | { readonly code: 'chat/not-a-side'; readonly word: string | null }
  | {
      readonly code: 'chat/not-in-range';
      readonly word: string;
      readonly least: number;
      readonly most: number;
    }
  | { readonly code: 'chat/needs-more'; readonly usage: string }
  | {
      readonly code: 'chat/unknown-place';
      readonly word: string;
      readonly usage: string;
      readonly verb: string;
    }
  /** More rows than are knitted are to come out. */
  | { readonly code: 'chat/not-so-many-rows'; readonly knitted: number }
  | { readonly code: 'chat/no-such-mark'; readonly name: string; readonly known: readonly string[] }
  | { readonly code: 'chat/left-of-what'; readonly word: 'left' | 'right' }
  | { readonly code: 'chat/which-edge'; readonly needle: string }
  | { readonly code: 'chat/too-many-needles'; readonly needles: readonly string[] }
  | { readonly code: 'chat/count-of-what'; readonly word: string }
  | ({ readonly code: 'chat/which-unit' } & WhichUnit)
  | { readonly code: 'chat/not-a-measurement'; readonly word: string; readonly usage: string }
  | { readonly code: 'chat/not-a-weighing'; readonly text: string; readonly usage: string }
  | { readonly code: 'chat/not-two-sizes'; readonly text: string; readonly usage: string }
  | { readonly code: 'chat/not-a-length'; readonly text: string; readonly usage: string }
  | { readonly code: 'chat/nothing-found-before' }
  | { readonly code: 'chat/nothing-offered' }
  /** Yes or no, where no question waits for it. */
  | { readonly code: 'chat/nothing-asked' }
  | { readonly code: 'chat/not-offered'; readonly most: number }
  /** A command with words behind it that it does not use. */
  | {
      readonly code: 'chat/takes-nothing';
      readonly command: string;
      readonly rest: string;
      readonly instead: string | null;
    }
  /** Nothing of what was typed can be seen at the bench. */
  | {
      readonly code: 'chat/nothing-seen';
      readonly words: readonly string[];
      readonly yarns: readonly string[];
    };
