/** A plan for drawings alone, in which each colour of a self-striping yarn is a stripe of its own. */
import { colourRuns } from '../../planning/colour-run.ts';
import type { Plan } from '../../planning/plan.ts';

const known = new WeakMap<Plan, Plan>();

/** The plan itself where no yarn has a run of colours. */
export function asDyed(plan: Plan): Plan {
  const dyed = known.get(plan) ?? dye(plan);
  known.set(plan, dyed);
  return dyed;
}

function dye(plan: Plan): Plan {
  const runs = colourRuns(plan);
  if (runs.length === 0) return plan;
  const yarns = new Map(plan.brief.yarns);
  const nameOf = (yarn: string, colour: string): string => {
    const colours = [...new Set(runs.find((run) => run.yarn === yarn)?.bands.map((band) => band.colour))];
    return `${yarn} ${colours.indexOf(colour) + 1}`;
  };
  const stripes: Plan['stripes'][number][] = [];
  for (const stripe of plan.stripes) {
    const run = runs.find(({ yarn }) => yarn === stripe.yarn);
    const bands = run?.bands.filter(
      ({ fromRow, throughRow }) => throughRow >= stripe.firstRow && fromRow <= stripe.lastRow,
    );
    for (const band of bands ?? [null]) {
      const yarn = band ? nameOf(stripe.yarn, band.colour) : stripe.yarn;
      const own = plan.brief.yarns.get(stripe.yarn);
      if (band && own) yarns.set(yarn, { ...own, colour: band.colour });
      const firstRow = Math.max(stripe.firstRow, band?.fromRow ?? 0);
      const lastRow = Math.min(stripe.lastRow, band?.throughRow ?? stripe.lastRow);
      stripes.push({ yarn, firstRow, lastRow, rows: lastRow - firstRow + 1, number: stripes.length + 1 });
    }
  }
  return { ...plan, brief: { ...plan.brief, yarns }, stripes };
}
