/** Help: what fits now, and by topic. */
import type { Amounts } from './amounts.ts';

export const help = (_: Amounts) => ({
  none: (asked: string) => `There is no help on ${asked}.`,
  keys: 'Enter confirms, ← takes it back, Tab completes; or ask: what is a bar?',
  topicsAre: (topics: string) => `Type help and a topic: ${topics}; or help all.`,
  alsoCalled: (aliases: string) => `Also: ${aliases}.`,
  forExample: (example: string) => `For example: ${example}.`,
  more: 'For more, type help and a command, such as help go.',
  now: {
    trouble: 'There is a problem with saving. You can knit on: nothing is lost while this window is open.',
    way: 'You are following a repair or ripping back, one action at a time.',
    offer: 'You can choose one of these. Nothing changes until you do.',
    finished: 'The bag is finished.',
    'cast-on': 'You are at the start: needles, the first loops, waste rows and the ravel row.',
    stripes: 'You are knitting stripes.',
    shaping: 'You are at a shaping move: an increase at one edge, a decrease at the other.',
    rehang: 'You are at a rehang: the work comes off on waste rows and is hung again.',
    'closing-row': 'You are closing: one row, the tail, waste rows, and the work comes off.',
    hem: 'You are knitting the hem: the mouth edge is picked up, folded and chained off, so that it does not roll.',
    graft: 'You are grafting: on each edge in turn the needle goes down one loop and up the next.',
    seam: 'You are sewing the bottom, bar by bar.',
    cord: 'You are making the cord.',
    threading: 'You are threading the cord through the eyelets.',
  },
  topics: {
    keys: {
      names: 'keys, key',
      lines: [
        'With nothing typed, Enter or Space confirms the step, and ← takes the last one back.',
        'Up and Down bring back what you typed, Tab completes a word, Escape clears the line.',
        'F2 shows large letters. Ctrl-C quits; everything is saved.',
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
    find: {
      names: 'find, finding, lost count, lost, lost my place',
      lines: [
        'Say what you see on the bed, as much or as little as you know. You are told where that is, or what went wrong.',
        'The edges are the outermost needles that hold loops. To add to it, type find and … with what else you see.',
        'choose accepts an offer. A repair is guided step by step, and stop ends it.',
      ],
    },
    rip: {
      names: 'rip, ripping, undoing rows',
      lines: [
        'You are guided back: each row out with every loop caught, each needle and the row counter set back.',
        'You are warned before anything that cannot be undone, such as a cut.',
        'To correct the count and leave the work as it is, type go and the place. back takes back one step.',
      ],
    },
    replan: {
      names: 'replan, replanning, longer, shorter, wrong size',
      lines: [
        'What is knitted stays. The rest can be longer or shorter, in whole repeats, or in another colour.',
        'If the piece does not measure as the swatch did, type what you measured. You see the new plan first.',
      ],
    },
    yarn: {
      names: 'yarn, yarn runs short',
      lines: [
        'The plan shows what each yarn needs, with a reserve, and whether what you weighed is enough.',
        'Weigh what is left of a yarn and type weigh with it. Then replan finds a bag that the yarn is enough for.',
      ],
    },
    log: {
      names: 'log, saving, saved',
      lines: [
        'Each confirmed step is on disk before it is shown. You can quit at any step, and come back to it.',
        'If there is a problem with the disk, save writes the whole log to another file and goes on there.',
        'Notes and marks are kept in the log too.',
      ],
    },
    replay: {
      names: 'replay, lesson, teacher',
      lines: [
        'A log can be played back, as fast as it was worked or faster: quit, and type slantwise replay and its file.',
        'A teacher can put lines into a copy of a log with slantwise lesson. bags lists the logs.',
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
        'A drawing can take the place of the counters: the strip, the bag, the folded seam or the bed.',
        'Across the room, read large letters or hear the step spoken. The bell tells you what kind of step it is.',
      ],
    },
  },
  aNote: 'a little tighter here',
  aMark: 'before the break',
  moreOfThis: 'more of this',
  confirmSeveral: (howMany: string) => `confirm ${howMany} at once`,
});
