import { questionLines } from '../../chat/first-run/view.ts';
import type { LineSource } from '../parts/line-source.ts';
import type { QuestionStore, QuestionsEnd } from './question-state.ts';

/** The questions without a screen: each is printed, and again after a line that is no answer. Ends where the lines end. */
export async function runPlainQuestions(
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
