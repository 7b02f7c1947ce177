/** The party that is on: planned from briefs or from the bag that is open, its tally by the logs, and what comes next of it. */
import { logFolder, partyPath } from '../files/data-folders.ts';
import { loadParty, type PartyFault, saveParty } from '../files/kept-files.ts';
import { type ListedLog, listLogs } from '../files/log-list.ts';
import type { SessionLog } from '../files/session-log.ts';
import { nextName, turnColours } from '../journal/match.ts';
import type { Tally } from '../journal/read-log.ts';
import type { BriefFile } from '../planning/brief.ts';
import type { BriefFault, PlanFault } from '../planning/fault.ts';
import { readBriefFile } from '../planning/parse-brief.ts';
import type { Plan } from '../planning/plan.ts';
import { planBag } from '../planning/plan-bag.ts';
import type { Another } from '../screen/bench/bench-state.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { formatFault } from '../wording/faults.ts';
import { formatFileFault } from '../wording/file-faults.ts';
import { formatParty } from '../wording/shelf.ts';
import type { Words } from '../wording/words.ts';
import type { Asked } from './command.ts';
import { isSameBrief } from './open-work.ts';
import { complain, printDone } from './outcome.ts';
import { ownPace, readBriefAt } from './read-input.ts';

/** More would be planned at no table (a rule of thumb). */
export const mostBags = 30;

const sayFault = (fault: PartyFault, words: Words): string =>
  fault.code === 'party/damaged' ? words.party.damaged(fault.path) : formatFileFault(fault, words);

interface Guest {
  readonly bag: BriefFile;
  readonly log: string | null;
  readonly tally: Tally | null;
}

/** Each bag of the party with its log, where it has been begun. */
function guests(bags: readonly BriefFile[]): readonly Guest[] {
  const logs = listLogs(logFolder());
  return bags.map((bag) => {
    const own = logs.flatMap(tallied).find(({ tally }) => isSameBrief(tally.brief, bag.json));
    return { bag, log: own?.path ?? null, tally: own?.tally ?? null };
  });
}

const tallied = ({ path, tally }: ListedLog) => (tally.ok ? [{ path, tally: tally.value }] : []);

/** How the party stands, bag by bag. */
export function tellParty(words: Words): Result<readonly string[], string> {
  const { party: say } = words;
  const bags = loadParty(partyPath());
  if (!bags.ok) return fail(sayFault(bags.fault, words));
  if (bags.value.length === 0) return succeed(say.none);
  const all = guests(bags.value);
  const [done, begun] = [
    all.filter(({ tally }) => tally?.finished),
    all.filter(({ tally }) => tally && !tally.finished),
  ];
  return succeed([
    say.tally(done.length, begun.length, all.length - done.length - begun.length),
    ...all.map(({ bag, tally }) => sayGuest(tally?.name ?? bag.brief.name, tally, words)),
    done.length === all.length ? say.allDone : say.next,
  ]);
}

const sayGuest = (name: string, tally: Tally | null, { party: say }: Words): string => {
  if (tally === null) return say.toDo(name);
  return tally.finished ? say.done(name) : say.begun(name, tally.stepsDone + 1, tally.stepCount);
};

/** The bag of the party to go on with: one that is begun, else the first to do. */
export function nextOfParty(open: string, words: Words): Result<string | Another, string> {
  const bags = loadParty(partyPath());
  if (!bags.ok) return fail(sayFault(bags.fault, words));
  if (bags.value.length === 0) return fail(words.party.none.join(' '));
  const all = guests(bags.value).filter(({ log, tally }) => !tally?.finished && log !== open);
  const begun = all.find(({ log }) => log !== null);
  if (begun?.log) return succeed(begun.log);
  const [next] = all;
  if (!next) return fail(words.party.allDone);
  return succeed({ another: next.bag, notes: [], told: words.party.toDo(next.bag.brief.name) });
}

/** So many bags like the one that is open, which is the first of them, their colours turned round. */
export function planParty(log: SessionLog, count: number, words: Words): Result<readonly string[], string> {
  if (count < 2 || count > mostBags) return fail(words.party.notAParty(mostBags));
  const first = log.state.begun.json;
  const names = [log.session.name];
  while (names.length < count) names.push(nextName(log.session.name, names));
  const jsons = names.map((name, i) =>
    i === 0 ? first : { ...turnColours(first, i), learned: undefined, name },
  );
  return keepParty(jsons, words);
}

/** Plans them together and keeps them; the page of what they have in common. */
function keepParty(jsons: readonly unknown[], words: Words): Result<readonly string[], string> {
  const planned = jsons.map(planOne);
  const fault = planned.find((one) => !one.ok);
  if (fault && !fault.ok) return fail(words.party.cannot(formatFault(fault.fault, words)));
  const sound = planned.flatMap((one) => (one.ok ? [one.value] : []));
  const bags = sound.map(({ bag }) => bag);
  const plans = sound.map(({ plan }) => plan);
  const saved = saveParty(partyPath(), bags);
  if (!saved.ok) return fail(formatFileFault(saved.fault, words));
  return succeed([...formatParty(plans, ownPace(), words).split('\n'), words.party.kept(bags.length)]);
}

function planOne(json: unknown): Result<{ bag: BriefFile; plan: Plan }, BriefFault | PlanFault> {
  const bag = readBriefFile(json);
  if (!bag.ok) return bag;
  const plan = planBag(bag.value.brief);
  return plan.ok ? succeed({ bag: bag.value, plan: plan.value }) : plan;
}

/** `slantwise party`: keeps the briefs that are named, or tells how the party stands. */
export function partyCommand({ operands, given, words }: Asked): number {
  const told =
    operands.length === 0 ? tellParty(words) : partyOf(operands, given.has('colours-turned'), words);
  return told.ok ? printDone(told.value.join('\n')) : complain(told.fault);
}

function partyOf(
  paths: readonly string[],
  isTurned: boolean,
  words: Words,
): Result<readonly string[], string> {
  if (paths.length < 2 || paths.length > mostBags) return fail(words.party.notAParty(mostBags));
  const jsons: object[] = [];
  const names: string[] = [];
  for (const [i, path] of paths.entries()) {
    const file = readBriefAt(path, words);
    if (!file.ok) return file;
    const { json, brief } = file.value;
    // Bags of one brief are told apart by their names.
    const name = names.includes(brief.name) ? nextName(brief.name, names) : brief.name;
    names.push(name);
    jsons.push({
      ...(isTurned ? turnColours(json, i) : json),
      name,
    });
  }
  return keepParty(jsons, words);
}
