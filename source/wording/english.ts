/** English: every topic's words in one table. What has an entry here must have one in every other language. */

import { bench } from './bench.en.ts';
import { cli } from './cli.en.ts';
import { cord } from './cord.en.ts';
import { drawings } from './drawings.en.ts';
import { kit } from './kit.en.ts';
import { logs } from './logs.en.ts';
import { measured } from './measured.en.ts';
import { plan } from './plan.en.ts';
import { player } from './player.en.ts';
import { settings } from './settings.en.ts';
import { sheet } from './sheet.en.ts';
import { shouted } from './shouted.en.ts';
import { slips } from './slips.en.ts';
import { spoken } from './spoken.en.ts';
import { steps } from './steps.en.ts';
import { trouble } from './trouble.en.ts';

export const english = {
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
