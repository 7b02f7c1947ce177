/** What may have happened to the work, and ways out of it: facts, nobody's fault. */
import type { Draw } from '../planning/eyelets.ts';
import type { SlipQuestion } from '../session/diagnose/question.ts';
import type { Care, How, Trace } from '../session/mend/mend.ts';
import type { Slip } from '../session/mend/slip.ts';
import { exhaustive } from '../shared/result.ts';
import type { Amounts } from './amounts.ts';
import { theYarn, yarnName } from './forms.en.ts';

/** A slip with what its sentence needs beyond it. */
export interface SlipTold {
  readonly slip: Slip;
  /** Rows of the bag knitted when it happened, and the stripe. */
  readonly row: number;
  readonly stripe: number;
  /** It may as well have happened at an earlier move, row or stripe. */
  readonly orBefore: boolean;
  /** The rows were added or left out in the stripe on the needles. */
  readonly isNow: boolean;
  /** The yarn that was due, where a yarn is what is wrong. */
  readonly due: string | null;
  readonly carriage: 'left' | 'right';
  readonly hangs: readonly { readonly first: string; readonly last: string; readonly loops: number }[];
}

/** Words that a maker may type and that were passed over. */
type LeftOut = readonly string[];

const moveOf = (told: SlipTold, move: number): string =>
  told.orBefore ? `move ${move}, or of one before it,` : `move ${move}, after row ${told.row},`;

const rowsWord = (rows: number): string =>
  rows === 1 ? 'one row' : rows === 2 ? 'two rows' : `${rows} rows`;

const held = (yarn: string | null): string => (yarn === null ? 'nothing' : theYarn(yarn));

function slipSentence(told: SlipTold): string {
  const { slip } = told;
  switch (slip.is) {
    case 'increase-missing':
      return `The increase of ${moveOf(told, slip.move)} is missing: the leading edge is one needle short.`;
    case 'decrease-missing':
      return `The decrease of ${moveOf(told, slip.move)} is missing: the trailing edge is one needle too far out.`;
    case 'increase-doubled':
      return `The increase of ${moveOf(told, slip.move)} is there twice: the leading edge is one needle too far out.`;
    case 'decrease-doubled':
      return `The decrease of ${moveOf(told, slip.move)} is there twice: the trailing edge is one needle too far in.`;
    case 'move-missing':
      return `The whole of ${moveOf(told, slip.move)} is missing: both edges are one needle behind.`;
    case 'move-doubled':
      return `The whole of ${moveOf(told, slip.move)} is there twice: both edges are one needle too far along.`;
    case 'move-mirrored':
      return `The whole of ${moveOf(told, slip.move)} went the other way, left for right: the work moved back by one needle.`;
    case 'needle-left-working':
      return `The needle emptied by the decrease of ${moveOf(told, slip.move)} stayed in work and took a loop of its own.`;
    case 'needle-left-out-of-work':
      return `The needle uncovered by the increase of ${moveOf(told, slip.move)} is out of work: it should be in work, for the eyelet.`;
    case 'rows-too-many':
      return told.isNow && !told.orBefore
        ? `${capital(rowsWord(slip.rows))} too many ${slip.rows === 1 ? 'is' : 'are'} in this stripe.`
        : `${capital(rowsWord(slip.rows))} too many ${slip.rows === 1 ? 'is' : 'are'} in stripe ${told.stripe}${told.orBefore ? ', or in one before it' : ''}.`;
    case 'rows-too-few':
      return told.isNow && !told.orBefore
        ? `${capital(rowsWord(slip.rows))} of this stripe ${slip.rows === 1 ? 'is' : 'are'} missing.`
        : `${capital(rowsWord(slip.rows))} of stripe ${told.stripe}${told.orBefore ? ', or of one before it,' : ''} ${slip.rows === 1 ? 'is' : 'are'} missing.`;
    case 'stripe-in-other-yarn':
      return `Stripe ${slip.stripe} is in ${yarnName(slip.used)}; ${held(told.due)} was due.`;
    case 'yarns-swapped':
      return `From stripe ${slip.stripe} on ${held(told.due)} and ${yarnName(slip.used)} have changed places.`;
    case 'row-in-other-yarn':
      return `Row ${told.row} is in ${yarnName(slip.used)}; ${held(told.due)} was due.`;
    case 'rehang-missing':
      return `The work was not rehung after row ${slip.row}: it goes on where it was.`;
    case 'rehang-shifted':
      return `After row ${slip.row} the work was hung ${Math.abs(slip.by) === 1 ? 'one needle' : `${Math.abs(slip.by)} needles`} too far to the ${slip.by > 0 ? 'right' : 'left'}.`;
    case 'work-dropped':
      return `In the stripes the bed cannot be empty: the work has dropped. Weights off, a hand under it. ${openLoops(told)}`;
    case 'stitch-dropped':
      return 'One needle between the edges has lost its loop: look along the row for a ladder, and catch it with a latch tool before the next pass.';
    case 'carriage-wrong-side':
      return `The carriage has crossed without knitting: after row ${told.row} it should stand on the ${told.carriage}.`;
    case 'wrong-yarn-in-feeder':
      return `The feeder should hold ${held(told.due)}; it holds ${held(slip.held)}.`;
    default:
      return exhaustive(slip);
  }
}

function openLoops({ hangs, row }: SlipTold): string {
  const loops = hangs.reduce((sum, run) => sum + run.loops * needles(run), 0);
  const odd = hangs.flatMap(({ first, last, loops: each }) => {
    const where = first === last ? first : `each from ${first} to ${last}`;
    if (each === 1) return [];
    return each === 0 ? [`${where} empty for the eyelet`] : [`${each === 2 ? 'two' : each} on ${where}`];
  });
  const span = `from ${hangs[0]?.first ?? ''} to ${hangs.at(-1)?.last ?? ''}`;
  return `The ${loops} open loops are of row ${row}, ${[span, ...odd].join(', ')}: catch those that run with a latch tool, and hang them one by one.`;
}

const needles = ({ first, last }: { readonly first: string; readonly last: string }): number => {
  const across = (name: string): number =>
    (name.startsWith('L') ? 0 : -1) + (name.startsWith('L') ? -1 : 1) * Number(name.slice(1));
  return across(last) - across(first) + 1;
};

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const traces: Readonly<Record<Trace, string>> = {
  'eyelet-out-of-line': 'an eyelet out of line',
  'eyelet-missing': 'an eyelet too few: count on from the gap when threading',
  'extra-eyelet': 'an eyelet too many: pass it by when threading',
  'wide-hole': 'a hole two needles wide',
  'step-in-leading-edge': 'a small step in the mouth edge',
  'step-in-trailing-edge': 'a small step in the bottom edge, inside the seam',
  'hole-at-trailing-edge': 'a hole near the bottom edge',
  'three-in-one': 'three stitches in one',
  'loop-at-edge': 'a loop at the bottom edge that hangs on nothing, inside the seam',
  ladder: 'a ladder where a needle was out of work',
  'stripe-too-high': 'a stripe that is too high',
  'stripe-too-low': 'a stripe that is too low',
  'strand-across': 'a strand across the inside, from edge to edge',
  'wrong-colour': 'a stripe or row in the other colour',
};

const questions: Readonly<Record<SlipQuestion, string>> = {
  loose:
    'Is the outermost loop at the trailing edge loose, with nothing below it? Type find and loose; or find and firm.',
  rehung:
    'Was the work taken off there and rehung, or does it still hang where it was? Type find and rehung; or find and not rehung.',
  'which-edge':
    'At the move that you named first, which edge steps, the leading one or the trailing one? Type find and leading; or find and trailing.',
  'before-move':
    'Were they knitted before the shaping move there, or after it? Look where the edges step: type find and before the move, if they lie below the step; or find and after the move.',
  stray:
    'Follow the trailing edge down to there: does a column of stitches begin on nothing, with a loose loop? Type find and loose; or find and firm.',
  move: 'Follow that edge down to where it steps: at which move is it? Count the eyelets from the needles. Type find and move 4, or find and 14 rows down; or find unsure.',
  'move-or-rehang':
    'Follow the edges down. Where they step, count the eyelets to there: type find and move 4. Where they run straight down to where the work was rehung: find and since row 12. Or find unsure.',
  stripe: 'Look down the work: which stripe is it? Type find and in stripe 3; or find unsure.',
  row: 'After which row was it? Type find and since row 12; or find unsure.',
};

const ofTwo = { first: 'Take either of the two first.', other: 'Now the other of the two.' } as const;

function careSentence(care: Care): string {
  switch (care.is) {
    case 'weights-off':
      return care.comb
        ? 'Take the comb off, a hand under it: nothing may pull at loops that come free.'
        : 'Take the claw weights off, a hand under each: they hang in rows that come out.';
    case 'weights-on':
      return care.comb
        ? 'Hang the comb again.'
        : `Hang the claw weights again, under ${care.left} and ${care.right}.`;
    case 'hold-on-strand':
      return `Weights off. Run a strand through the ${care.loops} loops and hold them on it.`;
    case 'cord-aside':
      return care.finished
        ? 'Lay the finished cord aside: it is needed again.'
        : 'Draw the cord off on a strand and lay it aside: it can go on later.';
    default:
      return exhaustive(care);
  }
}

export const slips = ({ list }: Amounts) => ({
  slip: slipSentence,
  both: (sentences: readonly string[]) => `Two things at once. ${sentences.join(' ')}`,
  or: (sentence: string) => `Or: ${sentence}`,
  heading: (how: How, step: number, isOnly: boolean): string => {
    if (how === 'now') return 'This can be repaired now and leaves no trace:';
    if (how === 'rip') return `Rip back and knit again from step ${step}:`;
    return isOnly ? 'Keep it and make up for it:' : 'Or keep it and make up for it:';
  },
  shows: (shows: readonly Trace[]) => `It will show: ${list(shows.map((trace) => traces[trace]))}.`,
  /** Of two slips one is asked for, then the other. */
  question: (asked: SlipQuestion, which: 'only' | 'first' | 'other') =>
    which === 'only' ? questions[asked] : `${ofTwo[which]} ${questions[asked]}`,
  care: careSentence,
  counter: (row: number) => `Set the row counter to ${row}.`,
  unpick: 'Unpick the waste rows.',
  yarnWhere: (yarn: string) =>
    `Does ${yarn} hang in the newest row, or is it only in the feeder? Type find and newest row ${yarn}, or find and feeder ${yarn}.`,
  leftOut: (words: LeftOut) => `I left out: ${list(words)}.`,
  rowOfWhat: (row: number) =>
    `Row ${row} of the counter, or of this stripe? Type find and counter ${row}, or find and ${row} in this stripe.`,
  onlyTheCount: 'This takes the work out. Where only the count is one too far, type back instead.',
  ladder:
    'A dropped stitch: note where it is, catch it with a latch tool before the next pass, and ladder it up bar by bar.',
  /** A stretch of the job in which the bed looks the same from step to step. */
  standsForMany: (from: number, through: number, part: 'cord' | 'hand', draw: Draw, round: number) =>
    part === 'cord'
      ? `Somewhere in the rounds of the ${draw === 'only' ? '' : `${draw} `}cord, steps ${from} to ${through}: measure it, or count: go round ${round}${draw === 'second' ? ' is its 40th' : ''}.`
      : `Somewhere from step ${from} to ${through}, with the work in the lap. Count: go stitch 23 in the graft, go bar 5 in the seam, go hole 5 in the threading.`,
  /** A command with words behind it that it does not use. */
  nothingSeen: (words: LeftOut, yarns: readonly string[]) =>
    `${list(words)} says nothing about the bed. The yarns here are ${list(yarns)}. For example: find left R10, carriage right.`,
  onTheWay: (back: boolean, at: number, of: number) =>
    back
      ? `You are ripping back, ${at} of ${of}: next goes on, stop ends it.`
      : `You are in the middle of a repair, ${at} of ${of}: next goes on, stop ends it.`,
  leaveWay: (back: boolean, at: number, of: number, staysOnIt: boolean) =>
    `You are at action ${at} of ${of} of the ${back ? 'way back' : 'repair'}${staysOnIt ? ', and it goes on there when the bag is opened again. Leave the bag now?' : '; leave it there?'} Type y or n.`,
  nothingAsked: 'Nothing was asked that y or n answers.',
  notOnOne: 'Nothing is being ripped back or repaired.',
  noSuchMend: 'That repair does not fit the work any more: type find and what you see.',
  betweenPlaces:
    'The bed is between two places of the plan. back goes on with what you stopped; find and what you see shows another way; go and a place says where the work is.',
  leftBetween:
    'Stopped. The bed fits no step of the plan now: back goes on with it; or type find and what you see.',
  further: (why: 'kept' | 'waste', row: number) =>
    why === 'kept'
      ? `A mistake that you kept lies there, so this rips back to row ${row}, before it.`
      : `The waste rows there are out, so this rips back to row ${row}, before them.`,
});
