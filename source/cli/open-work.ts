/** Finds the bag to work on: the log that is named, the brief that is named, the bag in hand, or the practice bag. */
import { isDeepStrictEqual } from 'node:util';
import { logFolder, namedLog, practiceText } from '../files/data-folders.ts';
import { type FoundLog, findLog, folderFault, newLogPath, readLogFile } from '../files/log-list.ts';
import { openSessionLog, type SoundPart, saveSoundPart, startSessionLog } from '../files/open-log.ts';
import { holdsBytes } from '../files/read-file.ts';
import type { SessionLog } from '../files/session-log.ts';
import type { FileFault, InUse, JournalFault } from '../journal/fault.ts';
import { briefLike } from '../journal/match.ts';
import type { BriefFile } from '../planning/brief.ts';
import { parseBrief, readBriefFile } from '../planning/parse-brief.ts';
import { nearest } from '../shared/nearest.ts';
import { forShell } from '../shared/plain-text.ts';
import { fail, isOf, type Result, succeed } from '../shared/result.ts';
import { formatFault } from '../wording/faults.ts';
import { formatFileFault } from '../wording/file-faults.ts';
import { notesLike } from '../wording/logs.ts';
import type { Words } from '../wording/words.ts';
import type { CliCommand } from './command.ts';
import { readBriefAt, sayLogFault, withLearned } from './read-input.ts';

export interface WorkOptions {
  /** Path of a brief, or one that is read already; null goes on with the bag in hand. */
  readonly brief: string | BriefFile | null;
  readonly log: string | undefined;
  /** Log of a bag that another is to match. */
  readonly like: string | undefined;
  /** Begins another, even when this bag is on the go. */
  readonly fresh: boolean;
  /** With nothing on the go no practice bag is begun: there is somebody to be asked. */
  readonly mayAsk: boolean;
  /** Version of this program. */
  readonly program: string;
  readonly words: Words;
  /** A first word may have been meant as one of them. */
  readonly commands: readonly CliCommand[];
}

export interface Work {
  /** Null where the maker is to be asked. */
  readonly log: SessionLog | null;
  /** What is wrong with a log that may have been meant: said first. */
  readonly told: readonly string[];
}

/** An open log to work in, or why there is none: a sentence, or who else works in it. */
export function openWork(options: WorkOptions): Result<Work, string | InUse> {
  if (options.like !== undefined) return asWork(beginLike(options, options.like));
  const brief = typeof options.brief === 'string' ? readNamed(options.brief, options) : null;
  if (brief && !brief.ok) return brief;
  const ready = typeof options.brief === 'string' ? null : options.brief;
  const asked = brief?.value ?? ready;
  const named = namedLog(options.log, process.env);
  const holds = named === null ? succeed(false) : holdsBytes(named);
  if (!holds.ok) return fail(formatFileFault(holds.fault, options.words));
  // A bag that was not thought of when the log was named goes into one of its own.
  const path = ready && holds.value ? null : named;
  if (path !== null && holds.value) return asWork(goOn(path, options, asked, false));
  if (path === null && !options.fresh) return bagInHand(options, asked);
  return asWork(begin(options, asked, path, path === null));
}

function asWork<Fault>(opened: Result<SessionLog, Fault>, told: readonly string[] = []): Result<Work, Fault> {
  return opened.ok ? succeed({ log: opened.value, told }) : opened;
}

/** The unfinished bag used last, of this brief where one is asked for; where there is none, one is begun. */
function bagInHand(options: WorkOptions, asked: BriefFile | null): Result<Work, string | InUse> {
  const { words } = options;
  const isAsked = (brief: unknown): boolean => asked === null || isSameBrief(brief, asked.json);
  const { found, damaged } = findLog(logFolder(), ({ finished, brief }) => !finished && isAsked(brief));
  const broken = damaged?.read?.reading.state;
  const meant = broken && !isAsked(broken.header.brief) ? null : damaged;
  const folder = folderFault(logFolder());
  const told = folder
    ? [formatFileFault(folder, words)]
    : meant
      ? [sayLogFault(meant.path, meant.fault, words)]
      : [];
  const part = meant?.read ? soundPart(meant.read, options, asked) : null;
  if (part !== null && !part.finished) {
    return asWork(goOn(part.path, options, asked, true), [...told, words.logs.goesOnIn(part.path)]);
  }
  if (found !== null) return asWork(goOn(found.path, options, asked, true, found), told);
  if (asked === null && options.mayAsk) return succeed({ log: null, told });
  return asWork(begin(options, asked, null, true), told);
}

/** What earlier bags told when a log was begun is no part of the maker's own brief. */
export function isSameBrief(one: unknown, other: unknown): boolean {
  const own = (json: unknown): object => ({ ...(json as object), learned: undefined });
  return isDeepStrictEqual(own(one), own(other));
}

function begin(
  options: WorkOptions,
  asked: BriefFile | null,
  path: string | null,
  ownFolder: boolean,
): Result<SessionLog, string> {
  const file = withLearned(asked ?? practiceBrief());
  const where = path ?? newLogPath(logFolder(), file.brief.name, new Date());
  const begun = startSessionLog({ path: where, brief: file, program: options.program, ownFolder });
  if (begun.ok) return begun;
  const { fault } = begun;
  const source = typeof options.brief === 'string' ? options.brief : file.brief.name;
  return fail(
    isOf(fault, 'files')
      ? formatFileFault(fault, options.words)
      : `${source}: ${formatFault(fault, options.words)}`,
  );
}

/** Begins a bag with the brief of another log, as it was changed on the way; its notes come first. */
function beginLike(options: WorkOptions, like: string): Result<SessionLog, string> {
  if (options.brief !== null) return fail(options.words.logs.likeAlone);
  const found = readLogFile(like);
  if (!found.ok) return fail(formatFileFault(found.fault, options.words));
  const { state, fault } = found.value.reading;
  if (!state || fault)
    return fail(explainWithWay(found.value, fault ?? { code: 'journal/no-header' }, options, null));
  const path = namedLog(options.log, process.env);
  const asked = readBriefFile(briefLike(state.begun, state.session));
  if (!asked.ok) return fail(`${like}: ${formatFault(asked.fault, options.words)}`);
  const begun = begin({ ...options, brief: like }, asked.value, path, path === null);
  if (!begun.ok) return begun;
  for (const text of notesLike(state.session, options.words)) begun.value.append({ do: 'note', text });
  return begun;
}

function goOn(
  path: string,
  options: WorkOptions,
  asked: BriefFile | null,
  ownFolder: boolean,
  asRead?: FoundLog,
): Result<SessionLog, string | InUse> {
  const { words } = options;
  const found = asRead ? succeed(asRead) : readLogFile(path);
  if (!found.ok) return fail(formatFileFault(found.fault, words));
  const opened = openSessionLog({ path, ownFolder, asRead: found.value });
  if (!opened.ok) {
    const { fault } = opened;
    return fail(fault.code === 'files/in-use' ? fault : explainWithWay(found.value, fault, options, asked));
  }
  const log = opened.value;
  if (asked === null || isSameBrief(log.state.header.brief, asked.json)) return opened;
  log.leave();
  return fail(words.logs.otherBag(path, log.session.name));
}

/** Why a log cannot be gone on with, and the command that goes on with its sound part. */
function explainWithWay(
  found: FoundLog,
  fault: JournalFault | FileFault,
  options: WorkOptions,
  asked: BriefFile | null,
): string {
  const { words } = options;
  const sentence = sayLogFault(found.path, fault, words);
  const part = isOf(fault, 'files') ? null : soundPart(found, options, asked);
  if (part === null) return sentence;
  return `${sentence} ${words.logs.goOn(part.stepsDone + 1, forShell(part.path))}`;
}

function soundPart(found: FoundLog, { program }: WorkOptions, asked: BriefFile | null): SoundPart | null {
  const saved = saveSoundPart(found, asked && { brief: asked, program });
  return saved.ok ? saved.value : null;
}

const readNamed = (path: string, options: WorkOptions): Result<BriefFile, string> =>
  readBriefAt(path, options.words, (fault) => whyNotThere(path, fault, options));

/** A word that is no file may have been meant as a command. */
function whyNotThere(path: string, fault: FileFault, { commands, words }: WorkOptions): string {
  const near = nearest(
    path,
    commands.map(({ name }) => name),
  );
  return fault.code === 'files/missing' && near !== null
    ? words.cli.noFileBut(path, near)
    : formatFileFault(fault, words);
}

let practice: BriefFile | null = null;

/** The bag to practise on, which comes with the program. */
export function practiceBrief(): BriefFile {
  practice ??= readPractice();
  return practice;
}

function readPractice(): BriefFile {
  const read = parseBrief(practiceText());
  if (!read.ok) throw new Error(read.fault.code);
  return read.value;
}
