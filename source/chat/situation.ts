/** What the maker is in the middle of, and help that fits: one sentence, and the few commands that matter there. */
import { currentStep, type Session } from '../session/session.ts';
import type { Way } from '../session/way.ts';
import type { Step } from '../steps/step.ts';
import type { Words } from '../wording/words.ts';
import { findExample, markExample, noteExample, weighExample } from './commands/chat-commands.ts';

export interface Scene {
  readonly session: Session;
  readonly way: Way | null;
  /** What is wrong with saving; null while every press is on disk. */
  readonly trouble: string | null;
  /** Things that `take` would carry out. */
  readonly offers: number;
}

export type Situation =
  | 'trouble'
  | 'way'
  | 'offer'
  | 'finished'
  | 'cast-on'
  | 'stripes'
  | 'shaping'
  | 'rehang'
  | 'closing-row'
  | 'hem'
  | 'graft'
  | 'seam'
  | 'cord'
  | 'threading';

/** The most pressing one comes first: unsaved work, then what is being guided or offered, then the step. */
export function situationOf({ session, way, trouble, offers }: Scene): Situation {
  if (trouble !== null) return 'trouble';
  if (way) return 'way';
  if (offers > 0) return 'offer';
  const step = currentStep(session);
  return step ? situationAt(step) : 'finished';
}

function situationAt({ phase, act }: Step): Situation {
  switch (act.kind) {
    case 'increase':
    case 'decrease':
      return 'shaping';
    case 'thread-eyelets':
    case 'tie':
      return 'threading';
    case 'set-needles-again':
    case 'rehang':
      return 'rehang';
    case 'weights-off':
    case 'take-off':
    case 'release-waste':
      return act.rehangs ? 'rehang' : phase;
    default:
      return phase;
  }
}

export interface HelpNow {
  readonly says: (words: Words) => string;
  /** Lines that work here when typed. */
  readonly examples: (scene: Scene, words: Words) => readonly string[];
}

export const helpNow: Readonly<Record<Situation, HelpNow>> = {
  trouble: {
    says: (words: Words) => words.help.now.trouble,
    examples: () => ['save ../bag.jsonl', 'help log', 'where', 'next'],
  },
  way: {
    says: (words: Words) => words.help.now.way,
    examples: () => ['next', 'back', 'again', 'stop'],
  },
  offer: {
    says: (words: Words) => words.help.now.offer,
    examples: ({ offers }) => [offers === 1 ? 'choose' : 'choose 1', 'where', 'help find', 'next'],
  },
  finished: {
    says: (words: Words) => words.help.now.finished,
    examples: ({ session }, words: Words) => [
      weighExample(session),
      noteExample(words),
      'notes',
      'bags',
      'quit',
    ],
  },
  'cast-on': {
    says: (words: Words) => words.help.now['cast-on'],
    examples: () => ['next', 'plan', 'words ravel cord', 'pedal confirm', 'large on'],
  },
  stripes: {
    says: (words: Words) => words.help.now.stripes,
    examples: ({ session }, words: Words) => [
      'next',
      'where',
      findExample(session),
      markExample(words),
      'why two rows',
    ],
  },
  shaping: {
    says: (words: Words) => words.help.now.shaping,
    examples: ({ session }) => [
      'next',
      'words shaping move',
      'why eyelets',
      'draw bed',
      findExample(session),
    ],
  },
  rehang: {
    says: (words: Words) => words.help.now.rehang,
    examples: () => ['next', 'words rehang', 'why rehang', 'draw bed'],
  },
  'closing-row': {
    says: (words: Words) => words.help.now['closing-row'],
    examples: () => ['next', 'why closing row', 'why tail', 'plan'],
  },
  hem: {
    says: (words: Words) => words.help.now.hem,
    examples: () => ['next', 'words hem', 'why hem', 'draw bed'],
  },
  graft: {
    says: (words: Words) => words.help.now.graft,
    examples: () => ['next', 'words movement', 'why graft', 'back', 'large on'],
  },
  seam: {
    says: (words: Words) => words.help.now.seam,
    examples: () => ['next', 'words bar', 'why seam', 'draw fold'],
  },
  cord: {
    says: (words: Words) => words.help.now.cord,
    examples: ({ session }) => [
      session.job.stepCount - session.done >= severalRounds ? `next ${severalRounds}` : 'next',
      'words slip',
      'why cord',
      'back',
    ],
  },
  threading: {
    says: (words: Words) => words.help.now.threading,
    examples: () => ['next', 'why eyelets', 'draw bag', 'cautions'],
  },
};

/** Rounds that are confirmed at once, once they are knitted. */
const severalRounds = 10;
