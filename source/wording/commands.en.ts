/** The commands of the prompt: how each is typed, what it does, and its gist in at most 28 characters. */
import { languageChoices } from '../settings/settings.ts';
import type { Amounts } from './amounts.ts';

interface CommandWords {
  /** How it is typed, where that is more than its name. */
  readonly usage?: string;
  readonly summary: string;
  readonly gist: string;
}

const lines = ({ choice }: Amounts) => ({
  next: {
    usage: 'next [how many]',
    summary: 'confirm the step on the screen, or several at once',
    gist: 'confirm this step',
  },
  back: {
    usage: 'back [how many]',
    summary: 'take back the last step, repair or change of plan',
    gist: 'take the last one back',
  },
  redo: {
    summary: 'do again what was taken back',
    gist: 'do what was taken back',
  },
  go: {
    usage: 'go PART, or go stripe / row / move / step / stitch / round / mark and its number or name',
    summary: 'go to a place in the work, and leave the knitting as it is',
    gist: 'go to a place',
  },
  find: {
    usage: 'find EDGES YARN, carriage SIDE, feeder YARN, row / stripes / stitches NUMBER; find and MORE',
    summary: 'say what you see, much or little, and learn where you are or what went wrong',
    gist: 'say what you see',
  },
  rip: {
    usage: 'rip row / stripe / move / step / mark and its number or name',
    summary: 'rip the knitting back to a place, guided row by row',
    gist: 'rip the knitting back',
  },
  replan: {
    usage:
      'replan shorter / longer / rows NUMBER; replan NUMBER stitches SIZE NUMBER rows SIZE; weigh YARN GRAMS; colour YARN to YARN; cord YARN',
    summary: 'change the rest of the bag: its length, its gauge as measured, its yarn or a colour',
    gist: 'change the rest of the bag',
  },
  choose: {
    usage: 'choose [NUMBER]',
    summary: 'accept what find, rip or replan offers',
    gist: 'take one of the offers',
  },
  stop: {
    summary: 'end the ripping back or the repair that is being guided',
    gist: 'end a guided repair',
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
    usage: 'note TEXT',
    summary: 'keep a note at this step',
    gist: 'keep a note',
  },
  notes: {
    summary: 'the notes so far',
    gist: 'read the notes',
  },
  weigh: {
    usage: 'weigh YARN GRAMS',
    summary: 'record how much of a yarn is left; at the end this shows what the bag used',
    gist: 'what is left of a yarn',
  },
  measured: {
    usage: 'measured WIDTH DEPTH',
    summary: 'record the size of the finished bag, dry and flat',
    gist: 'record the size you got',
  },
  mark: {
    usage: 'mark NAME',
    summary: 'set a mark at this place, to go back to it',
    gist: 'set a mark here',
  },
  marks: {
    summary: 'the marks so far',
    gist: 'list the marks',
  },
  bags: {
    summary: 'your bags, in progress and finished',
    gist: 'your bags',
  },
  new: {
    summary: 'plan a bag of your own; this one is saved for later',
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
    usage: 'save FILE',
    summary: 'write the whole log to another file and go on there, if there is a problem with the disk',
    gist: 'the log to another file',
  },
  quit: {
    summary: 'quit; everything is saved, and you come back to this step',
    gist: 'quit, and come back later',
  },
  tools: {
    summary: 'tools and materials of this bag, with their numbers',
    gist: 'tools and materials',
  },
  trouble: {
    usage: 'trouble, and what happened',
    summary: 'what to do now when something goes wrong at the bench',
    gist: 'when something goes wrong',
  },
  cord: {
    usage: 'cord LENGTH',
    summary: 'how long the first rounds of the cord are: its rest is counted by that',
    gist: 'the measured cord',
  },
  open: {
    usage: 'open NUMBER, or open and a name',
    summary: 'go on with another bag, by its number in bags or by its name; this one is saved, and waits',
    gist: 'go on with another bag',
  },
  rename: {
    usage: 'rename NAME',
    summary: 'call this bag something else',
    gist: 'call this bag something else',
  },
  discard: {
    usage: 'discard, or discard and the number or name of a bag',
    summary: 'throw a bag away; it asks first, and keeps a copy until the next one',
    gist: 'throw a bag away',
  },
  restore: {
    summary: 'bring back the bag that was thrown away last',
    gist: 'bring back a discarded bag',
  },
  record: {
    summary: 'what this bag took so far: time, size beside the plan, yarn',
    gist: 'time, size and yarn so far',
  },
  tag: {
    usage: 'tag FILE.html, or .svg, or .md',
    summary: 'write a gift tag for this bag',
    gist: 'a gift tag to print',
  },
  another: {
    usage: 'another; another larger / smaller / turned / in YARN and YARN / WIDTH by DEPTH',
    summary: 'begin a bag to match this one, with what was learnt from it',
    gist: 'begin a bag to match this',
  },
  settings: {
    summary: 'how all settings stand; each of them typed alone says its own',
    gist: 'how the settings stand',
  },
  keep: {
    usage: 'keep bed NAME, keep swatch NAME, keep yarn NAME with what is known of it, keep yarns',
    summary: 'keep the bed, the swatch or a yarn of this bag under a name, for other bags',
    gist: 'keep bed, swatch or yarn',
  },
  forget: {
    usage: 'forget bed / swatch / yarn NAME',
    summary: 'take something off the shelf',
    gist: 'take something off the shelf',
  },
  shelf: {
    summary: 'what is kept, what is left of the yarns, and what could be made of them',
    gist: 'beds, swatches, yarns left',
  },
  party: {
    usage: 'party, party NUMBER, or party next',
    summary: 'several bags together: how they stand, so many like this one, or on with the next',
    gist: 'several bags together',
  },
  practice: {
    summary: 'go to the practice bag; this one is saved, and waits',
    gist: 'go to the practice bag',
  },
  pedal: {
    usage: 'pedal confirm / back / again / pass, pedal off, or pedal gap MILLISECONDS',
    summary:
      'set what a foot switch does: type it, then press the switch; gap: the shortest time between two presses',
    gist: 'assign a foot switch',
  },
  large: {
    usage: 'large on, or large off',
    summary: 'large letters, to read from across the room',
    gist: 'large letters',
  },
  bell: {
    usage: 'bell on, or bell off',
    summary: 'a bell: once for a step, twice for a shaping move, three times for a change of yarn',
    gist: 'a bell at each step',
  },
  speech: {
    usage: 'speech on, or speech off',
    summary: 'speak each instruction aloud',
    gist: 'speak each step',
  },
  pause: {
    usage: 'pause short / usual / long',
    summary: 'how long a risky step stays on screen before a press counts',
    gist: 'how long risky steps wait',
  },
  units: {
    usage: 'units cm, or units in',
    summary: 'centimetres, grams and metres, or inches, ounces and yards',
    gist: 'centimetres or inches',
  },
  language: {
    usage: `language ${choice(languageChoices)}`,
    summary: 'English or German; auto follows the system',
    gist: 'English or German',
  },
});

export type CommandName = keyof ReturnType<typeof lines>;
export type CommandsWords = Readonly<Record<CommandName, CommandWords>>;

export const commands: (say: Amounts) => CommandsWords = lines;
