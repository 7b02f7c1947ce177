/** One sitting: the bag in hand until the maker leaves, and the questions where there is none or another is wanted. */

import { ownFolders, settingsFolder } from '../files/data-folders.ts';
import { bagToOpen } from '../files/log-list.ts';
import { type LoadedSettings, loadSettings } from '../files/settings-file.ts';
import { clearDrafts } from '../files/write-whole.ts';
import type { InUse } from '../journal/fault.ts';
import { createLineSource, type LineSource } from '../screen/parts/line-source.ts';
import { formatFileFault } from '../wording/file-faults.ts';
import type { Words } from '../wording/words.ts';
import { askForBag, forgetAnswers } from './ask-for-bag.ts';
import { discard } from './bags-in-hand.ts';
import type { Asked } from './command.ts';
import { openWork, practiceBrief, type WorkOptions } from './open-work.ts';
import { complain, exitCodes, hasScreen } from './outcome.ts';
import { sayOfSettings, wordsFor } from './settings.ts';
import { type Onward, workIn } from './work.ts';

interface SittingOptions extends WorkOptions {
  /** Asks for a new bag first, whatever is on the go. */
  readonly asksFirst: boolean;
  readonly plain: boolean;
  /** For another program: one object a line, and nothing is asked. */
  readonly json: boolean;
  readonly settings: LoadedSettings;
}

/** Goes on with the bag in hand where nothing else is wanted. */
export async function sitDown(
  asked: Asked,
  wanted: Partial<Omit<SittingOptions, keyof Asked>>,
): Promise<number> {
  const options = { ...bagInHand, plain: asked.given.has('plain'), ...asked, ...wanted };
  for (const folder of ownFolders()) clearDrafts(folder);
  const source = options.plain || options.json || !hasScreen() ? createLineSource(process.stdin) : null;
  try {
    const status = await sit(options, source);
    return source?.isEndless() ? complain(options.words.cli.endlessLine) : status;
  } finally {
    source?.close();
  }
}

const bagInHand = {
  brief: null,
  log: undefined,
  like: undefined,
  fresh: false,
  mayAsk: false,
  asksFirst: false,
  json: false,
};

/** What stands between one bag and the next. */
interface Between {
  readonly settings: LoadedSettings;
  readonly words: Words;
  /** Said first. */
  readonly told: readonly string[];
  /** The log of the bag that was left; null where there is none to go back to. */
  readonly left: string | null;
}

/** What comes next: a bag, or the questions for one. */
interface Turn {
  /** Null asks. */
  readonly wanted: WantedWork | null;
  readonly between: Between;
}

interface WantedWork extends WorkOptions {
  /** Its brief comes from the questions: once its log is on disk, what was answered is forgotten. */
  readonly isAnswered?: true;
  /** Noted first, in a bag that has just been begun. */
  readonly notes?: readonly string[];
}

async function sit(options: SittingOptions, source: LineSource | null): Promise<number> {
  const { settings, words } = options;
  const told = sayOfSettings(settings, words);
  let turn: Turn = {
    wanted: options.asksFirst ? null : options,
    between: { settings, words, told, left: null },
  };
  for (;;) {
    const { wanted, between } = turn;
    const next: number | Turn = wanted
      ? await work(wanted, between, options, source)
      : await ask(between, options, source);
    if (typeof next === 'number') return next;
    turn = next;
  }
}

async function work(
  wanted: WantedWork,
  between: Between,
  options: SittingOptions,
  source: LineSource | null,
): Promise<number | Turn> {
  const { words, settings } = between;
  const opened = openWork(wanted);
  if (!opened.ok) return refuse(opened.fault, words, source !== null);
  const { log } = opened.value;
  const told = [...between.told, ...opened.value.told];
  if (log === null) return { wanted: null, between: { ...between, told } };
  for (const text of wanted.notes ?? []) log.append({ do: 'note', text });
  if (wanted.isAnswered && log.status.state === 'saved') forgetAnswers();
  const { json } = options;
  const end = await workIn(log, { ...wanted, words, settings: settings.settings, told, source, json });
  if (typeof end === 'number') return end;
  const thrown = typeof end === 'object' && 'discard' in end ? discard(log.path, end.discard, words) : null;
  // The questions are for a maker: a program ends here and begins again.
  if (json) return thrown?.ok === false ? complain(thrown.fault) : exitCodes.done;
  const after = await reloaded();
  if (thrown) {
    const said = thrown.ok ? thrown.value : thrown.fault;
    return { wanted: goingOn(options, undefined), between: { ...after, told: [said], left: null } };
  }
  const waits = after.words.firstRun.waits(log.session.name, log.path);
  return onward(end, options, { ...after, told: [waits], left: log.path });
}

/** Where a maker goes from a bag that waits. */
function onward(end: Onward, options: SittingOptions, between: Between): Turn {
  if (end === 'practice') return { wanted: practising(options), between };
  if (typeof end === 'object' && 'open' in end) return { wanted: goingOn(options, end.open), between };
  if (typeof end === 'object' && 'another' in end) {
    const { another: brief, notes, told } = end;
    const wanted = { ...options, like: undefined, log: undefined, brief, fresh: true, notes };
    return { wanted, between: { ...between, told: [...between.told, told] } };
  }
  return { wanted: null, between };
}

async function ask(
  { settings, words, told, left }: Between,
  options: SittingOptions,
  source: LineSource | null,
): Promise<number | Turn> {
  const mayCancel = left !== null;
  const end = await askForBag({ settings: settings.settings, words, told, source, mayCancel });
  if (end.kind === 'left') return exitCodes.done;
  if (end.kind === 'interrupted') return exitCodes.interrupted;
  const after = { ...(await reloaded()), told: [], left: null };
  if (end.kind === 'cancelled' && left !== null) return { wanted: goingOn(options, left), between: after };
  if (end.kind !== 'begin') return { wanted: practising(options), between: after };
  const { brief, told: said } = end.kept;
  const wanted = { ...options, like: undefined, brief, fresh: true, isAnswered: true } as const;
  return { wanted, between: { ...after, told: [said] } };
}

/** Settings as they are by now, and the words by them. */
async function reloaded(): Promise<Pick<Between, 'settings' | 'words'>> {
  const settings = loadSettings(settingsFolder());
  return { settings, words: await wordsFor(settings.settings) };
}

const practising = (options: WorkOptions): WorkOptions => ({
  ...options,
  like: undefined,
  brief: practiceBrief(),
  fresh: false,
});

const goingOn = (options: WorkOptions, log: string | undefined): WorkOptions => ({
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
  return found.ok ? sitDown(asked, { log: found.value }) : complain(found.fault);
}
