import { bench } from './bench.en.ts';
import { brief, fields } from './brief.en.ts';
import { cli } from './cli.en.ts';
import { commands } from './commands.en.ts';
import { faults, files } from './faults.en.ts';
import { finding } from './finding.en.ts';
import { firstRun } from './first-run.en.ts';
import { glossary } from './glossary.en.ts';
import { help } from './help.en.ts';
import { inShort } from './in-short.en.ts';
import { logs } from './logs.en.ts';
import { measured, swatchGuide } from './measured.en.ts';
import { page } from './page.en.ts';
import { pictures } from './pictures.en.ts';
import { kit, plan, warnings } from './plan.en.ts';
import { counted } from './plurals.en.ts';
import { prompt } from './prompt.en.ts';
import { reasons } from './reasons.en.ts';
import { bagEnd, player, record } from './record.en.ts';
import { replan } from './replan.en.ts';
import { settings } from './settings.en.ts';
import { sheet } from './sheet.en.ts';
import { party, shelf } from './shelf.en.ts';
import { slips } from './slips.en.ts';
import { shouted, spoken } from './spoken.en.ts';
import { steps } from './steps.en.ts';
import { trouble } from './trouble.en.ts';
import { wishes } from './wishes.en.ts';

export const english = {
  counted: () => counted,
  bagEnd,
  finding,
  pictures,
  warnings,
  page,
  prompt,
  faults,
  record,
  fields,
  replan,
  files,
  brief,
  firstRun,
  reasons,
  glossary,
  commands,
  help,
  settings,
  sheet,
  shelf,
  party,
  swatchGuide,
  logs,
  player,
  measured,
  kit,
  trouble,
  steps,
  spoken,
  inShort,
  shouted,
  bench,
  cli,
  slips,
  plan,
  wishes,
};
