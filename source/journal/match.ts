/**
 * A bag to match one that was made: the same again as it was knitted, with the changes accepted on the way; its colours turned
 * round or others in their place; or another size, divided by what the first bag came to over what its swatch foretold, where
 * nothing more was learnt.
 */

import type { Brief, BriefFile } from '../planning/brief.ts';
import type { CameOut } from '../planning/learned.ts';
import type { Plan } from '../planning/plan.ts';
import { withoutNull } from '../planning/shelf.ts';
import { usedYarn } from '../session/measured.ts';
import type { Session } from '../session/session.ts';
import type { JsonGroup } from '../shared/result.ts';
import { phases } from '../steps/step.ts';

interface OtherYarn {
  readonly name: string;
  readonly colour: string;
  /** Null takes that of the yarn whose place it takes. */
  readonly metresPer100g: number | null;
  readonly grams: number | null;
}

export type MatchWish =
  | { readonly is: 'same' }
  /** Each yarn takes the place of the next. */
  | { readonly is: 'turned' }
  | { readonly is: 'larger' | 'smaller' }
  | { readonly is: 'size'; readonly widthCm: number; readonly depthCm: number }
  /** In the order of the stripes; yarns that are left over stay. */
  | { readonly is: 'yarns'; readonly yarns: readonly OtherYarn[] };

/** A size up is a fifth wider and deeper (rule of thumb). */
const sizeUp = 1.2;

/** The JSON of the brief, by another name. `isLearned`: more bags than this one tell what becomes of the size. */
export function matchBrief(
  file: BriefFile,
  session: Session,
  wish: MatchWish,
  { name, isLearned }: { readonly name: string; readonly isLearned: boolean },
): JsonGroup {
  const like = { ...briefLike(file, session), name };
  switch (wish.is) {
    case 'same':
      return like;
    case 'turned':
      return turnColours(like, 1);
    case 'larger':
      return { ...like, bag: scaled(session, sizeUp) };
    case 'smaller':
      return { ...like, bag: scaled(session, 1 / sizeUp) };
    case 'size': {
      const { width, depth } = (isLearned ? null : outcomeOf(session)) ?? { width: 1, depth: 1 };
      return {
        ...like,
        bag: { ...boxedOf(session, 1), widthCm: wish.widthCm / width, depthCm: wish.depthCm / depth },
      };
    }
    case 'yarns':
      return inOtherYarns(like, wish.yarns);
  }
}

function scaled(session: Session, by: number): JsonGroup {
  const { widthCm, depthCm } = session.job.plan.size;
  return { ...boxedOf(session, by), widthCm: by * widthCm, depthCm: by * depthCm };
}

/** A boxed bottom grows with the bag. */
const boxedOf = ({ job }: Session, by: number): JsonGroup => {
  const { boxedCm } = job.plan.brief;
  return boxedCm > 0 ? { boxedCm: by * boxedCm } : {};
};

function inOtherYarns(json: JsonGroup, others: readonly OtherYarn[]): JsonGroup {
  const coloured = colouredOf(json);
  const names = stripeYarns(coloured);
  const otherFor = new Map(names.slice(0, others.length).map((name, i) => [name, others[i]]));
  const yarns = Object.entries(coloured.yarns).map(([name, yarn]) => {
    const other = otherFor.get(name);
    if (!other) return [name, yarn];
    const own = coloured.yarns[other.name];
    if (own) return [other.name, own];
    const { colour, metresPer100g, grams } = other;
    const length = metresPer100g ?? yarn.metresPer100g;
    return [other.name, { colour, metresPer100g: length, ...(grams === null ? {} : { grams }) }];
  });
  return inYarns({ ...json, yarns: Object.fromEntries(yarns) }, (yarn) => otherFor.get(yarn)?.name ?? yarn);
}

/** A name that no other bag has: `Dice bag 2`. */
export function nextName(name: string, taken: readonly string[]): string {
  const stem = name.replace(/ \d+$/, '');
  let number = 2;
  while (taken.includes(`${stem} ${number}`)) number++;
  return `${stem} ${number}`;
}

/** As many stripes as a brief may list. */
const mostStripes = 200;

/** The JSON of a brief whose plan has the stitches, rows, stripes and gauge of `session`'s, which was begun with `file`. */
export function briefLike(file: BriefFile, session: Session): JsonGroup {
  const { plan } = session.job;
  const { scraps: _, learned: __, ...kept } = file.json as JsonGroup;
  const { brief, rows, stitches } = plan;
  const { yarn, roundsPer10Cm } = brief.cord;
  return {
    ...kept,
    bag: { stitches, rows },
    ...(wasMeasured(file.brief, brief) ? { swatch: swatchOf(brief) } : {}),
    yarns: yarnsLike(session),
    stripes: repeatOf(plan),
    // Its rounds as they were measured, where they were.
    cord: { ...(kept.cord as object | undefined), ...withoutNull({ yarn, roundsPer10Cm }) },
  };
}

/** Of a yarn weighed at the end, what is left is all that there is for the next bag. */
function yarnsLike(session: Session): JsonGroup {
  const left = new Map(usedYarn(session).map((used) => [used.yarn, used]));
  return Object.fromEntries(
    [...session.job.plan.brief.yarns].map(([name, yarn]) => {
      const used = left.get(name);
      return [name, withoutNull(used?.atEnd ? { ...yarn, grams: used.leftGrams } : yarn)];
    }),
  );
}

const wasMeasured = (begun: Brief, { swatch }: Brief): boolean =>
  JSON.stringify(begun.swatch) !== JSON.stringify(swatch);

/** Forty stitches and rows, so that the sizes are ones that a swatch can have. */
function swatchOf({ swatch }: Brief): JsonGroup {
  const { stitches, rows, widthMm, heightMm, state, loopLengthMm, asideMm, stitchSize } = swatch;
  return {
    stitches: 40,
    rows: 40,
    widthCm: (widthMm / stitches) * 4,
    heightCm: (heightMm / rows) * 4,
    state,
    // It leans as it did, over forty rows.
    asideCm: (asideMm / rows) * 4,
    ...withoutNull({ loopLengthMm, stitchSize }),
  };
}

/** The shortest repeat that gives the stripes as they were knitted. */
function repeatOf({ stripes, brief }: Plan): Brief['stripes'] {
  const knitted = stripes.map(({ yarn, rows }) => ({ yarn, rows }));
  const same = (i: number, j: number): boolean =>
    knitted[i]?.yarn === knitted[j]?.yarn && knitted[i]?.rows === knitted[j]?.rows;
  for (let length = 1; length <= Math.min(knitted.length, mostStripes); length++) {
    if (knitted.length % length === 0 && knitted.every((_, i) => same(i, i % length))) {
      return knitted.slice(0, length);
    }
  }
  return brief.stripes;
}

/** Null before it was measured, sewn, and where its plan came from the piece and not from the swatch. */
export function outcomeOf({ job, measured }: Session): CameOut | null {
  const { size, brief } = job.plan;
  const sewn = job.phaseStarts[phases.indexOf('seam')] ?? 0;
  if (!measured || measured.done <= sewn || brief.swatch.onPiece) return null;
  const { widthFactor, depthFactor } = brief.learned ?? { widthFactor: 1, depthFactor: 1 };
  return {
    width: (measured.widthCm / size.widthCm) * widthFactor,
    depth: (measured.depthCm / size.depthCm) * depthFactor,
  };
}

/** What has a colour in the JSON of a brief. */
interface Coloured {
  readonly yarns: Readonly<Record<string, JsonGroup>>;
  readonly stripes: readonly { readonly yarn: string; readonly rows: number }[];
  readonly hem?: JsonGroup;
  readonly cord?: JsonGroup;
}

const colouredOf = (json: JsonGroup): Coloured => json as unknown as Coloured;

/** Each yarn once, in the order in which the stripes first have it. */
const stripeYarns = ({ stripes }: Pick<Coloured, 'stripes'>): readonly string[] => [
  ...new Set(stripes.map(({ yarn }) => yarn)),
];

/** The brief with each yarn of its stripes, its hem and its cord as `nameOf` has it. */
function inYarns(json: JsonGroup, nameOf: (yarn: string) => string): JsonGroup {
  const { stripes, hem, cord } = colouredOf(json);
  const other = (key: string, made: JsonGroup | undefined): JsonGroup =>
    typeof made?.yarn === 'string' ? { [key]: { ...made, yarn: nameOf(made.yarn) } } : {};
  return {
    ...json,
    stripes: stripes.map((stripe) => ({ ...stripe, yarn: nameOf(stripe.yarn) })),
    ...other('hem', hem),
    ...other('cord', cord),
  };
}

/** Each yarn takes the place of the one so many places on; a bag of scraps has no places, and stays. */
export function turnColours(json: JsonGroup, places: number): JsonGroup {
  if (!Array.isArray(json.stripes)) return json;
  const names = stripeYarns(colouredOf(json));
  return inYarns(json, (yarn) => {
    const at = names.indexOf(yarn);
    return at < 0 ? yarn : (names[(at + places) % names.length] ?? yarn);
  });
}
