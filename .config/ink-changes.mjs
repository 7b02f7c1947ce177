/**
 * What the built program changes in Ink and its layout engine. Each change is here for what was measured of it: see "How
 * fast and how light" in DEVELOPERS.md. A text that is no longer found stops the build.
 */
import { readFile } from 'node:fs/promises';

/** Ink cuts each row of the screen into its characters anew at every drawing; its cache for them is kept for the next. */
const keptCaches = `
let kept = new OutputCaches();
function keptCaches() {
  if (kept.styledChars.size > 500) kept = new OutputCaches();
  return kept;
}`;

/**
 * The engine is compiled at once. As it comes, it waits for that while it loads, and a file that does cannot be kept
 * compiled; nor need it be fetched from within itself, as if from a network.
 */
const loadedEngine = `
const engine = {
  instantiateWasm(imports, done) {
    const instance = new WebAssembly.Instance(new WebAssembly.Module(wasm), imports);
    done(instance);
    return instance.exports;
  },
};
loadYoga(engine);
const Yoga = wrapAssembly(engine);`;

/** The pattern is made when the first text comes that is not plain. */
const lateEmoji = `
let emoji;
function isEmoji(text) {
  emoji ??= new RegExp('^\\\\p{RGI_Emoji}$', 'v');
  return emoji.test(text);
}`;

const said = `
            this.fullStaticOutput += staticOutput;
        }
        // Detect`;

const changes = [
  {
    // Ink keeps all that was ever said, to say it again where a window has become lower than the screen; ours shows the
    // last lines again by itself.
    file: /[\\/]ink[\\/]build[\\/]ink\.js$/,
    change: (text) =>
      replace(
        replace(text, said, said.replace('+=', '=')),
        'clearTerminal + this.fullStaticOutput + output',
        'clearTerminal + output',
      ),
  },
  {
    file: /[\\/]ink[\\/]build[\\/]output\.js$/,
    change: (text) => replace(text, 'caches = new OutputCaches();', 'caches = keptCaches();') + keptCaches,
  },
  {
    // What Ink loads for its own developers alone.
    file: /[\\/]ink[\\/]build[\\/]reconciler\.js$/,
    change: (text) =>
      replace(replace(text, "await import('./devtools.js');", ''), 'await loadPackageJson()', 'undefined'),
  },
  {
    file: /[\\/]yoga-layout[\\/]dist[\\/]src[\\/]index\.js$/,
    change: (text) =>
      replace(
        replace(text, 'import loadYoga from', 'import loadYoga, { wasm } from'),
        'const Yoga = wrapAssembly(await loadYoga());',
        loadedEngine,
      ),
  },
  {
    // Of this library two versions come along; the one with this pattern takes long to make it, and plain text needs it not.
    file: /node_modules[\\/]string-width[\\/]index\.js$/,
    change: (text) =>
      text.includes('rgiEmojiRegex')
        ? replace(text, 'rgiEmojiRegex = /^\\p{RGI_Emoji}$/v;', 'rgiEmojiRegex = { test: isEmoji };') +
          lateEmoji
        : text,
  },
  {
    // The engine is held as text for a browser: Node's own decoder is quicker than the one that comes with it.
    file: /[\\/]yoga-wasm-base64-esm\.js$/,
    change: (text) => {
      const [address = '', encoded] =
        /data:application\/octet-stream;base64,([A-Za-z0-9+/=]+)/.exec(text) ?? [];
      return `${replace(text, address, '')}export const wasm = Buffer.from('${encoded}', 'base64');`;
    },
  },
];

function replace(text, from, to) {
  if (from === '' || !text.includes(from))
    throw new Error(`Ink has changed: "${from}" is not there any more`);
  return text.replace(from, () => to);
}

export const inkChanges = {
  name: 'ink-changes',
  setup(build) {
    for (const { file, change } of changes) {
      build.onLoad({ filter: file }, async ({ path }) => ({
        contents: change(await readFile(path, 'utf8')),
      }));
    }
  },
};
