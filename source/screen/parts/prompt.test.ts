import { describe, expect, it } from 'vitest';
import { completeLine } from '../../chat/parse-line.ts';
import { characterKey, makeKey } from '../keys/key.ts';
import { emptyPrompt, type Prompt, promptKey, sent } from './prompt.ts';

const type = (prompt: Prompt, text: string): Prompt =>
  [...text].reduce((at, character) => promptKey(at, characterKey(character)), prompt);

const press = (prompt: Prompt, ...names: readonly string[]): Prompt =>
  names.reduce((at, name) => promptKey(at, makeKey(name), completeLine), prompt);

describe('the prompt', () => {
  it('brings back what was sent, and what was being typed', () => {
    const after = sent(type(sent(type(emptyPrompt, 'where')), 'next 2'));
    const typing = type(after, 'go');
    expect(press(typing, 'up').line.text).toBe('next 2');
    expect(press(typing, 'up', 'up').line.text).toBe('where');
    expect(press(typing, 'up', 'up', 'up').line.text).toBe('where');
    expect(press(typing, 'up', 'up', 'down', 'down').line.text).toBe('go');
  });

  it('keeps no empty line and no line twice in a row', () => {
    const after = sent(sent(type(sent(type(emptyPrompt, 'where')), 'where')));
    expect(after.history).toEqual(['where']);
  });

  it('completes a word, or as much as its choices share', () => {
    expect(press(type(emptyPrompt, 'whe'), 'tab').line.text).toBe('where ');
    const choices = press(type(emptyPrompt, 'no'), 'tab');
    expect(choices.line.text).toBe('note');
    expect(choices.choices).toEqual(['note', 'notes']);
    expect(type(choices, 's').choices).toEqual([]);
  });

  it('is cleared by Escape', () => {
    expect(press(type(emptyPrompt, 'where'), 'escape').line.text).toBe('');
  });
});
