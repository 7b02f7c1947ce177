/**
 * Says short instructions aloud through whatever speech program the system has. Never waited for: a new instruction cuts
 * the old one short, and what goes wrong is told once.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

export interface Speech {
  readonly say: (text: string) => void;
  readonly stop: () => void;
}

interface Program {
  readonly name: string;
  /** Arguments that make it say `text`, which never begins with a dash. */
  readonly args: (text: string) => readonly string[];
}

const plainArgs = (text: string): readonly string[] => [text];

/** Speech programs that systems commonly carry, the one to be preferred first. */
const programs: Readonly<Partial<Record<NodeJS.Platform, readonly Program[]>>> = {
  darwin: [{ name: 'say', args: plainArgs }],
  win32: [
    {
      name: 'powershell.exe',
      args: (text) => [
        '-NoProfile',
        '-Command',
        `Add-Type -AssemblyName System.Speech; (New-Object System.Speech.Synthesis.SpeechSynthesizer).Speak('${text.replaceAll("'", "''")}')`,
      ],
    },
  ],
};

const elsewhere: readonly Program[] = [
  { name: 'espeak-ng', args: plainArgs },
  { name: 'espeak', args: plainArgs },
  { name: 'spd-say', args: (text) => ['--wait', text] },
];

export interface SpeechOptions {
  readonly platform?: NodeJS.Platform;
  readonly path?: string;
  /** Told once what is wrong. */
  readonly onTrouble: (trouble: 'no-program' | 'failed', program: string) => void;
}

export function createSpeech({
  platform = process.platform,
  path = process.env.PATH ?? '',
  onTrouble,
}: SpeechOptions): Speech {
  const choices = programs[platform] ?? elsewhere;
  let found: { readonly program: Program; readonly file: string } | null | undefined;
  let speaking: ChildProcess | null = null;
  let told = false;

  const tell = (trouble: 'no-program' | 'failed', program: string): void => {
    if (told) return;
    told = true;
    onTrouble(trouble, program);
  };
  const stop = (): void => {
    speaking?.kill();
    speaking = null;
  };
  const say = (text: string): void => {
    stop();
    found ??= findProgram(choices, path);
    if (!found) return tell('no-program', formatNames(choices));
    const { program, file } = found;
    const child = spawn(file, program.args(text.replace(/^-+/, '')), { stdio: 'ignore' });
    child.on('error', () => tell('failed', program.name));
    child.on('exit', (code) => {
      if (code !== null && code !== 0) tell('failed', program.name);
      if (speaking === child) speaking = null;
    });
    child.unref();
    speaking = child;
  };
  return { say, stop };
}

const formatNames = (choices: readonly Program[]): string => choices.map(({ name }) => name).join(', ');

function findProgram(
  choices: readonly Program[],
  path: string,
): { readonly program: Program; readonly file: string } | null {
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
    return true;
  } catch {
    return false;
  }
}
