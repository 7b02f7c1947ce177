import { questionLines } from '../../chat/first-run/view.ts';
import type { LineSource } from '../parts/line-source.ts';
import type { QuestionStore, QuestionsEnd } from './question-store.ts';

/** The questions without a screen: each is printed, and again after a line that is no answer. Ends where the lines end. */
export async function runPlainQuestions(
  store: QuestionStore,
  source: LineSource,
  print: (text: string) => void,
): Promise<QuestionsEnd> {
  let printed = 0;
  const show = (): void => {
    const { lines } = store.get();
    for (const { tone, text } of lines.slice(printed)) if (tone !== 'typed') print(text);
    printed = lines.length;
  };
  for (;;) {
    show();
    for (const line of questionLines(store.get().interview)) print(line);
    const typed = await source.next();
    if (typed === null) return { kind: 'left' };
    const end = store.submit(typed);
    if (!end) continue;
    show();
    return end;
  }
}
