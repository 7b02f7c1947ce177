/** Asks for a bag of the maker's own: the answers are kept from one start to the next, and make a brief file. */
import { briefFileOf } from '../chat/first-run/brief-of.ts';
import { answersIn, beginInterview, type Interview } from '../chat/first-run/interview.ts';
import { draftOf, readDraft, readDraftGuide, valuesOf } from '../chat/first-run/questions.ts';
import { questionLines } from '../chat/first-run/view.ts';
import { answer, type Said } from '../chat/talk.ts';
import { briefFolder, draftPath, logFolder, settingsFolder } from '../files/data-folders.ts';
import { writeBriefFile, writeBriefIn } from '../files/kept-files.ts';
import { listLogs } from '../files/log-list.ts';
import { saveSetting } from '../files/settings-file.ts';
import { readDraftFile, removeDraftFile, writeDraftFile } from '../files/write-whole.ts';
import type { LineSource } from '../screen/parts/line-source.ts';
import {
  createQuestionStore,
  type KeptBrief,
  type QuestionStore,
  type QuestionsEnd,
  startQuestions,
} from '../screen/questions/update-questions.ts';
import type { Settings } from '../settings/settings.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { formatFileFault } from '../wording/file-faults.ts';
import type { Words } from '../wording/words.ts';
import { prepareScreen, print } from './outcome.ts';
import { ownShelf } from './own-shelf.ts';

interface AskOptions {
  readonly settings: Settings;
  readonly words: Words;
  /** Said first. */
  readonly told: readonly string[];
  /** A bag was left for the questions, to go back to. */
  readonly mayCancel: boolean;
  /** Lines to read from; null where there is a screen. */
  readonly source: LineSource | null;
}

export async function askForBag({
  settings,
  words,
  told,
  source,
  mayCancel,
}: AskOptions): Promise<QuestionsEnd> {
  const draft = readDraftFile(draftPath());
  const interview = beginInterview(readDraft(draft, words), words, {
    shelf: ownShelf(),
    guide: readDraftGuide(draft),
  });
  const hasAnswers = Object.keys(interview.answers).length > 0;
  let areKept = hasAnswers;
  const lines = [
    ...answer(...told),
    ...damagedLogs(words),
    ...answer(...(hasAnswers ? [words.firstRun.goingOn, ...answersIn(interview)] : [words.firstRun.opening])),
  ];
  const store = createQuestionStore(
    startQuestions({
      interview,
      lines,
      pedalGapMs: settings.pedalGapMs,
      cannotCancel: mayCancel ? null : words.logs.nothingToCancel,
    }),
    {
      'keep-answers': ({ interview: { answers, guide } }, send) => {
        const written = writeDraftFile(draftPath(), draftOf(answers, guide));
        areKept = written.ok;
        const trouble = written.ok
          ? null
          : words.firstRun.answersNotKept(formatFileFault(written.fault, words));
        send({ is: 'answers-kept', trouble });
      },
      'keep-brief': ({ interview: answered, out }, send) =>
        send({ is: 'brief-kept', kept: keepBrief(answered, out) }),
      keep: async ({ change: { name, value } }) => void (await saveSetting(settingsFolder(), name, value)),
    },
  );
  const end = await ask(store, source);
  await store.settled();
  if (leaves(end) && areKept) print(words.firstRun.answersKept);
  return end;
}

const leaves = ({ kind }: QuestionsEnd): boolean => kind === 'left' || kind === 'interrupted';

async function ask(store: QuestionStore, source: LineSource | null): Promise<QuestionsEnd> {
  if (source !== null) return runPlainQuestions(store, source, print);
  prepareScreen();
  const { runQuestions } = await import('../screen/questions/questions-app.tsx');
  return runQuestions(store);
}

/** A bag may be in a log that cannot be read: better said than begun again without a word. */
const damagedLogs = (words: Words): readonly Said[] =>
  listLogs(logFolder())
    .filter(({ tally }) => !tally.ok)
    .map(({ path }) => ({ tone: 'caution', text: words.firstRun.damagedLog(path) }));

/** Once the bag's log is on disk, what was answered for it is not asked again. */
export const forgetAnswers = (): void => removeDraftFile(draftPath());

/** Where our own folder will not have it the bag is begun all the same: its log holds the brief too. */
function keepBrief({ answers, words }: Interview, out: string | null): Result<KeptBrief, string> {
  const values = valuesOf(answers, words);
  const made = briefFileOf(values);
  if (!made.ok) throw new Error(made.fault.code);
  const { json } = made.value;
  const written = out === null ? writeBriefIn(briefFolder(), values.name, json) : writeBriefFile(out, json);
  if (!written.ok && out !== null) return fail(formatFileFault(written.fault, words));
  const told = written.ok
    ? words.firstRun.briefKept(out ?? written.value ?? '')
    : words.firstRun.briefNotKept(formatFileFault(written.fault, words));
  return succeed({ brief: made.value, told });
}

/** The questions without a screen: each is printed, and again after a line that is no answer. Ends where the lines end. */
async function runPlainQuestions(
  store: QuestionStore,
  source: LineSource,
  print: (text: string) => void,
): Promise<QuestionsEnd> {
  let printed = 0;
  for (;;) {
    const { lines, interview, end } = store.get();
    for (const { tone, text } of lines.slice(printed)) if (tone !== 'typed') print(text);
    printed = lines.length;
    if (end !== null) return end;
    for (const line of questionLines(interview)) print(line);
    const text = await source.next();
    if (text === null) return { kind: 'left' };
    store.send({ is: 'line', text });
  }
}
