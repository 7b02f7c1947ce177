/** German, topic by topic as English has it. */

import { bench } from './bench.de.ts';
import { briefFaults } from './brief-faults.de.ts';
import { cautions } from './cautions.de.ts';
import { chatFaults } from './chat-faults.de.ts';
import { cli } from './cli.de.ts';
import { commands } from './commands.de.ts';
import { drawings } from './drawings.de.ts';
import { fileFaults } from './file-faults.de.ts';
import { finding } from './finding.de.ts';
import { glossary } from './glossary.de.ts';
import { help } from './help.de.ts';
import { lesson } from './lesson.de.ts';
import { logs } from './logs.de.ts';
import { names } from './names.de.ts';
import { place } from './place.de.ts';
import { planPage } from './plan-page.de.ts';
import { player } from './player.de.ts';
import { questions } from './questions.de.ts';
import { reasons } from './reasons.de.ts';
import { record } from './record.de.ts';
import { replanning } from './replanning.de.ts';
import { ripping } from './ripping.de.ts';
import { schema } from './schema.de.ts';
import { settings } from './settings.de.ts';
import { sheet } from './sheet.de.ts';
import { spoken } from './spoken.de.ts';
import { steps } from './steps.de.ts';
import { tools } from './tools.de.ts';
import { trouble } from './trouble.de.ts';
import { warnings } from './warnings.de.ts';
import { weighing } from './weighing.de.ts';
import type { Topics } from './words.ts';

export const german: Topics = {
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
