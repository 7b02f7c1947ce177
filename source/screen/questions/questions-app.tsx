import { Box, Static } from 'ink';
import { lazy, Suspense, useSyncExternalStore } from 'react';
import { interviewView } from '../../chat/first-run/view.ts';
import { holdScreen } from '../parts/hold-screen.ts';
import { PromptRows } from '../parts/prompt-field.tsx';
import { inWindow, pagesOf } from '../parts/reading.ts';
import { Fitting, LabelledRow, Text, TranscriptLine } from '../parts/rows.tsx';
import { BigEnough, useShownFrom, useWindowSize } from '../parts/window-size.tsx';
import { questionRows } from './question-rows.ts';
import type { QuestionState, QuestionStore, QuestionsEnd } from './update-questions.ts';

/** The picture is not wanted before the first question can be answered. */
const GrowingBag = lazy(() => import('./growing-bag.tsx'));

interface Props {
  readonly store: Pick<QuestionStore, 'subscribe' | 'get'>;
}

/** The answers scroll away above; the question, an example and what Enter takes stand over the prompt. */
function QuestionsApp({ store }: Props) {
  const { interview, lines, prompt, reading } = useSyncExternalStore(store.subscribe, store.get);
  const { columns, rows, resizes } = useWindowSize();
  const { from, beginning } = useShownFrom(0, lines.length, resizes, rows);
  const { place, ask, asIn, enter, also } = interviewView(interview);
  const { words } = interview;
  const { width, roomy, isWhole, picture } = questionRows({ ask, asIn, enter }, { columns, rows });
  const pages = reading && pagesOf(reading, { columns, rows });
  return (
    <>
      <Static key={beginning} items={lines.slice(from)}>
        {(line, i) => <TranscriptLine key={i} line={line} columns={columns} />}
      </Static>
      {pages ? (
        <Box flexDirection="column">
          {Array.from(pages[Math.min(reading.at, pages.length - 1)]?.entries() ?? [], ([row, line]) => (
            <TranscriptLine key={row} line={line} columns={columns} />
          ))}
          <PromptRows prompt={prompt} placeholder={words.firstRun.reading(reading.at + 1, pages.length)} />
        </Box>
      ) : (
        <Box flexDirection="column">
          {picture === 0 ? null : (
            <Box height={picture} marginTop={1}>
              <Suspense fallback={<Text> </Text>}>
                <GrowingBag interview={interview} columns={columns} rows={picture} />
              </Suspense>
            </Box>
          )}
          {roomy ? (
            <Box paddingTop={1} paddingBottom={1}>
              <Text dimColor wrap="truncate-end">
                {place}
              </Text>
            </Box>
          ) : null}
          <LabelledRow label={words.firstRun.ask}>
            <Fitting bold text={ask} width={width} whole={isWhole} />
          </LabelledRow>
          {asIn === null ? null : (
            <LabelledRow label={words.firstRun.asIn}>
              <Fitting text={asIn} width={width} whole={isWhole} />
            </LabelledRow>
          )}
          {enter === null ? null : (
            <LabelledRow label={words.firstRun.enter}>
              <Fitting text={enter} width={width} whole={isWhole} />
            </LabelledRow>
          )}
          <PromptRows prompt={prompt} placeholder={also.slice(0, columns - 3)} />
        </Box>
      )}
    </>
  );
}

/** Asks in the terminal until the questions end. Rejects when drawing fails. */
export const runQuestions = (store: QuestionStore): Promise<QuestionsEnd> =>
  inWindow(
    (window) => store.send({ is: 'window', window }),
    () =>
      holdScreen<QuestionsEnd, QuestionState>({
        store,
        screen: (
          <BigEnough tooSmall={store.get().interview.words.bench.tooSmall}>
            <QuestionsApp store={store} />
          </BigEnough>
        ),
        interrupted: { kind: 'interrupted' },
      }),
  );
