import { createListeners, type Listeners } from './listeners.ts';
import { emptyPrompt, type Prompt, sent } from './prompt.ts';

/** The prompt as a screen shows it. */
export interface ShownPrompt extends Pick<Listeners, 'subscribe'> {
  readonly prompt: () => Prompt;
}

/** The prompt outside React: keys change it, and whoever subscribes hears of it. */
export interface PromptStore extends ShownPrompt {
  readonly show: (next: Prompt) => void;
  /** Empties the line and gives what was typed. */
  readonly send: () => string;
}

export function createPromptStore(): PromptStore {
  let prompt = emptyPrompt;
  const { subscribe, tellAll } = createListeners();
  const show = (next: Prompt): void => {
    if (next === prompt) return;
    prompt = next;
    tellAll();
  };
  const send = (): string => {
    const { text } = prompt.line;
    show(sent(prompt));
    return text;
  };
  return { prompt: () => prompt, subscribe, show, send };
}
