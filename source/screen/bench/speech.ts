/**
 * Tells a step to the ears: a bell that differs by what comes next, and a short instruction through whatever speech program
 * the system has. Never waited for: a new instruction cuts the old one short, and what goes wrong is told once.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { accessSync, constants, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { currentStep } from '../../session/session.ts';
import type { LanguageCode } from '../../settings/settings.ts';
import { acts } from '../../steps/acts.ts';
import { sayWayStep } from '../../wording/finding.ts';
import { speakStep, speakWarning } from '../../wording/steps.ts';
import type { Announcement, BenchState } from './bench-state.ts';

export interface Speech {
  readonly say: (text: string, language: LanguageCode) => void;
  readonly stop: () => void;
}

interface Program {
  readonly name: string;
  /** Arguments that make it say `text`, which never begins with a dash. */
  readonly args: (text: string, language: LanguageCode) => readonly string[];
}

/** English is the voice that they have without being asked. */
const voice = (option: string, language: LanguageCode): readonly string[] =>
  language === 'en' ? [] : [option, language];

const plainArgs = (text: string): readonly string[] => [text];

/** Holds the text for programs that would read their arguments as code. */
const textVariable = 'SLANTWISE_TO_SAY';

/** Speech programs that systems commonly carry, the one to be preferred first. */
const programs: Readonly<Partial<Record<NodeJS.Platform, readonly Program[]>>> = {
  darwin: [{ name: 'say', args: plainArgs }],
  win32: [
    {
      name: 'powershell.exe',
      args: () => [
        '-NoProfile',
        '-Command',
        [
          ...['Add-Type', '-AssemblyName', 'System.Speech;'],
          ...['(New-Object', `System.Speech.Synthesis.SpeechSynthesizer).Speak($env:${textVariable})`],
        ].join(' '),
      ],
    },
  ],
};

const elsewhere: readonly Program[] = [
  { name: 'espeak-ng', args: (text, language) => [...voice('-v', language), text] },
  { name: 'espeak', args: (text, language) => [...voice('-v', language), text] },
  { name: 'spd-say', args: (text, language) => ['--wait', ...voice('-l', language), text] },
];

interface Found {
  readonly program: Program;
  readonly file: string;
}

/** Nothing can be spoken: none of these programs is here, or the one that is has failed. */
export type SpeechTrouble =
  | { readonly code: 'no-program'; readonly lookedFor: readonly string[] }
  | { readonly code: 'failed'; readonly program: string };

interface SpeechOptions {
  readonly platform?: NodeJS.Platform;
  readonly path?: string;
  /** Told once what is wrong. */
  readonly onTrouble: (trouble: SpeechTrouble) => void;
}

export function createSpeech({
  platform = process.platform,
  path = process.env.PATH ?? '',
  onTrouble,
}: SpeechOptions): Speech {
  const choices = programs[platform] ?? elsewhere;
  let found: Found | null = null;
  let speaking: ChildProcess | null = null;
  let told = false;

  const tell = (trouble: SpeechTrouble): void => {
    if (told) return;
    told = true;
    onTrouble(trouble);
  };
  const stop = (): void => {
    speaking?.kill();
    speaking = null;
  };
  const start = ({ program, file }: Found, text: string, language: LanguageCode): ChildProcess => {
    const child = spawn(file, program.args(text, language), {
      stdio: 'ignore',
      windowsHide: true,
      env: { ...process.env, [textVariable]: text },
    });
    child.on('error', () => tell({ code: 'failed', program: program.name }));
    child.on('exit', (code) => {
      // One that was cut short may end as it likes.
      if (speaking !== child) return;
      speaking = null;
      if (code !== 0) tell({ code: 'failed', program: program.name });
    });
    child.unref();
    return child;
  };
  const say = (text: string, language: LanguageCode): void => {
    stop();
    found ??= findProgram(choices, path);
    if (!found) return tell({ code: 'no-program', lookedFor: choices.map(({ name }) => name) });
    try {
      speaking = start(found, text.replace(/^-+/, ''), language);
    } catch {
      tell({ code: 'failed', program: found.program.name });
    }
  };
  return { say, stop };
}

function findProgram(choices: readonly Program[], path: string): Found | null {
  for (const program of choices) {
    for (const folder of path.split(delimiter).filter(Boolean)) {
      const file = join(folder, program.name);
      if (canRun(file)) return { program, file };
    }
  }
  return null;
}

function canRun(file: string): boolean {
  try {
    accessSync(file, constants.X_OK);
    return statSync(file).isFile();
  } catch {
    return false;
  }
}

/** A press that did nothing must not sound like one that did. */
const warningRings = 4;
/** Closer together they run into one another (rule of thumb). */
const betweenRingsMs = 180;

export type Announce = (state: Pick<BenchState, 'session' | 'settings' | 'words'>, why: Announcement) => void;

interface AnnounceOptions {
  readonly speech: Speech;
  /** Writes to the terminal. */
  readonly write: (text: string) => void;
}

export function createAnnouncer({ speech, write }: AnnounceOptions): Announce {
  let ringing: NodeJS.Timeout | undefined;
  const ring = (times: number): void => {
    clearTimeout(ringing);
    if (times === 0) return;
    write('\x07');
    ringing = setTimeout(ring, betweenRingsMs, times - 1);
    ringing.unref();
  };
  return ({ session, settings, words }, why) => {
    const { way } = session;
    const step = currentStep(session);
    const isWarning = why !== 'next' && why !== 'again' && why !== 'rest';
    if (settings.bell && why !== 'again' && why !== 'rest')
      ring(isWarning ? warningRings : step && !way ? acts[step.act.kind].bell : 1);
    if (!settings.speech) return speech.stop();
    const instruction = (way && sayWayStep(way, words)) ?? speakStep(step, words);
    const first = why === 'rest' ? words.prompt.rest.aloud : isWarning ? speakWarning(why, words) : null;
    speech.say(first === null ? instruction : `${first}: ${instruction}`, words.language);
  };
}
