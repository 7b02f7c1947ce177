/** The shelf as lines: what is kept, what is left, and what could be made of it. */
import type { Possibilities } from '../planning/from-yarn.ts';
import { namesOn, type Shelf, type ShelfKind, shelfKinds } from '../planning/shelf.ts';
import { mmPerInch } from '../shared/units.ts';
import type { Words } from './words.ts';

export function sayShelf(shelf: Shelf, could: Possibilities | null, words: Words): readonly string[] {
  const { shelf: say } = words;
  const kinds = shelfKinds.filter((kind) => namesOn(shelf, kind).length > 0);
  if (kinds.length === 0) return say.empty;
  return [
    ...kinds.flatMap((kind) => [
      `${say.titles[kind]}:`,
      ...namesOn(shelf, kind).map((name) => `  ${sayKept(shelf, kind, name, words)}`),
    ]),
    ...sayPossible(could, words),
  ];
}

function sayPossible(could: Possibilities | null, { shelf: say }: Words): readonly string[] {
  if (!could || could.bags.length === 0) return [say.sayMore];
  return [
    say.couldMake(could.bed, could.swatch),
    ...could.bags.map(
      ({ yarns, scraps, size }) =>
        `  ${size ? say.upTo(yarns, scraps, size.widthCm, size.depthCm) : say.tooLittle(yarns)}`,
    ),
  ];
}

/** One thing that is kept, its name first. */
export function sayKept(shelf: Shelf, kind: ShelfKind, name: string, { shelf: say }: Words): string {
  const [bed, swatch, yarn] = [shelf.beds[name], shelf.swatches[name], shelf.yarns[name]];
  if (kind === 'bed' && bed) return say.bed(name, bed.needles, bed.pitchMm);
  if (kind === 'swatch' && swatch) {
    const { stitches, rows, widthCm, heightCm, widthIn = 0, heightIn = 0, stitchSize } = swatch;
    const inCm = (cm: number | undefined, inches: number): number => cm ?? (inches * mmPerInch) / 10;
    return say.swatch(
      name,
      stitches,
      inCm(widthCm, widthIn),
      rows,
      inCm(heightCm, heightIn),
      stitchSize ?? null,
    );
  }
  return yarn ? say.yarn(name, yarn.colour, yarn.metresPer100g, yarn.grams) : name;
}
