/** Help by topic: what can be done, and lines to try. */
import type { Session } from '../../session/session.ts';
import { say } from '../../shared/say.ts';
import { rowAt } from '../../steps/job.ts';
import type { HelpTopicName } from '../help-topic-names.ts';
import type { Named } from '../named.ts';
import { findExample, firstYarn, markExample, noteExample, weighExample } from './help-examples.ts';

export interface HelpTopic extends Named {
  readonly id: HelpTopicName;
  readonly lines: () => readonly string[];
  /** Lines to type, in an order in which all of them work. */
  readonly examples: (session: Session) => readonly string[];
}

export const helpTopics: readonly HelpTopic[] = [
  {
    id: 'keys',
    names: () => say`keys, key`,
    lines: () => [
      say`With nothing typed, Enter or Space confirms the step, and Left arrow takes the last one back.`,
      say`Up and Down bring back what you typed, Tab completes a word, Escape clears the line.`,
      say`F2 shows large letters. Ctrl-C leaves; everything is saved.`,
    ],
    examples: () => ['next', 'back'],
  },
  {
    id: 'switches',
    names: () => say`switches, foot switch, row trip`,
    lines: () => [
      say`A foot switch or a row trip types a key. Type pedal and what it is to do, then press it.`,
      say`Presses closer together than the pedal gap count as one, for a switch that bounces.`,
      say`With a longer pause, a risky step stays on the screen longer before a press counts.`,
    ],
    examples: () => ['pedal gap 100', 'pause long', 'pedal confirm'],
  },
  {
    id: 'finding',
    names: () => say`finding, lost count, lost`,
    lines: () => [
      say`Say what you see on the bed, as little as you know: you hear where that is, or what went wrong.`,
      say`The edges are the outermost needles that hold loops. Say more with find and.`,
      say`With choose you accept what is offered. Mending is guided step by step, and stop leaves it.`,
    ],
    examples: (session) => ['where', findExample(session), 'find and carriage right'],
  },
  {
    id: 'ripping',
    names: () => say`ripping, undoing rows`,
    lines: () => [
      say`The way back is guided: each row out with every loop caught, each needle and the row counter set back.`,
      say`What hands cannot undo, such as a cut, is said before you come to it.`,
      say`To set the count right and leave the work as it is, use go. One step back is back.`,
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
    names: () => say`replanning, longer, shorter, wrong size`,
    lines: () => [
      say`What is knitted stays. The rest can be longer or shorter, in whole repeats, or in another colour.`,
      say`If the piece measures otherwise than the swatch, say what you measured. You see the new plan first.`,
    ],
    examples: () => ['replan 20 stitches 9.8 cm 30 rows 10.5 cm', 'replan longer', 'choose 1', 'back'],
  },
  {
    id: 'yarn',
    names: () => say`yarn, yarn runs short`,
    lines: () => [
      say`The plan shows what each yarn needs, with a reserve, and whether what you weighed is enough.`,
      say`Weigh what is left of a yarn: weigh keeps it, and with replan the bag becomes one that the yarn allows.`,
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
    names: () => say`log, saving, saved`,
    lines: () => [
      say`Each confirmed step is on disk before it is shown. You can leave at any step, and come back to it.`,
      say`If the disk makes trouble, save writes the whole log to another file, and the work goes on there.`,
      say`Notes and named places are kept in the log too.`,
    ],
    examples: () => [noteExample(), 'notes', markExample(), 'bags', 'save ../bag.jsonl'],
  },
  {
    id: 'replay',
    names: () => say`replay, lesson, teacher`,
    lines: () => [
      say`A log can be played again, at the pace at which it was worked or faster: leave, and type slantwise replay and its file.`,
      say`A teacher can put lines into a copy of a log with slantwise lesson. The logs are listed by bags.`,
    ],
    examples: () => ['bags'],
  },
  {
    id: 'language',
    names: () => say`language, units, inches`,
    lines: () => [
      say`All sentences are in English or in German. Commands and needle names are the same in both.`,
      say`Lengths are in centimetres or in inches.`,
    ],
    examples: () => ['language auto', 'units cm'],
  },
  {
    id: 'screen',
    names: () => say`screen, drawing, large letters, sound`,
    lines: () => [
      say`A drawing can stand in place of the counters: the strip, the bag, the folded seam or the bed.`,
      say`From across the room, large letters or speech tell the step, and a bell tells one step from another.`,
    ],
    examples: () => ['draw strip', 'draw bed', 'large on', 'bell on', 'speech on'],
  },
];
