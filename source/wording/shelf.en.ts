/** What is kept under names, what is left of it, and what could be made of it. */
import type { ShelfKind } from '../planning/shelf.ts';
import type { Amounts } from './amounts.ts';
import { counted } from './counted.en.ts';

const things: Readonly<Record<ShelfKind, string>> = { bed: 'bed', swatch: 'swatch', yarn: 'yarn' };

export const shelf = ({ decimal, length, list, mass, yarnNeeded }: Amounts) => ({
  outside: 'what is kept under names, what is left of the yarns, and what could be made of them',
  empty: [
    'Nothing is kept yet. In a bag type keep bed workroom, keep swatch plum, or keep yarns; then these names do in a brief and in the first questions.',
  ],
  notThere: (kind: ShelfKind, name: string, known: readonly string[]) =>
    known.length === 0
      ? `No ${things[kind]} is kept under the name ${name}: slantwise shelf lists what is; write its figures instead, or keep one.`
      : `No ${things[kind]} is kept under the name ${name}. Kept: ${list(known)}.`,
  kept: (kind: ShelfKind, shown: string) => `Kept: ${things[kind]} ${shown}.`,
  forgotten: (kind: ShelfKind, name: string) => `Off the shelf: ${things[kind]} ${name}.`,
  guessIsNoSwatch:
    'The swatch of this bag is a guess, so there is nothing to keep: knit one and measure it first.',
  sayOfYarn:
    'Give a yarn of this bag, or one with its colour and length, as in: keep yarn plum #6b2d5c 190 m per 100 g 60 g',
  damaged: (path: string) =>
    `${path} cannot be read as a shelf, so it is left as it is. Move it away to begin another.`,
  titles: { bed: 'Beds', swatch: 'Swatches', yarn: 'Yarns' } satisfies Record<ShelfKind, string>,
  bed: (name: string, needles: number, pitchMm: number) =>
    `${name}: ${counted.needle(needles)} ${decimal(pitchMm)} mm apart`,
  swatch: (
    name: string,
    stitches: number,
    widthCm: number,
    rows: number,
    heightCm: number,
    dial: string | null,
  ) =>
    `${name}: ${counted.stitch(stitches)} over ${length(widthCm)}, ${counted.row(rows)} over ${length(heightCm)}${dial === null ? '' : `, stitch size ${dial}`}`,
  yarn: (name: string, colour: string, metresPer100g: number, grams: number | null) =>
    `${name} ${colour}, ${yarnNeeded(metresPer100g)} to 100 g, ${grams === null ? 'not weighed' : `${mass(grams)} left`}`,
  couldMake: (bed: string, swatch: string | null) =>
    `Could be made on ${bed}, in the shape of 14 by 18, by ${swatch === null ? 'a guessed swatch (rule of thumb)' : `the swatch ${swatch}`}:`,
  upTo: (yarns: readonly string[], scraps: boolean, widthCm: number, depthCm: number) =>
    `${list(yarns)}${scraps ? ', a bag of scraps' : ''}: up to ${length(widthCm)} wide and ${length(depthCm)} deep`,
  tooLittle: (yarns: readonly string[]) => `${list(yarns)}: too little for any`,
  sayMore: 'Keep a bed and two weighed yarns, and it says what could be made of them.',
  takes: (names: readonly string[]) => `${list(names)} from your shelf`,
});

export type ShelfWords = ReturnType<typeof shelf>;
