/** English: every topic's words in one table. What has an entry here must have one in every other language. */

import { bench } from './bench.en.ts';
import { briefFaults } from './brief-faults.en.ts';
import { cautions } from './cautions.en.ts';
import { chatFaults } from './chat-faults.en.ts';
import { cli } from './cli.en.ts';
import { commands } from './commands.en.ts';
import { drawings } from './drawings.en.ts';
import { fileFaults } from './file-faults.en.ts';
import { finding } from './finding.en.ts';
import { glossary } from './glossary.en.ts';
import { help } from './help.en.ts';
import { lesson } from './lesson.en.ts';
import { logs } from './logs.en.ts';
import { names } from './names.en.ts';
import { place } from './place.en.ts';
import { planPage } from './plan-page.en.ts';
import { player } from './player.en.ts';
import { questions } from './questions.en.ts';
import { reasons } from './reasons.en.ts';
import { record } from './record.en.ts';
import { replanning } from './replanning.en.ts';
import { ripping } from './ripping.en.ts';
import { schema } from './schema.en.ts';
import { settings } from './settings.en.ts';
import { sheet } from './sheet.en.ts';
import { spoken } from './spoken.en.ts';
import { steps } from './steps.en.ts';
import { tools } from './tools.en.ts';
import { trouble } from './trouble.en.ts';
import { warnings } from './warnings.en.ts';
import { weighing } from './weighing.en.ts';

export const english = {
  names,
  steps,
  spoken,
  cautions,
  trouble,
  tools,
  place,
  finding,
  ripping,
  replanning,
  planPage,
  warnings,
  reasons,
  glossary,
  briefFaults,
  fileFaults,
  chatFaults,
  questions,
  help,
  settings,
  logs,
  player,
  record,
  lesson,
  sheet,
  drawings,
  bench,
  commands,
  cli,
  schema,
  weighing,
};
