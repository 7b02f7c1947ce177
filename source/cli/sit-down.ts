/** One sitting: the bag in hand until the maker leaves, and the questions where there is none or another is wanted. */

import { sayWaits } from '../chat/first-run/say.ts';
import { ownFolders, settingsFolder } from '../files/data-folders.ts';
import { clearDrafts } from '../files/drafts.ts';
import { bagToOpen } from '../files/find-bag.ts';
import { type LoadedSettings, loadSettings } from '../files/settings-file.ts';
import type { InUse } from '../journal/fault.ts';
import { createLineSource, type LineSource } from '../screen/parts/line-source.ts';
import { formatFileFault } from '../wording/file-faults.ts';
import type { Words } from '../wording/words.ts';
import { askForBag, forgetAnswers } from './ask-for-bag.ts';
import type { Asked } from './command.ts';
import { openWork, practiceBrief, type WorkOptions } from './open-work.ts';
import { complain, exitCodes, hasScreen } from './outcome.ts';
import { sayOfSettings } from './say-of-settings.ts';
import { wordsFor } from './settings.ts';
import { workIn } from './work.ts';

export interface SittingOptions extends WorkOptions {
  /** Asks for a new bag first, whatever is on the go. */
  readonly asksFirst: boolean;
  readonly plain: boolean;
  /** For another program: one object a line, and nothing is asked. */
  readonly json: boolean;
  readonly settings: LoadedSettings;
}

export async function sitDown(options: SittingOptions): Promise<number> {
  for (const folder of ownFolders()) clearDrafts(folder);
  const source = options.plain || options.json || !hasScreen() ? createLineSource(process.stdin) : null;
  try {
    const status = await sit(options, source);
    return source?.isEndless() ? complain(options.words.cli.endlessLine) : status;
  } finally {
    source?.close();
  }
}

async function sit(options: SittingOptions, source: LineSource | null): Promise<number> {
  let wanted: WorkOptions = options;
  let { settings, words } = options;
  let told = sayOfSettings(settings, words);
  let asks = options.asksFirst;
  let isAnswered = false;
  /** The log of the bag that was left for another. */
  let left: string | null = null;
  for (;;) {
    if (!asks) {
      const opened = openWork(wanted);
      if (!opened.ok) return refuse(opened.fault, words, source !== null);
      const { log } = opened.value;
      told = [...told, ...opened.value.told];
      if (isAnswered && log?.status.state === 'saved') forgetAnswers();
      const end =
        log === null
          ? 'new'
          : await workIn(log, {
              ...wanted,
              words,
              settings: settings.settings,
              told,
              source,
              json: options.json,
            });
      if (typeof end === 'number') return end;
      // The questions are for a maker: a program ends here and begins again.
      if (options.json) return exitCodes.done;
      left = log?.path ?? null;
      if (log !== null) told = [sayWaits(log.state.header.name, log.path, words)];
      settings = loadSettings(settingsFolder());
      words = await wordsFor(settings.settings);
      if (end !== 'new') {
        wanted = end === 'practice' ? practising(options) : goingOn(options, end.open);
        isAnswered = false;
        continue;
      }
    }
    const end = await askForBag({
      settings: settings.settings,
      words,
      told,
      source,
      mayCancel: left !== null,
    });
    if (end.kind === 'cancelled' && left !== null) {
      told = [];
      wanted = goingOn(options, left);
      asks = false;
      isAnswered = false;
      continue;
    }
    if (end.kind === 'left') return exitCodes.done;
    if (end.kind === 'interrupted') return exitCodes.interrupted;
    settings = loadSettings(settingsFolder());
    words = await wordsFor(settings.settings);
    told = end.kind === 'begin' ? [end.kept.told] : [];
    wanted =
      end.kind === 'begin'
        ? { ...options, like: undefined, brief: end.kept.brief, fresh: true }
        : practising(options);
    asks = false;
    isAnswered = end.kind === 'begin';
  }
}

const practising = (options: WorkOptions): WorkOptions => ({
  ...options,
  like: undefined,
  brief: practiceBrief(),
  fresh: false,
});

const goingOn = (options: WorkOptions, log: string): WorkOptions => ({
  ...options,
  like: undefined,
  brief: null,
  fresh: false,
  log,
});

/** Why there is nothing to work on; a bag that is open elsewhere may be looked at. */
async function refuse(fault: string | InUse, words: Words, plain: boolean): Promise<number> {
  if (typeof fault === 'string') return complain(fault);
  if (plain) return complain(`${formatFileFault(fault, words)} ${words.player.howToLook(fault.path)}`);
  const { look } = await import('./replay.ts');
  return look(fault, words);
}

/** Goes on with a bag by its number in the list of bags, or by its name. */
export async function openBag(asked: Asked, bag: string): Promise<number> {
  const found = bagToOpen(bag, null, asked.words);
  if (!found.ok) return complain(found.fault);
  return sitDown({
    ...asked,
    brief: null,
    log: found.value,
    like: undefined,
    fresh: false,
    mayAsk: false,
    asksFirst: false,
    plain: asked.given.has('plain'),
    json: false,
  });
}
