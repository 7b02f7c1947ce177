/** Finds the bag to work on: the log that is named, the brief that is named, the bag in hand, or the practice bag. */

import { existsSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { isDeepStrictEqual } from 'node:util';
import { nearest } from '../chat/nearest.ts';
import { formatFault } from '../chat/wording/faults.ts';
import { formatFileFault } from '../chat/wording/file-faults.ts';
import { formatJournalFault } from '../chat/wording/journal-faults.ts';
import { sayLikeAlone, sayOtherBag } from '../chat/wording/logs.ts';
import { readBriefFile } from '../files/brief-file.ts';
import { logFolder, namedLog } from '../files/data-folders.ts';
import { type FoundLog, findLog, newLogPath } from '../files/log-list.ts';
import { openSessionLog, saveSoundPart, startSessionLog } from '../files/open-log.ts';
import { mostLogBytes, readBytes } from '../files/read-file.ts';
import type { SessionLog } from '../files/session-log.ts';
import type { JournalFault } from '../journal/fault.ts';
import type { FileFault, InUse } from '../journal/file-fault.ts';
import { briefLike, notesLike } from '../journal/like.ts';
import { readLog } from '../journal/read-log.ts';
import { parseBrief } from '../planning/parse-brief.ts';
import { forShell } from '../shared/for-shell.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { say } from '../shared/say.ts';
import type { Words } from '../wording/words.ts';
import type { CliCommand } from './command.ts';

export interface WorkOptions {
  /** Path of a brief, or one that is read already; null goes on with the bag in hand. */
  readonly brief: string | BriefText | null;
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

export interface BriefText {
  readonly json: unknown;
  readonly name: string;
}

/** An open log to work in, null where the maker is to be asked, or why there is none: a sentence, or who else works in it. */
export function openWork(options: WorkOptions): Result<SessionLog | null, string | InUse> {
  if (options.like !== undefined) return beginLike(options, options.like);
  const brief = typeof options.brief === 'string' ? readBrief(options.brief, options) : null;
  if (brief && !brief.ok) return brief;
  const ready = typeof options.brief === 'string' ? null : options.brief;
  const asked = brief?.value ?? ready;
  const named = namedLog(options.log, process.env);
  // A bag that was not thought of when the log was named goes into one of its own.
  const path = ready && named !== null && holdsLines(named) ? null : named;
  if (path !== null && holdsLines(path)) return goOn(path, asked, false);
  const inHand = options.fresh || path !== null ? null : bagInHand(asked);
  if (inHand !== null) return goOn(inHand.path, asked, true, inHand);
  return asked === null && options.mayAsk ? succeed(null) : begin(options, asked, path, path === null);
}

const holdsLines = (path: string): boolean => existsSync(path) && statSync(path).size > 0;

/** The unfinished bag used last, of this brief where one is asked for. */
const bagInHand = (asked: BriefText | null): FoundLog | null =>
  findLog(
    logFolder(),
    ({ finished, brief }) => !finished && (asked === null || isDeepStrictEqual(brief, asked.json)),
  );

function begin(
  options: WorkOptions,
  asked: BriefText | null,
  path: string | null,
  ownFolder: boolean,
): Result<SessionLog, string> {
  const brief = asked ?? practiceBrief(options);
  const where = path ?? newLogPath(logFolder(), brief.name, new Date());
  const begun = startSessionLog({ path: where, brief: brief.json, program: options.program, ownFolder });
  if (begun.ok) return begun;
  const { fault } = begun;
  const source = typeof options.brief === 'string' ? options.brief : brief.name;
  return fail(isFileFault(fault) ? formatFileFault(fault) : `${source}: ${formatFault(fault)}`);
}

/** Begins a bag with the brief of another log, as it was changed on the way; its notes come first. */
function beginLike(options: WorkOptions, like: string): Result<SessionLog, string> {
  if (options.brief !== null) return fail(sayLikeAlone());
  const bytes = readBytes(like, mostLogBytes);
  if (!bytes.ok) return fail(formatFileFault(bytes.fault));
  const { state, fault } = readLog(bytes.value);
  if (!state || fault) return fail(explain(like, fault ?? { code: 'journal/no-header' }));
  const path = namedLog(options.log, process.env);
  const asked = { json: briefLike(state.header, state.session), name: state.header.name };
  const begun = begin({ ...options, brief: like }, asked, path, path === null);
  if (!begun.ok) return begun;
  for (const text of notesLike(state.session)) begun.value.append({ do: 'note', text });
  return begun;
}

function goOn(
  path: string,
  asked: BriefText | null,
  ownFolder: boolean,
  asRead?: FoundLog,
): Result<SessionLog, string | InUse> {
  const opened = openSessionLog({ path, ownFolder, asRead });
  if (!opened.ok)
    return fail(opened.fault.code === 'files/in-use' ? opened.fault : explain(path, opened.fault));
  const log = opened.value;
  if (asked === null || isDeepStrictEqual(log.state.header.brief, asked.json)) return opened;
  log.leave();
  return fail(sayOtherBag(path, log.state.header.name));
}

function explain(path: string, fault: JournalFault | FileFault): string {
  if (isFileFault(fault)) return formatFileFault(fault);
  const saved = saveSoundPart(path);
  const sentence = `${path}: ${formatJournalFault(fault)}`;
  if (!saved.ok || !saved.value) return sentence;
  const { step, path: savedPath } = saved.value;
  return `${sentence} ${say`To go on from step ${step + 1}: slantwise --log ${forShell(savedPath)}`}`;
}

const isFileFault = (fault: { readonly code: string }): fault is FileFault => fault.code.startsWith('files/');

function readBrief(path: string, options: WorkOptions): Result<BriefText, string> {
  const text = readBriefFile(path);
  if (!text.ok) return fail(whyNotThere(path, text.fault, options));
  const brief = parseBrief(text.value);
  if (!brief.ok) return fail(`${path}: ${formatFault(brief.fault)}`);
  return succeed({ json: JSON.parse(text.value), name: brief.value.name });
}

/** A word that is no file may have been meant as a command. */
function whyNotThere(path: string, fault: FileFault, { commands, words }: WorkOptions): string {
  const near = nearest(
    path,
    commands.map(({ name }) => name),
  );
  return fault.code === 'files/missing' && near !== null
    ? words.cli.noFileBut(path, near)
    : formatFileFault(fault);
}

/** The bag to practise on, which comes with the program. */
export function practiceBrief(options: WorkOptions): BriefText {
  const read = readBrief(fileURLToPath(new URL('../demo/dice-bag.json', import.meta.url)), options);
  if (!read.ok) throw new Error(read.fault);
  return read.value;
}
