import { harmless } from '../shared/plain-text.ts';

/** One line of the transcript. The tone decides how a screen sets it, never what it means. */
export interface Said {
  readonly tone: 'typed' | 'done' | 'answer' | 'caution' | 'fault';
  readonly text: string;
  /** Of a fault: which one. */
  readonly code?: string;
}

export const answer = (...texts: readonly string[]): readonly Said[] =>
  texts.map((text) => ({ tone: 'answer', text: harmless(text) }));

export const faultLine = ({ code }: { readonly code: string }, text: string): Said => ({
  tone: 'fault',
  text,
  code,
});
