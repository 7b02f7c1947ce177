/** English: every topic's words in one table. What has an entry here must have one in every other language. */

import { bagEnd } from './bag-end.en.ts';
import { bench } from './bench.en.ts';
import { brief } from './brief.en.ts';
import { cli } from './cli.en.ts';
import { commands } from './commands.en.ts';
import { counted } from './counted.en.ts';
import { faults } from './faults.en.ts';
import { fields } from './fields.en.ts';
import { files } from './files.en.ts';
import { finding } from './finding.en.ts';
import { firstRun } from './first-run.en.ts';
import { glossary } from './glossary.en.ts';
import { help } from './help.en.ts';
import { inShort } from './in-short.en.ts';
import { kit } from './kit.en.ts';
import { logs } from './logs.en.ts';
import { measured } from './measured.en.ts';
import { page } from './page.en.ts';
import { party } from './party.en.ts';
import { pictures } from './pictures.en.ts';
import { plan } from './plan.en.ts';
import { player } from './player.en.ts';
import { prompt } from './prompt.en.ts';
import { reasons } from './reasons.en.ts';
import { record } from './record.en.ts';
import { replan } from './replan.en.ts';
import { settings } from './settings.en.ts';
import { sheet } from './sheet.en.ts';
import { shelf } from './shelf.en.ts';
import { shouted } from './shouted.en.ts';
import { slips } from './slips.en.ts';
import { spoken } from './spoken.en.ts';
import { steps } from './steps.en.ts';
import { swatchGuide } from './swatch-guide.en.ts';
import { trouble } from './trouble.en.ts';
import { warnings } from './warnings.en.ts';
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
