/** What a line is answered with, and what the conversation remembers of it: what was seen so far, and what was offered. */

import type { Command } from '../session/command.ts';
import type { Remedy } from '../session/diagnose/diagnose.ts';
import type { OpenQuestion, Question } from '../session/diagnose/question.ts';
import type { SlipMoment } from '../session/diagnose/slip-moment.ts';
import type { Place } from '../session/locate/locate.ts';
import type { Look } from '../session/locate/seen.ts';
import type { ReplanChoice } from '../session/replan/replan-choices.ts';
import type { RipBack } from '../session/rip-back/rip-back.ts';
import type { Session, Standing } from '../session/session.ts';
import { harmless } from '../shared/plain-text.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import type { ChatFault, Intent } from './grammar/intent.ts';

/** One line of the transcript. The tone decides how a screen sets it, never what it means. */
export interface Said {
  readonly tone: 'typed' | 'done' | 'answer' | 'caution' | 'fault';
  readonly text: string;
  /** Of a fault: which one. */
  readonly code?: string;
}

export const answer = (...texts: readonly string[]): readonly Said[] =>
  texts.map((text) => ({ tone: 'answer', text: harmless(text) }));

export const faultLine = ({ code }: { readonly code: string }, text: string): Said => ({
  tone: 'fault',
  text,
  code,
});

/** What a typed line brings about. */
export type Reply =
  | { readonly kind: 'say'; readonly lines: readonly Said[] }
  /** Lines to answer with, and what the next lines may take up. */
  | {
      readonly kind: 'offer';
      readonly lines: readonly Said[];
      readonly talk: Talk;
      /** What the log keeps of what was said. */
      readonly record: readonly Command[];
    }
  /** The way is left, for good where it `stops`, and then comes what was asked for. */
  | { readonly kind: 'leave'; readonly next: Intent; readonly stops: boolean }
  | Passed;

/** Intents that the session answers; all others are carried out as they are by whoever asked. */
type Answered =
  | 'go'
  | 'find'
  | 'rip'
  | 'replan'
  | 'weigh'
  | 'measured'
  | 'cord-length'
  | 'choose'
  | 'show'
  | 'trouble'
  | 'words'
  | 'why'
  | 'yes-no';

type Passed = Exclude<Intent, { readonly kind: Answered }>;

/** One thing that a number takes up: what it is, as facts, and what taking it brings about. */
export type Offer = { readonly takes: Reply } & (
  | { readonly is: 'place'; readonly place: Place }
  | { readonly is: 'mend'; readonly remedy: Remedy }
  | { readonly is: 'way-back'; readonly back: RipBack }
  | { readonly is: 'choice'; readonly choice: ReplanChoice }
);

export interface Talk {
  readonly seen: Look | null;
  /** The yarn in it was told by its name alone. */
  readonly bareYarn: boolean;
  /** Where the maker found slips. */
  readonly moments: readonly SlipMoment[];
  /** Questions that the maker passed by. */
  readonly unsure: readonly Question[];
  readonly asked: Question | null;
  /** What was asked so, to be said again in other words or another language. */
  readonly question: OpenQuestion | null;
  /** What is carried out once the question before it is answered with yes. */
  readonly pending: Intent | null;
  /** What `take` and a number carries out, counted from 1. */
  readonly offers: readonly Offer[];
  /** Offers hold for this place of this plan alone, for this step of a way, and until something is set right. */
  readonly at: Standing | null;
}

export const noTalk: Talk = {
  seen: null,
  bareYarn: false,
  moments: [],
  unsure: [],
  asked: null,
  question: null,
  pending: null,
  offers: [],
  at: null,
};

/** Lines with something to take up. */
export const offer = (
  session: Session,
  lines: readonly Said[],
  talk: Partial<Talk>,
  record: readonly Command[] = [],
): Reply => ({
  kind: 'offer',
  lines,
  record,
  talk: { ...noTalk, at: session, ...talk },
});

export const stillHolds = ({ at }: Talk, { job, done, way, mends, adrift }: Session): boolean =>
  at !== null &&
  at.job === job &&
  at.done === done &&
  at.way === way &&
  at.mends === mends &&
  at.adrift === adrift;

export function takeOffer(session: Session, talk: Talk, number: number | null): Result<Reply, ChatFault> {
  const { offers } = talk;
  if (offers.length === 0 || !stillHolds(talk, session)) return fail({ code: 'chat/nothing-offered' });
  if (number === null && offers.length > 1) return fail({ code: 'chat/not-offered', most: offers.length });
  const taken = offers[(number ?? 1) - 1];
  return taken ? succeed(taken.takes) : fail({ code: 'chat/not-offered', most: offers.length });
}
