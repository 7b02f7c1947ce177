/**
 * Makes one file that needs no Node: a single executable application of Node with all parts of the program in it. Without
 * arguments for the system that it runs on; `npm run executable -- win32-x64 linux-arm64` for others, which it cannot try.
 */
import { execFileSync } from 'node:child_process';
import { copyFileSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fetchNode, thisSystem } from './other-node.mjs';

/** Node makes such files by itself from 25.5 on. */
const node = fetchNode('latest');
const folder = '.executable';
const parts = join(folder, 'parts');
/** What begins a program is no part of it. */
const startsHere = new Set(['cli.js', 'start-executable.js']);
const practice = join('demo', 'dice-bag.json');

rmSync(folder, { recursive: true, force: true });
// Where the program looks for it while what V8 compiles is kept.
mkdirSync(join(folder, 'demo'), { recursive: true });
copyFileSync(practice, join(folder, practice));
execFileSync(node, ['.config/build.mjs', 'source/main.ts', parts], { stdio: 'inherit' });
const notices = [join(parts, 'NOTICES.txt'), join(dirname(node), '..', 'LICENSE')];
writeFileSync(join(folder, 'NOTICES.txt'), notices.map((path) => readFileSync(path, 'utf8')).join('\n'));

const asked = process.argv.slice(2);
for (const system of asked.length > 0 ? asked : [thisSystem]) {
  const output = join(folder, `slantwise-${system}${system.startsWith('win32') ? '.exe' : ''}`);
  const config = join(folder, `${system}.json`);
  writeFileSync(config, JSON.stringify(configFor(system, output)));
  execFileSync(node, ['--build-sea', config], { stdio: 'pipe' });
  rmSync(config);
  const isTried = system === thisSystem;
  if (isTried) execFileSync(output, ['--version'], { stdio: 'pipe' });
  console.log(`${output}${isTried ? '' : ': untried, since it does not run on this system'}`);
  if (system.startsWith('darwin')) console.log('  A Mac runs it once it is signed: codesign --sign - FILE');
}

function configFor(system, output) {
  const files = readdirSync(parts);
  const names = files.filter((name) => name.endsWith('.js') && !startsHere.has(name));
  const compiled = files.find((name) => name.endsWith('.bin'));
  const assets = Object.fromEntries(names.map((name) => [name, join(parts, name)]));
  assets['dice-bag.json'] = practice;
  // What V8 compiled is of use to the same Node on the same system alone.
  if (compiled && system === thisSystem) assets['compiled.bin'] = join(parts, compiled);
  return {
    main: join(parts, 'start-executable.js'),
    output,
    executable: fetchNode('latest', system),
    disableExperimentalSEAWarning: true,
    execArgvExtension: 'none',
    assets,
  };
}
