import type { Job } from '../steps/job.ts';

/** What a plan came to when its log was begun: enough to notice that another program plans the same brief otherwise. */
export type PlanFigures = {
  readonly stitches: number;
  readonly rows: number;
  readonly shapings: number;
  readonly needlesUsed: number;
  readonly stepCount: number;
  readonly phaseStarts: readonly number[];
  /** Rows and edge needles of each stay on the bed, as `fromRow`, `throughRow`, `hungLeft`, `hungRight`. */
  readonly hangings: readonly (readonly [number, number, number, number])[];
};

export function figuresOf({ plan, stepCount, phaseStarts }: Job): PlanFigures {
  const { stitches, rows, shapings, needlesUsed } = plan;
  const hangings = plan.hangings.map(
    ({ fromRow, throughRow, hungLeft, hungRight }) => [fromRow, throughRow, hungLeft, hungRight] as const,
  );
  return { stitches, rows, shapings, needlesUsed, stepCount, phaseStarts, hangings };
}

/** The first figure that is not as recorded. Figures that the log does not have are not compared. */
export function findDifference(
  recorded: Readonly<Record<string, unknown>>,
  planned: PlanFigures,
): { readonly figure: string; readonly recorded: string; readonly planned: string } | null {
  for (const [figure, value] of Object.entries(planned)) {
    if (!Object.hasOwn(recorded, figure)) continue;
    const [was, is] = [JSON.stringify(recorded[figure]), JSON.stringify(value)];
    if (was !== is) return { figure, recorded: was, planned: is };
  }
  return null;
}
