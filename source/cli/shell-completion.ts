/** What the Tab key offers after `slantwise`, as a script for each shell; it comes out of the table of commands. */
import { type CliCommand, type CliOption, cliCommands, type shells } from './commands.ts';

export type Shell = (typeof shells)[number];

export function completionScript(shell: Shell): string {
  switch (shell) {
    case 'bash':
      return bashScript();
    case 'zsh':
      return zshScript();
    case 'fish':
      return fishScript();
  }
}

/** What may stand first: a command, or what `work` takes. */
const [work] = cliCommands as readonly [CliCommand, ...CliCommand[]];
const general = ['--help', '--version'];

const flags = (options: readonly CliOption[]): readonly string[] => options.map(({ name }) => `--${name}`);

/** For POSIX shells and fish: within single quotes nothing is special but the quote itself. */
const quoted = (text: string): string => `'${text.replaceAll("'", `'\\''`)}'`;
const quotedForFish = (text: string): string => `'${text.replaceAll('\\', '\\\\').replaceAll("'", "\\'")}'`;

/** Where nothing is offered, bash completes file names by itself. */
function bashScript(): string {
  const cases = cliCommands.map(
    (command) =>
      `    ${command.name}) words=${quoted([...flags(command.options), ...(command.choices ?? [])].join(' '))} ;;`,
  );
  const first = [...cliCommands.map(({ name }) => name), ...flags(work.options), ...general];
  return `# slantwise completion bash: add  source <(slantwise completion bash)  to ~/.bashrc
_slantwise() {
  local word=\${COMP_WORDS[COMP_CWORD]} words
  case \${COMP_WORDS[1]} in
${cases.join('\n')}
    *) words=${quoted(flags(work.options).join(' '))} ;;
  esac
  ((COMP_CWORD == 1)) && words=${quoted(first.join(' '))}
  COMPREPLY=($(compgen -W "$words" -- "$word"))
}
complete -o default -F _slantwise slantwise`;
}

function zshScript(): string {
  const described = cliCommands.map(({ name, summary }) =>
    quoted(`${name}:${summary().replaceAll(':', '\\:')}`),
  );
  const cases = cliCommands.map((command) => {
    const { choices } = command;
    const operands = choices ? `1:shell:(${choices.join(' ')})` : '*:file:_files';
    return `        ${command.name}) _arguments ${[...command.options.map(zshOption), quoted(operands)].join(' ')} ;;`;
  });
  return `#compdef slantwise
# slantwise completion zsh: add  source <(slantwise completion zsh)  to ~/.zshrc, below compinit
_slantwise() {
  local state line
  local -a commands=(
    ${described.join('\n    ')}
  )
  _arguments -C ${[...work.options.map(zshOption), ...general.map(quoted)].join(' ')} '1: :->first' '*:: :->rest'
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
function zshOption({ name, takes, summary }: CliOption): string {
  const said = summary().replace(/[[\]:]/g, '\\$&');
  return quoted(`--${name}[${said}]${takes === null ? '' : `:${takes}:_files`}`);
}

function fishScript(): string {
  const first = cliCommands.map(
    ({ name, summary }) =>
      `complete -c slantwise -n __fish_use_subcommand -a ${name} -d ${quotedForFish(summary())}`,
  );
  const options = cliCommands.flatMap((command) => [
    ...command.options.map((option) => fishOption(`__fish_seen_subcommand_from ${command.name}`, option)),
    ...(command.choices ?? []).map(
      (choice) => `complete -c slantwise -f -n '__fish_seen_subcommand_from ${command.name}' -a ${choice}`,
    ),
  ]);
  return [
    '# slantwise completion fish: slantwise completion fish > ~/.config/fish/completions/slantwise.fish',
    ...first,
    ...work.options.map((option) => fishOption('__fish_use_subcommand', option)),
    ...general.map((flag) => `complete -c slantwise -n __fish_use_subcommand -l ${flag.slice(2)}`),
    ...options,
  ].join('\n');
}

const fishOption = (when: string, { name, takes, summary }: CliOption): string =>
  `complete -c slantwise -n ${quotedForFish(when)} -l ${name}${takes === null ? '' : ' -r'} -d ${quotedForFish(summary())}`;
