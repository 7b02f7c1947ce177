/** What the Tab key offers after `slantwise`, as a script for each shell; it comes out of the table of commands. */
import type { Words } from '../wording/words.ts';
import type { CliCommand, CliOption } from './command.ts';

export const shells = ['bash', 'zsh', 'fish'] as const;
export type Shell = (typeof shells)[number];

const writers: Readonly<Record<Shell, (commands: readonly CliCommand[], words: Words) => string>> = {
  bash: bashScript,
  zsh: zshScript,
  fish: fishScript,
};

export const completionScript = (shell: Shell, commands: readonly CliCommand[], words: Words): string =>
  writers[shell](commands, words);

/** What may stand first: a command, or what the first of them takes. */
const general = ['--help', '--version'];
const optionsAtFirst = ([work]: readonly CliCommand[]): readonly CliOption[] => work?.options ?? [];

const flags = (options: readonly CliOption[]): readonly string[] => options.map(({ name }) => `--${name}`);

/** For POSIX shells and fish: within single quotes nothing is special but the quote itself. */
const quoted = (text: string): string => `'${text.replaceAll("'", `'\\''`)}'`;
const quotedForFish = (text: string): string => `'${text.replaceAll('\\', '\\\\').replaceAll("'", "\\'")}'`;

/** Where nothing is offered, bash completes file names by itself; so options wait for their dash. */
function bashScript(commands: readonly CliCommand[]): string {
  const options = optionsAtFirst(commands);
  const cases = commands.map(
    ({ name, options, choices = [] }) =>
      `    ${name}) options=${quoted(flags(options).join(' '))} words=${quoted(choices.join(' '))} ;;`,
  );
  const names = commands.map(({ name }) => name);
  return `# slantwise completion bash: add  source <(slantwise completion bash)  to ~/.bashrc
_slantwise() {
  local word=\${COMP_WORDS[COMP_CWORD]} options words
  case \${COMP_WORDS[1]} in
${cases.join('\n')}
    *) options=${quoted(flags(options).join(' '))} words= ;;
  esac
  ((COMP_CWORD == 1)) && options=${quoted([...flags(options), ...general].join(' '))} words=${quoted(names.join(' '))}
  [[ $word == -* ]] && words=$options
  COMPREPLY=($(compgen -W "$words" -- "$word"))
}
complete -o default -F _slantwise slantwise`;
}

function zshScript(commands: readonly CliCommand[], words: Words): string {
  const atFirst = optionsAtFirst(commands).map((option) => zshOption(option, words));
  const described = commands.map(({ name, summary }) =>
    quoted(`${name}:${summary(words).replaceAll(':', '\\:')}`),
  );
  const cases = commands.map((command) => {
    const { choices } = command;
    const operands = choices ? `1:shell:(${choices.join(' ')})` : '*:file:_files';
    return `        ${command.name}) _arguments ${[...command.options.map((option) => zshOption(option, words)), quoted(operands)].join(' ')} ;;`;
  });
  return `#compdef slantwise
# slantwise completion zsh: add  source <(slantwise completion zsh)  to ~/.zshrc, below compinit
_slantwise() {
  local state line
  local -a commands=(
    ${described.join('\n    ')}
  )
  _arguments -C ${[...atFirst, ...general.map(quoted)].join(' ')} '1: :->first' '*:: :->rest'
  case $state in
    first) _describe command commands; _files ;;
    rest)
      case $words[1] in
${cases.join('\n')}
        *) _files ;;
      esac ;;
  esac
}
compdef _slantwise slantwise`;
}

/** `--out[a new file]:COPY:_files`; brackets and colons within are escaped. */
function zshOption({ name, takes, summary }: CliOption, words: Words): string {
  const said = summary(words).replace(/[[\]:]/g, '\\$&');
  return quoted(`--${name}[${said}]${takes === null ? '' : `:${takes}:_files`}`);
}

function fishScript(commands: readonly CliCommand[], words: Words): string {
  const first = commands.map(
    ({ name, summary }) =>
      `complete -c slantwise -n __fish_use_subcommand -a ${name} -d ${quotedForFish(summary(words))}`,
  );
  const options = commands.flatMap((command) => [
    ...command.options.map((option) =>
      fishOption(`__fish_seen_subcommand_from ${command.name}`, option, words),
    ),
    ...(command.choices ?? []).map(
      (choice) => `complete -c slantwise -f -n '__fish_seen_subcommand_from ${command.name}' -a ${choice}`,
    ),
  ]);
  return [
    '# slantwise completion fish: slantwise completion fish > ~/.config/fish/completions/slantwise.fish',
    ...first,
    ...optionsAtFirst(commands).map((option) => fishOption('__fish_use_subcommand', option, words)),
    ...general.map((flag) => `complete -c slantwise -n __fish_use_subcommand -l ${flag.slice(2)}`),
    ...options,
  ].join('\n');
}

const fishOption = (when: string, { name, takes, summary }: CliOption, words: Words): string =>
  `complete -c slantwise -n ${quotedForFish(when)} -l ${name}${takes === null ? '' : ' -r'} -d ${quotedForFish(summary(words))}`;
