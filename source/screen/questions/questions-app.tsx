import { Box, Static } from 'ink';
import { lazy, Suspense, useSyncExternalStore } from 'react';
import { interviewView } from '../../chat/first-run/view.ts';
import { holdScreen } from '../parts/hold-screen.ts';
import { PromptRows } from '../parts/prompt-field.tsx';
import { Fitting, LabelledRow, labelWidth, Text, TranscriptLine, wrappedRows } from '../parts/rows.tsx';
import { BigEnough, useShownFrom, useWindowSize } from '../parts/window-size.tsx';
import type { QuestionState, QuestionStore, QuestionsEnd } from './update-questions.ts';

/** The picture is not wanted before the first question can be answered. */
const GrowingBag = lazy(() => import('./growing-bag.tsx'));

interface Props {
  readonly store: Pick<QuestionStore, 'subscribe' | 'get'>;
}

/** Rows beside the texts: the choices, the prompt, and one to stay lower than the window. */
const otherRows = 3;
/** The place, and a blank row on both sides of it. */
const placeRows = 3;
/** The picture leaves what was said last in sight, and is not drawn where a bag could not be seen in it. */
const saidRows = 4;
const picture = { most: 12, least: 8, columns: 50 } as const;

/** The answers scroll away above; the question, an example and what Enter takes stand over the prompt. */
function QuestionsApp({ store }: Props) {
  const { interview, lines, prompt } = useSyncExternalStore(store.subscribe, store.get);
  const { columns, rows, resizes } = useWindowSize();
  const { from, beginning } = useShownFrom(0, lines.length, resizes, rows);
  const { place, ask, asIn, enter, also } = interviewView(interview);
  const { words } = interview;
  const texts = [ask, asIn, enter].filter((text) => text !== null);
  const width = columns - labelWidth;
  const textRows = texts.reduce((sum, text) => sum + wrappedRows(text, width), 0);
  const roomy = textRows + otherRows + placeRows <= rows;
  const isWhole = textRows + otherRows <= rows;
  const left = rows - textRows - otherRows - placeRows - saidRows;
  const pictureRows = left >= picture.least && columns >= picture.columns ? Math.min(left, picture.most) : 0;
  return (
    <>
      <Static key={beginning} items={lines.slice(from)}>
        {(line, i) => <TranscriptLine key={i} line={line} columns={columns} />}
      </Static>
      <Box flexDirection="column">
        {pictureRows === 0 ? null : (
          <Box height={pictureRows} marginTop={1}>
            <Suspense fallback={<Text> </Text>}>
              <GrowingBag interview={interview} columns={columns} rows={pictureRows} />
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
    </>
  );
}

/** Asks in the terminal until the questions end. Rejects when drawing fails. */
export const runQuestions = (store: QuestionStore): Promise<QuestionsEnd> =>
  holdScreen<QuestionsEnd, QuestionState>({
    store,
    screen: (
      <BigEnough tooSmall={store.get().interview.words.bench.tooSmall}>
        <QuestionsApp store={store} />
      </BigEnough>
    ),
    interrupted: { kind: 'interrupted' },
  });
