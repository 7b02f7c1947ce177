import * as v from 'valibot';
import { opposite } from '../bed/bed.ts';
import { fail, type JsonGroup, type Result, succeed } from '../shared/result.ts';
import { mmPerInch } from '../shared/units.ts';
import { type BagWish, type Brief, type BriefFile, ravelCord, type Swatch, unnamedWaste } from './brief.ts';
import { type BriefJson, briefSchema } from './brief-schema.ts';
import { explainIssues, findOddShape } from './explain-issue.ts';
import type { BriefFault } from './fault.ts';
import { findJsonSlip } from './json-slip.ts';
import { emptyShelf, namesShelf, type Shelf, takeFromShelf } from './shelf.ts';

/** Far more than any brief needs; a file beyond it is another file, given by mistake. */
const mostCharacters = 1_000_000;

/** The JSON in the text of a brief file, or the place (line and column from 1) where it stops being JSON. */
function readJson(file: string): Result<unknown, BriefFault> {
  const text = file.replace(/^\uFEFF/, '');
  if (text.trim() === '') return fail({ code: 'brief/empty' });
  if (text.length > mostCharacters) {
    return fail({ code: 'brief/too-big', characterCount: text.length, most: mostCharacters });
  }
  const slip = findJsonSlip(text);
  if (!slip) return succeed(JSON.parse(text));
  const lines = text.slice(0, slip.offset).split('\n');
  const place = { line: lines.length, column: (lines.at(-1)?.length ?? 0) + 1 };
  return fail({ code: 'brief/not-json', ...place, slip: slip.slip, found: slip.found });
}

/** Reads a brief from the text of its file; the first thing wrong comes back as a fault. `shelf` is asked for what it names. */
export function parseBrief(
  text: string,
  shelf: () => Shelf = () => emptyShelf,
): Result<BriefFile, BriefFault> {
  const written = readJson(text);
  if (!written.ok) return written;
  const json = namesShelf(written.value) ? takeFromShelf(written.value, shelf()) : written;
  return json.ok ? readBriefFile(json.value) : json;
}

/** Checks a brief's JSON, and keeps it beside what it says. */
export function readBriefFile(json: unknown): Result<BriefFile, BriefFault> {
  const brief = readBrief(json);
  // What is no group is no brief.
  return brief.ok ? succeed({ json: json as JsonGroup, brief: brief.value }) : brief;
}

/** Checks a brief's JSON and fills in its defaults. */
export function readBrief(json: unknown): Result<Brief, BriefFault> {
  const oddShape = findOddShape(json);
  if (oddShape) return fail(oddShape);
  const parsed = v.safeParse(briefSchema, json);
  return parsed.success ? completeBrief(parsed.output) : fail(explainIssues(parsed.issues));
}

/** Fills in what the file leaves out, after the checks that look at two fields at once. */
function completeBrief(file: BriefJson): Result<Brief, BriefFault> {
  const fault = checkNames(file) ?? checkStripes(file) ?? checkSwatch(file.swatch);
  if (fault) return fail(fault);
  const crawl = file.crawl ?? 'left';
  return succeed({
    name: file.name,
    bed: {
      ...file.bed,
      marginNeedles: file.bed.marginNeedles ?? 2,
      place: file.bed.place ?? 'centre',
      park: file.bed.park ?? 'home',
      without: file.bed.without ?? [],
    },
    swatch: completeSwatch(file.swatch),
    finishState: file.finishState ?? file.swatch.state ?? 'wet-relaxed',
    bag: completeWish(file.bag),
    boxedCm: file.bag.boxedCm ?? 0,
    crawl,
    homeSide: file.homeSide ?? opposite(crawl),
    edgeStitches: file.edgeStitches ?? 2,
    shapeEveryRows: file.shapeEveryRows ?? 2,
    hem: file.hem ? { rows: file.hem.rows, yarn: file.hem.yarn ?? mainYarn(file) } : null,
    yarns: new Map(
      Object.entries(file.yarns).map(([name, yarn]) => [
        name,
        { ...yarn, grams: yarn.grams ?? null, pricePer100g: yarn.pricePer100g ?? null },
      ]),
    ),
    stripes: file.stripes ?? [],
    scraps: file.scraps ? { rows: file.scraps.rows ?? 2 } : null,
    waste: { yarn: wasteYarn(file), rows: file.waste?.rows ?? 8, ravel: file.waste?.ravel ?? 'loop' },
    cord: {
      stitches: file.cord?.stitches ?? 3,
      yarn: file.cord?.yarn ?? mainYarn(file),
      tieCm: file.cord?.tieCm ?? 25,
      draws: file.cord?.draws ?? 1,
      roundsPer10Cm: file.cord?.roundsPer10Cm ?? null,
    },
    cost: { perHour: file.cost?.perHour ?? null, currency: file.cost?.currency ?? null },
    learned: file.learned ? { ...file.learned, setAside: file.learned.setAside ?? 0 } : null,
  });
}

const mainYarn = (file: BriefJson): string => file.stripes?.[0]?.yarn ?? longestScrap(file);

const wasteYarn = (file: BriefJson): string => file.waste?.yarn ?? unnamedWaste;

function checkNames(file: BriefJson): BriefFault | null {
  const known = Object.keys(file.yarns);
  if (known.length === 0) return { code: 'brief/no-yarns' };
  const reserved = known.find((name) => name === unnamedWaste || name === ravelCord);
  if (reserved) return { code: 'brief/reserved-yarn', yarn: reserved };
  if (known.includes(wasteYarn(file))) return { code: 'brief/waste-is-a-yarn', yarn: wasteYarn(file) };
  if (wasteYarn(file) === ravelCord) return { code: 'brief/reserved-yarn', yarn: ravelCord };
  const asked = [
    ...(file.stripes ?? []).map(({ yarn }, i) => ({ field: `stripes[${i}].yarn`, yarn })),
    ...(file.cord?.yarn ? [{ field: 'cord.yarn', yarn: file.cord.yarn }] : []),
    ...(file.hem?.yarn ? [{ field: 'hem.yarn', yarn: file.hem.yarn }] : []),
  ];
  const stranger = asked.find(({ yarn }) => !known.includes(yarn));
  return stranger ? { code: 'brief/unknown-yarn', ...stranger, known } : null;
}

function checkStripes({ stripes, scraps, yarns }: BriefJson): BriefFault | null {
  if (!scraps) return stripes ? null : { code: 'brief/missing', field: 'stripes' };
  if (stripes) return { code: 'brief/stripes-and-scraps' };
  const unweighed = Object.keys(yarns).find((name) => yarns[name]?.grams === undefined);
  return unweighed === undefined ? null : { code: 'brief/scrap-not-weighed', yarn: unweighed };
}

/** The scrap with the most metres, which can best spare a cord. */
function longestScrap({ yarns }: BriefJson): string {
  const lengths = Object.entries(yarns).map(([name, { grams = 0, metresPer100g }]) => ({
    name,
    metres: grams * metresPer100g,
  }));
  return lengths.reduce((longest, one) => (one.metres > longest.metres ? one : longest)).name;
}

function checkSwatch(swatch: BriefJson['swatch']): BriefFault | null {
  if (swatch.widthCm !== undefined && swatch.widthIn !== undefined) {
    return { code: 'brief/two-units', field: 'swatch.widthCm', other: 'swatch.widthIn' };
  }
  if (swatch.heightCm !== undefined && swatch.heightIn !== undefined) {
    return { code: 'brief/two-units', field: 'swatch.heightCm', other: 'swatch.heightIn' };
  }
  if (swatch.widthCm === undefined && swatch.widthIn === undefined)
    return { code: 'brief/missing', field: 'swatch.widthCm' };
  if (swatch.heightCm === undefined && swatch.heightIn === undefined)
    return { code: 'brief/missing', field: 'swatch.heightCm' };
  if (swatch.loopLengthMm !== undefined && swatch.rowYarnCm !== undefined)
    return { code: 'brief/two-loop-lengths' };
  const { widthMm, heightMm } = completeSwatch(swatch);
  const stitchMm = widthMm / swatch.stitches;
  const rowMm = heightMm / swatch.rows;
  if (stitchMm < 0.2 || stitchMm > 60)
    return { code: 'brief/stitch-impossible', what: 'wide', sizeMm: stitchMm };
  if (rowMm < 0.2 || rowMm > 60) return { code: 'brief/stitch-impossible', what: 'high', sizeMm: rowMm };
  return null;
}

function completeSwatch(swatch: BriefJson['swatch']): Swatch {
  const measuredMm =
    swatch.rowYarnCm === undefined ? swatch.loopLengthMm : (swatch.rowYarnCm * 10) / swatch.stitches;
  return {
    stitches: swatch.stitches,
    rows: swatch.rows,
    widthMm: swatch.widthCm === undefined ? (swatch.widthIn ?? 0) * mmPerInch : swatch.widthCm * 10,
    heightMm: swatch.heightCm === undefined ? (swatch.heightIn ?? 0) * mmPerInch : swatch.heightCm * 10,
    state: swatch.state ?? 'wet-relaxed',
    loopLengthMm: measuredMm ?? null,
    asideMm: (swatch.asideCm ?? 0) * 10,
    stitchSize: swatch.stitchSize ?? null,
    ...(swatch.guess ? { guess: true } : {}),
  };
}

function completeWish({ boxedCm, ...bag }: BriefJson['bag']): BagWish {
  if ('contents' in bag)
    return {
      by: 'contents',
      ...bag.contents,
      // What is to stand on a base is as thick as the base; of anything else nothing is known, so it is taken to be round.
      thicknessCm: bag.contents.thicknessCm ?? (boxedCm || bag.contents.girthCm / Math.PI),
      easePercent: bag.contents.easePercent ?? 10,
    };
  return 'stitches' in bag ? { by: 'counts', ...bag } : { by: 'size', ...bag };
}
