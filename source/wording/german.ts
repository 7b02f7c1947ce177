/** German, topic by topic as English has it. */

import { bench } from './bench.de.ts';
import { cli } from './cli.de.ts';
import { cord } from './cord.de.ts';
import { drawings } from './drawings.de.ts';
import { logs } from './logs.de.ts';
import { measured } from './measured.de.ts';
import { plan } from './plan.de.ts';
import { player } from './player.de.ts';
import { settings } from './settings.de.ts';
import type { Topics } from './words.ts';

export const german: Topics = {
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
