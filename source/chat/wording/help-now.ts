/** Help by what is on the screen: one sentence, and the few commands that matter there. */
import type { Words } from '../../wording/words.ts';
import type { Scene, Situation } from '../situation.ts';
import { findExample, markExample, noteExample, weighExample } from './help-examples.ts';

export interface HelpNow {
  readonly says: (words: Words) => string;
  /** Lines that work here when typed. */
  readonly examples: (scene: Scene, words: Words) => readonly string[];
}

export const helpNow: Readonly<Record<Situation, HelpNow>> = {
  trouble: {
    says: (words: Words) =>
      words.say`Saving makes trouble. You can knit on: nothing is lost while this is open.`,
    examples: () => ['save ../bag.jsonl', 'help log', 'where', 'next'],
  },
  way: {
    says: (words: Words) =>
      words.say`You are being guided outside the plan, one step of the hands at a time.`,
    examples: () => ['next', 'back', 'again', 'stop'],
  },
  offer: {
    says: (words: Words) => words.say`There is something on offer. Nothing changes until you take it.`,
    examples: ({ offers }) => [offers === 1 ? 'choose' : 'choose 1', 'where', 'help finding', 'next'],
  },
  finished: {
    says: (words: Words) => words.say`The bag is finished.`,
    examples: ({ session }, words: Words) => [
      weighExample(session),
      noteExample(words),
      'notes',
      'bags',
      'quit',
    ],
  },
  'cast-on': {
    says: (words: Words) =>
      words.say`You are at the start: needles, the first loops, waste rows and the ravel cord.`,
    examples: () => ['next', 'plan', 'words ravel cord', 'pedal confirm', 'large on'],
  },
  stripes: {
    says: (words: Words) => words.say`You are knitting stripes.`,
    examples: ({ session }, words: Words) => [
      'next',
      'where',
      findExample(session),
      markExample(words),
      'why two rows',
    ],
  },
  shaping: {
    says: (words: Words) =>
      words.say`You are at a shaping move: an increase at one edge, a decrease at the other.`,
    examples: ({ session }) => [
      'next',
      'words shaping move',
      'why eyelets',
      'draw bed',
      findExample(session),
    ],
  },
  rehang: {
    says: (words: Words) =>
      words.say`You are at a rehang: the work comes off on waste rows and is hung again.`,
    examples: () => ['next', 'words rehang', 'why rehang', 'draw bed'],
  },
  'closing-row': {
    says: (words: Words) =>
      words.say`You are closing: one row, the tail, waste rows, and the work comes off.`,
    examples: () => ['next', 'why closing row', 'why tail', 'plan'],
  },
  graft: {
    says: (words: Words) =>
      words.say`You are grafting: on each edge in turn the needle goes down one loop and up the next.`,
    examples: () => ['next', 'words movement', 'why graft', 'back', 'large on'],
  },
  seam: {
    says: (words: Words) => words.say`You are sewing the bottom, bar by bar.`,
    examples: () => ['next', 'words bar', 'why seam', 'draw fold'],
  },
  cord: {
    says: (words: Words) => words.say`You are making the cord.`,
    examples: ({ session }) => [
      session.job.stepCount - session.done >= severalRounds ? `next ${severalRounds}` : 'next',
      'words slip',
      'why cord',
      'back',
    ],
  },
  threading: {
    says: (words: Words) => words.say`You are threading the cord through the eyelets.`,
    examples: () => ['next', 'why eyelets', 'draw bag', 'cautions'],
  },
};

/** Rounds that are confirmed at once, once they are knitted. */
const severalRounds = 10;
