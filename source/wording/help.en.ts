/** Help: what fits now, and by topic. */
import type { Amounts } from './amounts.ts';

export const help = (_: Amounts) => ({
  none: (asked: string) => `There is no help on ${asked}.`,
  keys: 'Enter confirms, Left arrow takes back, Tab completes; or ask: what is a bar?',
  topicsAre: (topics: string) => `Type help and a topic: ${topics}; or help all.`,
  alsoCalled: (aliases: string) => `Also: ${aliases}.`,
  forExample: (example: string) => `For example: ${example}.`,
  more: 'Help and a command says more, such as help go.',
  now: {
    trouble: 'Saving makes trouble. You can knit on: nothing is lost while this is open.',
    way: 'You are being guided outside the plan, one step of the hands at a time.',
    offer: 'There is something on offer. Nothing changes until you take it.',
    finished: 'The bag is finished.',
    'cast-on': 'You are at the start: needles, the first loops, waste rows and the ravel cord.',
    stripes: 'You are knitting stripes.',
    shaping: 'You are at a shaping move: an increase at one edge, a decrease at the other.',
    rehang: 'You are at a rehang: the work comes off on waste rows and is hung again.',
    'closing-row': 'You are closing: one row, the tail, waste rows, and the work comes off.',
    graft: 'You are grafting: on each edge in turn the needle goes down one loop and up the next.',
    seam: 'You are sewing the bottom, bar by bar.',
    cord: 'You are making the cord.',
    threading: 'You are threading the cord through the eyelets.',
  },
  topics: {
    keys: {
      names: 'keys, key',
      lines: [
        'With nothing typed, Enter or Space confirms the step, and Left arrow takes the last one back.',
        'Up and Down bring back what you typed, Tab completes a word, Escape clears the line.',
        'F2 shows large letters. Ctrl-C leaves; everything is saved.',
      ],
    },
    switches: {
      names: 'switches, foot switch, row trip',
      lines: [
        'A foot switch or a row trip types a key. Type pedal and what it is to do, then press it.',
        'Presses closer together than the pedal gap count as one, for a switch that bounces.',
        'With a longer pause, a risky step stays on the screen longer before a press counts.',
      ],
    },
    finding: {
      names: 'finding, lost count, lost',
      lines: [
        'Say what you see on the bed, as little as you know: you hear where that is, or what went wrong.',
        'The edges are the outermost needles that hold loops. Say more with find and.',
        'With choose you accept what is offered. Mending is guided step by step, and stop leaves it.',
      ],
    },
    ripping: {
      names: 'ripping, undoing rows',
      lines: [
        'The way back is guided: each row out with every loop caught, each needle and the row counter set back.',
        'What hands cannot undo, such as a cut, is said before you come to it.',
        'To set the count right and leave the work as it is, use go. One step back is back.',
      ],
    },
    replanning: {
      names: 'replanning, longer, shorter, wrong size',
      lines: [
        'What is knitted stays. The rest can be longer or shorter, in whole repeats, or in another colour.',
        'If the piece measures otherwise than the swatch, say what you measured. You see the new plan first.',
      ],
    },
    yarn: {
      names: 'yarn, yarn runs short',
      lines: [
        'The plan shows what each yarn needs, with a reserve, and whether what you weighed is enough.',
        'Weigh what is left of a yarn: weigh keeps it, and with replan the bag becomes one that the yarn allows.',
      ],
    },
    log: {
      names: 'log, saving, saved',
      lines: [
        'Each confirmed step is on disk before it is shown. You can leave at any step, and come back to it.',
        'If the disk makes trouble, save writes the whole log to another file, and the work goes on there.',
        'Notes and named places are kept in the log too.',
      ],
    },
    replay: {
      names: 'replay, lesson, teacher',
      lines: [
        'A log can be played again, at the pace at which it was worked or faster: leave, and type slantwise replay and its file.',
        'A teacher can put lines into a copy of a log with slantwise lesson. The logs are listed by bags.',
      ],
    },
    language: {
      names: 'language, units, inches',
      lines: [
        'All sentences are in English or in German. Commands and needle names are the same in both.',
        'Lengths are in centimetres or in inches.',
      ],
    },
    screen: {
      names: 'screen, drawing, large letters, sound',
      lines: [
        'A drawing can stand in place of the counters: the strip, the bag, the folded seam or the bed.',
        'From across the room, large letters or speech tell the step, and a bell tells one step from another.',
      ],
    },
  },
  aNote: 'a little tighter here',
  aMark: 'before the break',
  moreOfThis: 'more of this',
  confirmSeveral: (howMany: string) => `confirm ${howMany} at once`,
});

export type HelpWords = ReturnType<typeof help>;
