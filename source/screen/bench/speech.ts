/**
 * Says short instructions aloud through whatever speech program the system has. Never waited for: a new instruction cuts
 * the old one short, and what goes wrong is told once.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { accessSync, constants, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import type { LanguageCode } from '../../settings/settings.ts';

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

export interface SpeechOptions {
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
