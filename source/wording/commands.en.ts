/** The commands of the prompt: how each is typed, what it does, and its gist in at most 28 characters. */
import type { Amounts } from './amounts.ts';

export const commands = ({ choice }: Amounts) => ({
  next: {
    usage: 'next [how many]',
    summary: 'confirm the step on the screen, or several at once',
    gist: 'confirm this step',
  },
  back: {
    usage: 'back [how many]',
    summary: 'take back the last step, jump, mend or change of plan',
    gist: 'take the last one back',
  },
  redo: {
    summary: 'do again what was taken back',
    gist: 'do what was taken back',
  },
  go: {
    usage: 'go PHASE, or go stripe / row / move / step / stitch / round / mark and its number or name',
    summary: 'jump to a place: it comes next',
    gist: 'jump to a place',
  },
  find: {
    usage: 'find EDGES YARN, carriage SIDE, feeder YARN, row / stripes / stitches NUMBER; find and MORE',
    summary: 'say what you see, as little as you know: where it is, or what went wrong',
    gist: 'say what you see',
  },
  rip: {
    usage: 'rip row / stripe / move / step / mark and its number or name',
    summary: 'the way back with the hands, so that this place comes next again',
    gist: 'the way back by hand',
  },
  replan: {
    usage:
      'replan shorter / longer / rows NUMBER; replan NUMBER stitches SIZE NUMBER rows SIZE; weighed YARN GRAMS; colour YARN to YARN',
    summary: 'plan on from here: other length, measured piece, weighed yarn, new colour',
    gist: 'plan on from here',
  },
  choose: {
    usage: 'choose [NUMBER]',
    summary: 'accept what find, rip or replan offers',
    gist: 'accept an offer',
  },
  stop: {
    summary: 'leave a way back or a mend that is being guided',
    gist: 'leave a way back',
  },
  where: {
    summary: 'where you are, and what the bed should look like',
    gist: 'where you are',
  },
  plan: {
    summary: 'the whole plan: size, yarn, needles, tails',
    gist: 'the whole plan',
  },
  words: {
    usage: 'words, or words and a word; or ask what is a swatch?',
    summary: 'the words of the trade, and what each means',
    gist: 'what a word means',
  },
  why: {
    usage: 'why, or why and what you wonder about',
    summary: 'the craft and the formulas, with the numbers of this bag',
    gist: 'why it is so',
  },
  cautions: {
    summary: 'all cautions, and the step at which each comes',
    gist: 'all cautions',
  },
  again: {
    summary: 'say the instruction once more',
    gist: 'repeat the instruction',
  },
  help: {
    usage: 'help, help all, or help and a command or topic',
    summary: 'what can be typed, and the keys',
    gist: 'what fits now, and topics',
  },
  note: {
    summary: 'keep a remark at this step',
    gist: 'keep a remark',
  },
  notes: {
    summary: 'the remarks kept so far',
    gist: 'read the remarks',
  },
  weigh: {
    usage: 'weigh YARN GRAMS',
    summary: 'keep what is left of a yarn by the scales; at the end it tells what the bag took',
    gist: 'what is left of a yarn',
  },
  measured: {
    usage: 'measured WIDTH DEPTH',
    summary: 'keep the size of the finished bag, dry and flat, beside the plan',
    gist: "keep the bag's own size",
  },
  mark: {
    summary: 'name this place, to go back to it',
    gist: 'name this place',
  },
  marks: {
    summary: 'the places named so far',
    gist: 'the named places',
  },
  bags: {
    summary: 'what is on the go and finished',
    gist: 'on the go, and finished',
  },
  new: {
    summary: 'plan a bag of your own; this one is saved, and waits',
    gist: 'plan a bag of your own',
  },
  draw: {
    usage: 'draw strip / bag / fold / bed, or draw off',
    summary: 'a drawing in place of the counters; it grows with the work',
    gist: 'a drawing of the work',
  },
  sheet: {
    usage: 'sheet FILE.html, or .svg, or .md',
    summary: 'write the plan as a sheet to print',
    gist: 'the plan on a sheet',
  },
  save: {
    summary: 'write the whole log to another file and go on there, when its disk makes trouble',
    gist: 'the log to another file',
  },
  quit: {
    summary: 'leave; everything is saved, and you come back to this step',
    gist: 'leave, and come back later',
  },
  onOrOff: (name: 'large' | 'bell' | 'speech') => `${name} on, or ${name} off`,
  pedal: {
    usage: 'pedal confirm / back / again / pass, pedal off, or pedal gap MILLISECONDS',
    summary:
      'give a foot switch something to do: type it, then press the switch; gap: presses closer together count as one',
    gist: 'assign a foot switch',
  },
  large: {
    summary: 'big letters, to be read from across the bed',
    gist: 'big letters',
  },
  bell: {
    summary: 'ring once for a step, twice for a shaping move, three times for a colour',
    gist: 'ring at each step',
  },
  speech: {
    summary: 'speak each instruction aloud',
    gist: 'speak each step',
  },
  pause: {
    usage: 'pause short / usual / long',
    summary: 'how long to look before a new yarn, a rehang or the closing row',
    gist: 'how long to look twice',
  },
  units: {
    usage: 'units cm, or units in',
    summary: 'centimetres, grams and metres, or inches, ounces and yards',
    gist: 'centimetres or inches',
  },
  language: {
    usage: (codes: readonly string[]) => `language ${choice(codes)}`,
    summary: 'the language of all sentences; auto follows the system',
    gist: 'the language of sentences',
  },
});

export type CommandsWords = ReturnType<typeof commands>;
