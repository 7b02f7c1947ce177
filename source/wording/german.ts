import { bench } from './bench.de.ts';
import { brief, fields } from './brief.de.ts';
import { cli } from './cli.de.ts';
import { commands } from './commands.de.ts';
import { faults, files } from './faults.de.ts';
import { finding } from './finding.de.ts';
import { firstRun } from './first-run.de.ts';
import { glossary } from './glossary.de.ts';
import { help } from './help.de.ts';
import { inShort } from './in-short.de.ts';
import { logs } from './logs.de.ts';
import { measured, swatchGuide } from './measured.de.ts';
import { page } from './page.de.ts';
import { pictures } from './pictures.de.ts';
import { kit, plan, warnings } from './plan.de.ts';
import { counted } from './plurals.de.ts';
import { prompt } from './prompt.de.ts';
import { reasons } from './reasons.de.ts';
import { bagEnd, player, record } from './record.de.ts';
import { replan } from './replan.de.ts';
import { settings } from './settings.de.ts';
import { sheet } from './sheet.de.ts';
import { party, shelf } from './shelf.de.ts';
import { slips } from './slips.de.ts';
import { shouted, spoken } from './spoken.de.ts';
import { steps } from './steps.de.ts';
import { trouble } from './trouble.de.ts';
import { typed } from './typed.de.ts';
import { wishes } from './wishes.de.ts';
import type { Language, Topics } from './words.ts';

const topics: Topics = {
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

export const inGerman: Language = {
  code: 'de',
  writing: { decimalMark: ',', and: 'und', or: 'oder' },
  topics,
  typed,
};
