/** Graft and seam before their first movement and after their last: as they lie then, for close-up and ruler. */
import type { Glance } from '../../../chat/glance.ts';
import type { BenchView } from '../../../chat/view.ts';

export function glanceAround({ glance, phase, plan, step }: BenchView): Glance {
  const loops = plan.stitches;
  const bars = plan.seam.barsPerSide;
  const graft = (at: number): Glance => ({ kind: 'graft', movements: [], loops, count: { at, of: loops } });
  const seam = (from: number): Glance => ({ kind: 'bars', from, through: from - 1, of: bars });
  switch (step?.act.kind) {
    case 'lay-graft':
      return graft(1);
    case 'fasten-graft':
    case 'pull-ravel-cord':
      return graft(loops + 1);
    case 'release-waste':
      return phase === 'graft' ? graft(loops + 1) : glance;
    case 'fold-seam':
      return seam(1);
    case 'fasten-seam':
      return seam(bars + 1);
    default:
      return glance;
  }
}
