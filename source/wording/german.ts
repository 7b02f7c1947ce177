/** German, topic by topic as English has it. */

import { german as catalog } from '../languages/german.ts';
import { bench } from './bench.de.ts';
import { cli } from './cli.de.ts';
import { cord } from './cord.de.ts';
import { drawings } from './drawings.de.ts';
import { kit } from './kit.de.ts';
import { logs } from './logs.de.ts';
import { measured } from './measured.de.ts';
import { plan } from './plan.de.ts';
import { player } from './player.de.ts';
import { settings } from './settings.de.ts';
import { sheet } from './sheet.de.ts';
import { shouted } from './shouted.de.ts';
import { slips } from './slips.de.ts';
import { spoken } from './spoken.de.ts';
import { steps } from './steps.de.ts';
import { trouble } from './trouble.de.ts';
import type { Language, Topics } from './words.ts';

const topics: Topics = {
  settings,
  sheet,
  logs,
  player,
  measured,
  kit,
  trouble,
  steps,
  spoken,
  shouted,
  drawings,
  bench,
  cli,
  slips,
  plan,
  cord,
};

export const inGerman: Language = {
  code: 'de',
  writing: { decimalMark: ',', and: 'und', or: 'oder' },
  topics,
  catalog,
};
