/**
 * Runs the program that was built into a folder on a terminal that is none, pressing Enter at each text that it is to
 * show, and keeps there what V8 compiled for that. `source/cli/start.ts` looks for it.
 */
import { mkdtempSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { PassThrough } from 'node:stream';
import { setFlagsFromString } from 'node:v8';

/** Longer than any machine takes (a rule of thumb). */
const patienceMs = 20_000;

const [folder, ...given] = process.argv.slice(2);
const texts = given.length > 0 ? given : ['step 1 of', '+ 1 '];
const home = mkdtempSync(join(tmpdir(), 'slantwise-build-'));
Object.assign(process.env, {
  HOME: home,
  XDG_CONFIG_HOME: home,
  XDG_DATA_HOME: home,
  LC_ALL: 'C.UTF-8',
  TERM: 'xterm-256color',
  COLORTERM: 'truecolor',
});
for (const name of ['CI', 'NO_COLOR', 'SLANTWISE_LOG', 'INK_SCREEN_READER']) delete process.env[name];

const terminal = () => Object.assign(new PassThrough(), { isTTY: true, columns: 80, rows: 24 });
const stdin = Object.assign(terminal(), { setRawMode: () => stdin, ref: () => stdin, unref: () => stdin });
const stdout = terminal();
Object.defineProperties(process, { stdin: { value: stdin }, stdout: { value: stdout } });

let shown = '';
const waitFor = (text) =>
  new Promise((seen) => {
    const look = () => shown.includes(text) && seen();
    stdout.on('data', look);
    look();
  });
stdout.on('data', (chunk) => {
  shown += chunk;
});

process.argv.splice(1, Number.POSITIVE_INFINITY, join(folder, 'cli.js'), 'demo/dice-bag.json');
setTimeout(() => {
  throw new Error(`the program did not show ${texts.join(', ')} but\n${shown}`);
}, patienceMs);
const { run, seal, compiledPath } = createRequire(import.meta.url)(resolve(folder, 'cli.js'));
const program = run();
for (const text of texts) {
  await waitFor(text);
  stdin.write('\r');
}
// V8 takes what was compiled only under the flags that it had then, and a screen sets this one.
setFlagsFromString('--heap-growing-percent=0');
writeFileSync(`${compiledPath}.new`, seal(program.createCachedData()));
renameSync(`${compiledPath}.new`, compiledPath);
rmSync(home, { recursive: true, force: true });
process.exit(0);
