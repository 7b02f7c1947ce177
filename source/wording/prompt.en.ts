/** What the prompt answers: the place, what was done, cautions, and what it does not understand. */
import type { Side } from '../bed/bed.ts';
import type { NumberedPlace } from '../steps/landmarks.ts';
import type { Phase } from '../steps/step.ts';
import type { Amounts } from './amounts.ts';
import { counted, yarnClass, yarnName } from './forms.en.ts';

export const prompt = ({ choice, length, list }: Amounts) => ({
  unknownCommand: (word: string, nearest: string) => `There is no command ${word}. Did you mean ${nearest}?`,
  noCommand: (word: string) => `There is no command ${word}. Type help to see them all.`,
  ambiguous: (word: string, choices: readonly string[]) =>
    `${word} could be ${choice(choices)}: type one more letter.`,
  needsMore: (usage: string) => `Something is missing. For example: ${usage}.`,
  notACount: (word: string, usage: string) => `${word} is not a whole number above 0. For example: ${usage}.`,
  sides: ['left', 'right'],
  notInRange: (word: string, least: number, most: number) =>
    `${word} is not a whole number from ${least} to ${most}.`,
  standsAlone: (command: string, rest: string, instead: string | null) =>
    `${command} takes no other words: type ${instead === null ? `it without "${rest}"` : `${instead}, if you mean that`}.`,
  unknownPlace: (word: string, usage: string, verb: string) =>
    `${word} is not a place to go to. For example: ${usage}; type help ${verb} for more.`,
  noSuchMark: (name: string, known: readonly string[]) => `There is no mark ${name}. Marks: ${list(known)}.`,
  noMarks: 'No marks have been made yet. Type mark and a name.',
  noSuchPlace: (what: NumberedPlace, number: number, most: number) =>
    `There is no ${what} ${number}: this bag has ${most}.`,
  notSoManyRows: (knitted: number) =>
    knitted === 0
      ? 'No row of the bag is knitted yet: type back, if only the count is one too far.'
      : `So many rows cannot come out: ${knitted === 1 ? 'one is' : `${knitted} are`} knitted.`,
  noSuchPhase: (phase: string) => `This bag has no ${phase}.`,
  leftOfWhat: (word: Side, needle: 'L24' | 'R21') =>
    `Say carriage ${word}, or ${word} and the needle at that edge: ${word} ${needle}.`,
  whichEdge: (needle: string) =>
    `Is ${needle} the left edge or the right? Type left ${needle}, or right ${needle}, or give both edges.`,
  tooManyNeedles: (needles: readonly string[]) =>
    `${list(needles)} are more than two edges: give the outermost needles that hold loops.`,
  countOfWhat: (word: string) =>
    `${word} of what? For example: row ${word}, stripes ${word}, ${word} stitches.`,
  notAMeasurement: (word: string, usage: string) =>
    `${word} is not understood here. For example: ${usage}; type help replan for more.`,
  notAWeighing: (text: string, usage: string) =>
    `${text} is not a yarn and a weight of 0 or more. For example: ${usage}.`,
  notTwoSizes: (text: string, usage: string) => `${text} is not a width and a depth. For example: ${usage}.`,
  nothingFoundBefore: 'There is nothing to add to yet: type find and what you see, without the word and.',
  nothingOffered: 'There is nothing to choose yet: type find, rip or replan first.',
  notOffered: 'There is one offer: type choose.',
  whichOffer: (most: number) => `Which one? Type choose and a number from 1 to ${most}.`,
  missingChoice: (choices: readonly string[]) => `Something is missing: choose ${choice(choices)}.`,
  notAChoice: (word: string, choices: readonly string[]) => `${word} is not one of ${choice(choices)}.`,
  done: {
    back: (place: string) => `Taken back: ${place}`,
    redo: (place: string) => `Done again: ${place}`,
    go: (place: string) => `Gone to: ${place}`,
    note: (text: string) => `Noted: ${text}`,
    setRight: (place: string) => `Repaired: ${place}`,
    stop: 'Stopped. The ripping back or repair has ended; type where to see the place.',
    replan: (planned: string) => `Replanned: ${planned}.`,
    now: (place: string) => `Now ${place}`,
    mark: (name: string) => `Mark set here: ${name}.`,
    rippedBack: (place: string) => `Ripped back: ${place}`,
    several: (first: number, last: number, all: number) => `${first} to ${last}: ${all} steps confirmed`,
  },
  oneAtATime: 'One step at a time: Enter confirms, ← takes back, stop ends it.',
  wayBack: (at: number, of: number, text: string) => `Back, ${at} of ${of}: ${text}`,
  wayMend: (at: number, of: number, text: string) => `Repair, ${at} of ${of}: ${text}`,
  place: {
    finished: 'the bag is finished.',
    next: (step: number, stepCount: number, phase: string, row: number, knittedRows: number) =>
      `step ${step} of ${stepCount} comes next, ${phase}, ${counted.row(row)} of ${knittedRows} knitted.`,
    here: (place: string) => `You are here: ${place}`,
  },
  welcome: {
    again: (name: string) => `Back to ${name}.`,
    bag: (name: string, stitches: number, rows: number, widthCm: number, depthCm: number) =>
      `${name}: ${stitches} stitches, ${rows} rows round, ${length(widthCm)} wide and ${length(depthCm)} deep.`,
    sides:
      'Left and right are yours, facing the bed. Type plan for the whole plan, help for what you can type.',
  },
  bagFinished: 'The bag is finished.',
  stepNow: (step: number, stepCount: number, phase: string, text: string) =>
    `Step ${step} of ${stepCount}, ${phase}: ${text}`,
  caution: (caution: string) => `Caution: ${caution}`,
  bed: {
    empty: 'The bed is empty.',
    carriage: (carriage: Side) => `Carriage on the ${carriage}.`,
    noLoops: (carriage: string) => `No loops on the bed. ${carriage}`,
    moves: (done: number, all: number) => `${done} of ${all} shaping moves done.`,
    edges: (left: string, right: string, stitches: number, carriage: string, moves: string) =>
      `Edges ${left} and ${right}, ${counted.needle(stitches)} with loops. ${carriage} ${moves}`,
    parkedAt: (yarn: string, end: Side) => `${yarnName(yarn)} on the ${end}`,
    feederEmpty: 'Nothing in the feeder.',
    feeder: (yarn: string) => `In the feeder: ${yarnName(yarn)}.`,
    parked: (waiting: string[]) => `Parked: ${list(waiting)}.`,
  },
  notes: {
    none: ['No notes yet. Type note and what you want to remember.'],
    after: (done: number, text: string) => `Step ${done + 1}: ${text}`,
  },
  marks: {
    none: ['No marks yet. Type mark and a name.'],
    next: (name: string, step: number) => `${name}: step ${step}`,
  },
  cautions: {
    hooks: 'Needle hooks and latches are sharp: keep fingers clear while the carriage moves.',
    weights: 'Weights fall: hang them with a hand under them, feet clear.',
    'weights-off': 'Take the weights off before any stitch is released; feet clear.',
    steam: 'If you steam the bag: steam scalds, and it flattens man-made fibre.',
    lookTwice: 'Check first: this cannot be undone.',
    cords: (endCm: number, cordCm: number, freeCordCm: number, loopCm: number) =>
      `Keep cords away from small children: this one has free ends of ${length(endCm)} and makes a loop of ${length(cordCm)}. EN 71-1:2005+A8:2009 allowed ${length(freeCordCm)} and ${length(loopCm)} in toys for the youngest; see the edition in force. Local rules decide.`,
    forSwitch: 'When you assign a foot switch',
    afterHalfHour: 'After half an hour of work',
    atStep: (value: number) => `At step ${value}`,
    atStepsOf: (steps: string, all: number) => `At steps ${steps} …, ${all} in all`,
    atSteps: (steps: string[]) => `At steps ${list(steps)}`,
  },
  rest: {
    rest: 'Rest your hands and shoulders for a few minutes (rule of thumb).',
    halfHour: 'That was half an hour of work.',
    aloud: 'half an hour, rest your hands',
  },
  sheetEnding: (out: string) =>
    `${out} does not end in .html, .svg or .md, which say what kind of sheet to write: add one of them.`,
  sheetWritten: (out: string) => `The sheet is written: ${out}`,
  yarn: yarnName,
  yarnClass,
  phases: {
    'cast-on': 'cast-on',
    stripes: 'stripes',
    'closing-row': 'closing row',
    hem: 'hem',
    graft: 'graft',
    seam: 'seam',
    cord: 'cord',
  } satisfies Record<Phase, string>,
  tooSoonLookFirst: 'too soon, look first',
  noPassIsDue: 'no pass is due',
  theBagIsFinished: 'the bag is finished',
});
