/**
 * Says short instructions aloud through whatever speech program the system has. Never waited for: a new instruction cuts
 * the old one short, and what goes wrong is told once.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { accessSync, constants, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { languageCode } from '../../shared/say.ts';

export interface Speech {
  readonly say: (text: string) => void;
  readonly stop: () => void;
}

interface Program {
  readonly name: string;
  /** Arguments that make it say `text`, which never begins with a dash. */
  readonly args: (text: string) => readonly string[];
}

/** English is the voice that they have without being asked. */
const voice = (option: string): readonly string[] =>
  languageCode() === 'en' ? [] : [option, languageCode()];

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
  { name: 'espeak-ng', args: (text) => [...voice('-v'), text] },
  { name: 'espeak', args: (text) => [...voice('-v'), text] },
  { name: 'spd-say', args: (text) => ['--wait', ...voice('-l'), text] },
];

interface Found {
  readonly program: Program;
  readonly file: string;
}

type Trouble = 'no-program' | 'failed';

export interface SpeechOptions {
  readonly platform?: NodeJS.Platform;
  readonly path?: string;
  /** Told once what is wrong. */
  readonly onTrouble: (trouble: Trouble, program: string) => void;
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

  const tell = (trouble: Trouble, program: string): void => {
    if (told) return;
    told = true;
    onTrouble(trouble, program);
  };
  const stop = (): void => {
    speaking?.kill();
    speaking = null;
  };
  const start = ({ program, file }: Found, text: string): ChildProcess => {
    const child = spawn(file, program.args(text), {
      stdio: 'ignore',
      windowsHide: true,
      env: { ...process.env, [textVariable]: text },
    });
    child.on('error', () => tell('failed', program.name));
    child.on('exit', (code) => {
      // One that was cut short may end as it likes.
      if (speaking !== child) return;
      speaking = null;
      if (code !== 0) tell('failed', program.name);
    });
    child.unref();
    return child;
  };
  const say = (text: string): void => {
    stop();
    found ??= findProgram(choices, path);
    if (!found) return tell('no-program', formatNames(choices));
    try {
      speaking = start(found, text.replace(/^-+/, ''));
    } catch {
      tell('failed', found.program.name);
    }
  };
  return { say, stop };
}

const formatNames = (choices: readonly Program[]): string => choices.map(({ name }) => name).join(', ');

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
