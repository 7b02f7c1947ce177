import { formatFault } from '../chat/wording/faults.ts';
import { formatFileFault } from '../chat/wording/file-faults.ts';
import { readBriefFile } from '../files/brief-file.ts';
import { parseBrief } from '../planning/parse-brief.ts';
import type { Plan } from '../planning/plan.ts';
import { planBag } from '../planning/plan-bag.ts';
import { fail, type Result, succeed } from '../shared/result.ts';

/** The plan of a brief file, or one sentence that names the file and what is wrong in it. */
export function readPlan(path: string): Result<Plan, string> {
  const text = readBriefFile(path);
  if (!text.ok) return fail(formatFileFault(text.fault));
  const brief = parseBrief(text.value);
  if (!brief.ok) return fail(`${path}: ${formatFault(brief.fault)}`);
  const plan = planBag(brief.value);
  return plan.ok ? succeed(plan.value) : fail(`${path}: ${formatFault(plan.fault)}`);
}
