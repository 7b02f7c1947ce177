/** English: every topic's words in one table. What has an entry here must have one in every other language. */

import { bench } from './bench.en.ts';
import { cli } from './cli.en.ts';
import { cord } from './cord.en.ts';
import { drawings } from './drawings.en.ts';
import { logs } from './logs.en.ts';
import { measured } from './measured.en.ts';
import { plan } from './plan.en.ts';
import { player } from './player.en.ts';
import { settings } from './settings.en.ts';

export const english = {
  settings,
  logs,
  player,
  measured,
  drawings,
  bench,
  cli,
  plan,
  cord,
};
