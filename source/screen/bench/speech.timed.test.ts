/** Speech through a program on the path, in real processes. */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { isRunning, useStandIn } from '../../../test/fixtures/speech-stand-in.ts';
import { createSpeech, type SpeechTrouble } from './speech.ts';

const systemPath = process.env.PATH ?? '';
const recordTrouble = () => {
  const troubles: string[] = [];
  const onTrouble = (trouble: SpeechTrouble): void =>
    void troubles.push(
      `${trouble.code}: ${trouble.code === 'failed' ? trouble.program : trouble.lookedFor.join(', ')}`,
    );
  return { troubles, onTrouble };
};

describe('speech', () => {
  const standIn = useStandIn();

  it('asks the program to say the text, which is never taken for an option', async () => {
    const program = standIn('quick');
    const { troubles, onTrouble } = recordTrouble();
    const speech = createSpeech({ platform: 'linux', path: program.folder, onTrouble });
    speech.say('--left: two out, L24', 'en');
    await vi.waitFor(() => expect(program.asked().map(({ text }) => text)).toEqual(['left: two out, L24']));
    expect(troubles).toEqual([]);
  });

  it('is cut short by what comes next, and by leaving', async () => {
    const program = standIn('slow');
    const { troubles, onTrouble } = recordTrouble();
    const speech = createSpeech({ platform: 'linux', path: `${program.folder}:${systemPath}`, onTrouble });
    const running = () => program.asked().map(({ pid }) => isRunning(pid));
    speech.say('knit left', 'en');
    await vi.waitFor(() => expect(running()).toEqual([true]));
    speech.say('knit right', 'en');
    await vi.waitFor(() => expect(running()).toEqual([false, true]));
    speech.stop();
    await vi.waitFor(() => expect(running()).toEqual([false, false]));
    expect(troubles).toEqual([]);
  });

  it('does not wait for a program that takes a minute', () => {
    const program = standIn('slow');
    const speech = createSpeech({
      platform: 'linux',
      path: `${program.folder}:${systemPath}`,
      onTrouble: () => {},
    });
    const from = performance.now();
    for (let step = 0; step < 20; step++) speech.say(`round ${step}`, 'en');
    const tookMs = performance.now() - from;
    speech.stop();
    expect(tookMs).toBeLessThan(10_000);
  });

  it('tells once that the program fails', async () => {
    const program = standIn('failing');
    const { troubles, onTrouble } = recordTrouble();
    const speech = createSpeech({ platform: 'linux', path: program.folder, onTrouble });
    speech.say('knit left', 'en');
    await vi.waitFor(() => expect(troubles).toEqual(['failed: espeak-ng']));
    speech.say('knit right', 'en');
    speech.say('knit left', 'en');
    await vi.waitFor(() => expect(program.asked().map(({ text }) => text)).toContain('knit left'));
    expect(troubles).toHaveLength(1);
  });

  it('tells once that there is no program, with the names it looked for', () => {
    const program = standIn('quick', 'something-else');
    const { troubles, onTrouble } = recordTrouble();
    const speech = createSpeech({ platform: 'linux', path: program.folder, onTrouble });
    speech.say('knit left', 'en');
    speech.say('knit right', 'en');
    expect(troubles).toEqual(['no-program: espeak-ng, espeak, spd-say']);
  });

  it('passes over a folder that has the name of a program', async () => {
    const program = standIn('quick', 'espeak');
    mkdirSync(join(program.folder, 'espeak-ng'));
    const speech = createSpeech({ platform: 'linux', path: program.folder, onTrouble: () => {} });
    speech.say('knit left', 'en');
    await vi.waitFor(() => expect(program.asked()).toHaveLength(1));
  });

  it.each([
    ['darwin', 'say', 'knit left'],
    ['linux', 'espeak-ng', 'knit left'],
    ['linux', 'espeak', 'knit left'],
    ['linux', 'spd-say', '--wait knit left'],
  ] as const)('uses what %s has: %s', async (platform, name, args) => {
    const program = standIn('quick', name);
    const speech = createSpeech({ platform, path: program.folder, onTrouble: () => {} });
    speech.say('knit left', 'en');
    await vi.waitFor(() => expect(program.asked().map(({ text }) => text)).toEqual([args]));
  });

  it.each([
    ['espeak-ng', '-v de nach links'],
    ['spd-say', '--wait -l de nach links'],
  ])('is spoken in the language that was chosen: %s', async (name, args) => {
    const program = standIn('quick', name);
    const speech = createSpeech({ platform: 'linux', path: program.folder, onTrouble: () => {} });
    speech.say('nach links', 'de');
    await vi.waitFor(() => expect(program.asked().map(({ text }) => text)).toEqual([args]));
  });

  // Its shell takes typographic quotes for quotes, so the text must not be part of the command.
  it('keeps the text out of the command on Windows', async () => {
    const program = standIn('quick', 'powershell.exe');
    const speech = createSpeech({ platform: 'win32', path: program.folder, onTrouble: () => {} });
    speech.say('to \u2019; exit 1 #', 'en');
    await vi.waitFor(() => expect(program.asked()).toHaveLength(1));
    expect(program.asked()[0]?.text).toContain('.Speak($env:SLANTWISE_TO_SAY)');
    expect(program.asked()[0]?.text).not.toContain('exit 1');
  });
});
