/**
 * The brief for another bag like one that a log tells of, as it was knitted, with the changes accepted on the way; and what
 * came of that bag against what its swatch foretold.
 */
import type { Brief, BriefFile } from '../planning/brief.ts';
import type { CameOut } from '../planning/learned.ts';
import type { Plan } from '../planning/plan.ts';
import { withoutNull } from '../planning/shelf.ts';
import { usedYarn } from '../session/measured.ts';
import type { Session } from '../session/session.ts';
import { phases } from '../steps/step.ts';

/** As many stripes as a brief may list. */
const mostStripes = 200;

/** The JSON of a brief whose plan has the stitches, rows, stripes and gauge of `session`'s, which was begun with `file`. */
export function briefLike(file: BriefFile, session: Session): Readonly<Record<string, unknown>> {
  const { plan } = session.job;
  const { scraps: _, learned: __, ...kept } = file.json as Readonly<Record<string, unknown>>;
  const { brief, rows, stitches } = plan;
  return {
    ...kept,
    bag: { stitches, rows },
    ...(wasMeasured(file.brief, brief) ? { swatch: swatchOf(brief) } : {}),
    yarns: yarnsLike(session),
    stripes: repeatOf(plan),
    cord: { ...(kept.cord as object | undefined), ...cordLike(brief) },
  };
}

/** Its rounds as they were measured, where they were. */
const cordLike = ({ cord: { yarn, roundsPer10Cm } }: Brief): object => withoutNull({ yarn, roundsPer10Cm });

/** Of a yarn weighed at the end, what is left is all that there is for the next bag. */
function yarnsLike(session: Session): Readonly<Record<string, object>> {
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
function swatchOf({ swatch }: Brief): Readonly<Record<string, unknown>> {
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
