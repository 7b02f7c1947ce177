/** Help by topic: what can be done, and lines to try. */

import type { Session } from '../../session/session.ts';
import { rowAt } from '../../steps/job.ts';
import type { Words } from '../../wording/words.ts';
import type { HelpTopicName } from '../help-topic-names.ts';
import type { Named } from '../named.ts';
import { findExample, firstYarn, markExample, noteExample, weighExample } from './help-examples.ts';

export interface HelpTopic extends Named {
  readonly id: HelpTopicName;
  readonly lines: (words: Words) => readonly string[];
  /** Lines to type, in an order in which all of them work. */
  readonly examples: (session: Session, words: Words) => readonly string[];
}

export const helpTopics: readonly HelpTopic[] = [
  {
    id: 'keys',
    names: (words: Words) => words.say`keys, key`,
    lines: (words: Words) => [
      words.say`With nothing typed, Enter or Space confirms the step, and Left arrow takes the last one back.`,
      words.say`Up and Down bring back what you typed, Tab completes a word, Escape clears the line.`,
      words.say`F2 shows large letters. Ctrl-C leaves; everything is saved.`,
    ],
    examples: () => ['next', 'back'],
  },
  {
    id: 'switches',
    names: (words: Words) => words.say`switches, foot switch, row trip`,
    lines: (words: Words) => [
      words.say`A foot switch or a row trip types a key. Type pedal and what it is to do, then press it.`,
      words.say`Presses closer together than the pedal gap count as one, for a switch that bounces.`,
      words.say`With a longer pause, a risky step stays on the screen longer before a press counts.`,
    ],
    examples: () => ['pedal gap 100', 'pause long', 'pedal confirm'],
  },
  {
    id: 'finding',
    names: (words: Words) => words.say`finding, lost count, lost`,
    lines: (words: Words) => [
      words.say`Say what you see on the bed, as little as you know: you hear where that is, or what went wrong.`,
      words.say`The edges are the outermost needles that hold loops. Say more with find and.`,
      words.say`With choose you accept what is offered. Mending is guided step by step, and stop leaves it.`,
    ],
    examples: (session) => ['where', findExample(session), 'find and carriage right'],
  },
  {
    id: 'ripping',
    names: (words: Words) => words.say`ripping, undoing rows`,
    lines: (words: Words) => [
      words.say`The way back is guided: each row out with every loop caught, each needle and the row counter set back.`,
      words.say`What hands cannot undo, such as a cut, is said before you come to it.`,
      words.say`To set the count right and leave the work as it is, use go. One step back is back.`,
    ],
    examples: ({ job, done }) => [
      'back',
      'redo',
      `rip row ${Math.max(1, rowAt(job, done))}`,
      'choose',
      'stop',
    ],
  },
  {
    id: 'replanning',
    names: (words: Words) => words.say`replanning, longer, shorter, wrong size`,
    lines: (words: Words) => [
      words.say`What is knitted stays. The rest can be longer or shorter, in whole repeats, or in another colour.`,
      words.say`If the piece measures otherwise than the swatch, say what you measured. You see the new plan first.`,
    ],
    examples: () => ['replan 20 stitches 9.8 cm 30 rows 10.5 cm', 'replan longer', 'choose 1', 'back'],
  },
  {
    id: 'yarn',
    names: (words: Words) => words.say`yarn, yarn runs short`,
    lines: (words: Words) => [
      words.say`The plan shows what each yarn needs, with a reserve, and whether what you weighed is enough.`,
      words.say`Weigh what is left of a yarn: weigh keeps it, and with replan the bag becomes one that the yarn allows.`,
    ],
    examples: (session) => [
      'plan',
      'why yarn',
      weighExample(session),
      `replan weighed ${firstYarn(session)} 20`,
    ],
  },
  {
    id: 'log',
    names: (words: Words) => words.say`log, saving, saved`,
    lines: (words: Words) => [
      words.say`Each confirmed step is on disk before it is shown. You can leave at any step, and come back to it.`,
      words.say`If the disk makes trouble, save writes the whole log to another file, and the work goes on there.`,
      words.say`Notes and named places are kept in the log too.`,
    ],
    examples: (_, words) => [noteExample(words), 'notes', markExample(words), 'bags', 'save ../bag.jsonl'],
  },
  {
    id: 'replay',
    names: (words: Words) => words.say`replay, lesson, teacher`,
    lines: (words: Words) => [
      words.say`A log can be played again, at the pace at which it was worked or faster: leave, and type slantwise replay and its file.`,
      words.say`A teacher can put lines into a copy of a log with slantwise lesson. The logs are listed by bags.`,
    ],
    examples: () => ['bags'],
  },
  {
    id: 'language',
    names: (words: Words) => words.say`language, units, inches`,
    lines: (words: Words) => [
      words.say`All sentences are in English or in German. Commands and needle names are the same in both.`,
      words.say`Lengths are in centimetres or in inches.`,
    ],
    examples: () => ['language auto', 'units cm'],
  },
  {
    id: 'screen',
    names: (words: Words) => words.say`screen, drawing, large letters, sound`,
    lines: (words: Words) => [
      words.say`A drawing can stand in place of the counters: the strip, the bag, the folded seam or the bed.`,
      words.say`From across the room, large letters or speech tell the step, and a bell tells one step from another.`,
    ],
    examples: () => ['draw strip', 'draw bed', 'large on', 'bell on', 'speech on'],
  },
];
