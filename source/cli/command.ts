/** What a row of the command line's table holds, what it is given to run, and how its usage is written. */
import type { LoadedSettings } from '../files/settings-file.ts';
import type { Words } from '../wording/words.ts';

export interface CliOption {
  readonly name: string;
  /** What it takes; null for a plain switch. */
  readonly takes: string | null;
  readonly summary: (words: Words) => string;
  /** The command cannot do without it. */
  readonly required?: true;
}

export interface CliCommand {
  readonly name: string;
  /** Arguments in order; one in brackets may be left out, and a last one with dots be there more than once. */
  readonly takes: readonly string[];
  /** What the argument may be, where that is a fixed choice. */
  readonly choices?: readonly string[];
  readonly summary: (words: Words) => string;
  readonly options: readonly CliOption[];
  /** It says itself, among its own lines, what is wrong with the settings. */
  readonly saysSettings?: true;
  /** Gives the exit status. */
  readonly run: (asked: Asked) => number | Promise<number>;
}

/** What stood on the command line, and what every command may need. */
export interface Asked {
  readonly operands: readonly string[];
  /** Options by name, a plain switch as an empty text. */
  readonly given: ReadonlyMap<string, string>;
  readonly settings: LoadedSettings;
  readonly words: Words;
  /** Version of this program. */
  readonly program: string;
  readonly commands: readonly CliCommand[];
}

export const usageLine = (command: CliCommand): string =>
  ['slantwise', command.name, ...command.takes, ...command.options.map(optionUsage)].join(' ');

/** `--out FILE`. */
export const flagOf = ({ name, takes }: CliOption): string => `--${name}${takes === null ? '' : ` ${takes}`}`;

/** The flag, in brackets where it may be left out. */
export const optionUsage = (option: CliOption): string =>
  option.required ? flagOf(option) : `[${flagOf(option)}]`;
