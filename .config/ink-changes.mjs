/**
 * What the program changes in Ink and its layout engine, in the bundle and under the tests alike. Each change is here for
 * what was measured of it: see test/bench/RESULTS.md. One that does not fit exactly once stops the build, by its name; so
 * does one that cannot be found in what was built.
 */
import { readFile } from 'node:fs/promises';

/** Ink cuts each row of the screen into its characters again at every drawing; its cache for them is kept for the next. */
const keptCaches = `
let kept = new OutputCaches();
function keptCaches() {
  if (kept.styledChars.size > 500) kept = new OutputCaches();
  return kept;
}`;

/** A cell of its own for every blank of the screen, made at each drawing, was two thirds of what a press left behind. */
const blankRow = `
            const row = [];
            for (let x = 0; x < this.width; x++) {
                row.push({
                    type: 'char',
                    value: ' ',
                    fullWidth: false,
                    styles: [],
                });
            }
            output.push(row);`;
const firstCharacter = `
                    let offsetX = x;
                    for (const character of characters) {`;
/** Blanks are cut off at the end of a row, so there need be none but those before a text. */
const filledUp = `
                    while (currentLine.length < x) currentLine.push(blankCell);${firstCharacter}`;
const blankCell = `
const blankCell = { type: 'char', value: ' ', fullWidth: false, styles: [] };`;

/** What is cut off in the end need not be put together first. */
const withoutBlanks = `
function withoutBlanks(characters) {
  let end = characters.length;
  while (end > 0 && characters[end - 1].value === ' ' && characters[end - 1].styles.length === 0) end--;
  return characters.slice(0, end);
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

/**
 * Letters of Latin, dashes, quotation marks, arrows, lines, blocks and shapes: each of them is a character by itself, and takes
 * one cell.
 */
const plain = '\\u0020-\\u007e\\u00a1-\\u00ac\\u00ae-\\u024f\\u2010-\\u2027\\u2190-\\u21ff\\u2500-\\u25fc';

/** What cuts text into characters loads tables of all scripts, for some ten milliseconds: not before it is needed. */
const lateSegmenter = `
function lateSegmenter() {
  let made;
  return { segment: (text) => (made ??= new Intl.Segmenter(undefined, { granularity: 'grapheme' })).segment(text) };
}`;

/** The last plane holds characters that stand for whole rows. */
const charactersOf = `${lateSegmenter}
const segmenter = lateSegmenter();
const isPlain = /^[\\u001b${plain}\\u{100000}-\\u{10fffd}]*$/u;
function charactersOf(text) {
  if (!isPlain.test(text)) return segmenter.segment(text);
  let index = 0;
  return Array.from(text, (segment) => {
    const at = index;
    index += segment.length;
    return { segment, index: at };
  });
}`;

/** The pattern is made when the first text comes that is not plain. The last plane has no emoji. */
const lateEmoji = `${lateSegmenter}
const isOneRow = (text) => text.length === 2 && text.codePointAt(0) >= 0x100000;
let emoji;
const oneCellEach = /^[${plain}]*$/;
function isEmoji(text) {
  if (text.codePointAt(0) >= 0x100000) return false;
  emoji ??= new RegExp('^\\\\p{RGI_Emoji}$', 'v');
  return emoji.test(text);
}`;

const said = `
            this.fullStaticOutput += staticOutput;
        }
        // Detect`;

/** Ink's way of drawing: it erases all that it drew and writes all of it again. */
const drawnAnew = `
            previousOutput = str;
            const returnPrefix = buildReturnToBottomPrefix(cursorWasShown, previousLineCount, previousCursorPosition);
            stream.write(returnPrefix +
                ansiEscapes.eraseLines(previousLineCount) +
                str +
                cursorSuffix);`;

/** Which it still does where the stream has no way of its own. */
const draw = `
function draw(stream, before, said, now) {
  if (stream.draw) stream.draw(before, said, now);
  else stream.write(ansiEscapes.eraseLines(before === '' ? 0 : before.split('\\n').length) + said + now);
}`;

const say = `    render.say = (said, str) => {
        draw(stream, previousOutput, said, str);
        previousOutput = str;
        previousLineCount = str.split('\\n').length;
    };
`;
const sync = `    render.sync = (str) => {
        const activeCursor = cursorDirty ? cursorPosition : undefined;
        cursorDirty = false;
        const lines = str.split('\\n');
        previousOutput = str;
        previousLineCount = lines.length;`;

const saidAndDrawn = `
            this.log.clear();
            this.options.stdout.write(staticOutput);
            this.log(outputToRender);`;

/** `shows` is what the bundle holds of a change, and `hides` what it no longer holds. */
const changes = [
  {
    // Ink keeps all that was ever said, to say it again where a window has become lower than the screen; ours shows the
    // last lines again by itself. What is said in that very drawing is still to be written, and all of it ends as Ink takes
    // it to end: without the last newline the next drawing would begin a row too high.
    name: 'nothing said is kept, and it is handed on with the drawing',
    file: /[\\/]ink[\\/]build[\\/]ink\.js$/,
    texts: [
      [said, said.replace('+=', '=')],
      [
        'clearTerminal + this.fullStaticOutput + output',
        "clearTerminal + (hasStaticOutput ? staticOutput : '') + outputToRender",
      ],
      [saidAndDrawn, '\n            this.log.say(staticOutput, outputToRender);'],
    ],
    shows: /&&\(this\.fullStaticOutput=[\w$][\s\S]*this\.log\.say\(/,
    hides: /clearTerminal\+this\.fullStaticOutput/,
  },
  {
    // What was said, what stood there and what is to stand there are handed on apart, so that only what differs need be
    // written. The cursor that Ink can place is not used here.
    name: 'a drawing is handed on with the one before',
    file: /[\\/]ink[\\/]build[\\/]log-update\.js$/,
    texts: [
      [drawnAnew, "\n            draw(stream, previousOutput, '', str);\n            previousOutput = str;"],
      [sync, say + sync],
    ],
    more: draw,
    shows: /\.draw\?[\w$]+\.draw\(/,
  },
  {
    // Ink keeps the size of every text that it ever drew, with the text: of a long day that would be much.
    name: 'few measured texts are kept',
    file: /[\\/]ink[\\/]build[\\/]measure-text\.js$/,
    texts: [
      [
        '    cache.set(text, dimensions);',
        '    if (cache.size > 200) cache.clear();\n    cache.set(text, dimensions);',
      ],
    ],
    shows: /\.size>200&&[\w$]+\.clear\(\)/,
  },
  {
    name: 'cut rows are kept, blanks at their ends left out, all others one',
    file: /[\\/]ink[\\/]build[\\/]output\.js$/,
    texts: [
      [blankRow, '\n            output.push([]);'],
      [firstCharacter, filledUp],
      ['caches = new OutputCaches();', 'caches = keptCaches();'],
      [
        'styledCharsToString(lineWithoutEmptyItems)',
        'styledCharsToString(withoutBlanks(lineWithoutEmptyItems))',
      ],
    ],
    more: keptCaches + withoutBlanks + blankCell,
    shows: /\.styledChars\.size>500/,
    hides: /\.push\(\{type:"char",value:" ",fullWidth:!1,styles:\[\]\}\)/,
  },
  {
    // What Ink loads for its own developers alone.
    name: 'no tools for developers of Ink',
    file: /[\\/]ink[\\/]build[\\/]reconciler\.js$/,
    texts: [
      ["await import('./devtools.js');", ''],
      ['await loadPackageJson()', 'undefined'],
    ],
    hides: /react-devtools-core/,
  },
  {
    name: 'the layout engine is compiled at once',
    file: /[\\/]yoga-layout[\\/]dist[\\/]src[\\/]index\.js$/,
    texts: [
      ['import loadYoga from', 'import loadYoga, { wasm } from'],
      ['const Yoga = wrapAssembly(await loadYoga());', loadedEngine],
    ],
    shows: /new WebAssembly\.Instance\(new WebAssembly\.Module\(/,
  },
  {
    // Both the pattern and the tables take long to make, and plain text never needs them.
    name: 'plain text is measured by its length, the pattern of emoji made late',
    file: /node_modules[\\/]string-width[\\/]index\.js$/,
    texts: [
      ['rgiEmojiRegex = /^\\p{RGI_Emoji}$/v;', 'rgiEmojiRegex = { test: isEmoji };'],
      [
        '/^[\\u0020-\\u007E]*$/.test(string)',
        'isOneRow(string)) {\n\t\treturn 1;\n\t}\n\tif (oneCellEach.test(string)',
      ],
      ['new Intl.Segmenter()', 'lateSegmenter()'],
    ],
    more: lateEmoji,
    shows: /\?\?=new RegExp\("\^\\\\p\{RGI_Emoji\}\$","v"\)/,
  },
  {
    name: 'plain rows are cut into characters without tables',
    file: /[\\/]ansi-tokenize[\\/]build[\\/]tokenize\.js$/,
    texts: [
      ['const segmenter = new Intl.Segmenter(undefined, { granularity: "grapheme" });', ''],
      ['segmenter.segment(str)', 'charactersOf(str)'],
    ],
    more: charactersOf,
    shows: /\\u\{100000\}-\\u\{10fffd\}/,
  },
  {
    name: 'tables for cutting rows are made late',
    file: /[\\/]slice-ansi[\\/]tokenize-ansi\.js$/,
    texts: [["new Intl.Segmenter(undefined, {granularity: 'grapheme'})", 'lateSegmenter()']],
    more: lateSegmenter,
    hides: /[^?]=new Intl\.Segmenter/,
  },
  {
    // The engine is held as text for a browser: Node's own decoder is quicker than the one that comes with it.
    name: 'the layout engine is decoded by Node',
    file: /[\\/]yoga-wasm-base64-esm\.js$/,
    texts: [[/data:application\/octet-stream;base64,([A-Za-z0-9+/=]+)/, '']],
    moreOf: ([, encoded]) => `export const wasm = Buffer.from('${encoded}', 'base64');`,
    shows: /Buffer\.from\("AGFzb/,
    hides: /data:application\/octet-stream;base64,[A-Za-z0-9]/,
  },
];

/** The text of a file with a change made in it. */
function apply({ name, texts, more = '', moreOf = () => more }, text) {
  let found = [];
  let changed = text;
  for (const [from, to] of texts) {
    const times =
      from instanceof RegExp
        ? [...changed.matchAll(new RegExp(from, 'g'))].length
        : changed.split(from).length - 1;
    if (times !== 1) throw new Error(`Ink has changed: "${name}" fits ${times} times instead of once`);
    if (from instanceof RegExp) found = from.exec(changed);
    changed = changed.replace(from, () => to);
  }
  return changed + moreOf(found);
}

const wants = ({ file }, path) => file.test(path);

/** For esbuild. */
export const inkChanges = {
  name: 'ink-changes',
  setup(build) {
    const made = new Map(changes.map(({ name }) => [name, 0]));
    for (const change of changes) {
      build.onLoad({ filter: change.file }, async ({ path }) => {
        const text = await readFile(path, 'utf8');
        if (!wants(change, path)) return null;
        made.set(change.name, made.get(change.name) + 1);
        return { contents: apply(change, text) };
      });
    }
    build.onEnd(() => {
      const wrong = [...made].filter(([, times]) => times !== 1);
      if (wrong.length > 0)
        throw new Error(
          `Ink has changed: ${wrong.map(([name, times]) => `"${name}" was made ${times} times`).join(', ')}`,
        );
    });
  },
};

/** What draws with Ink is taken through the plugin too, so that there is one Ink and it is the changed one. */
export const inkFiles =
  /\/node_modules\/(?:ink|ink-text-input|ink-testing-library|yoga-layout|string-width|slice-ansi|@alcalzone\/ansi-tokenize)\/.*\.js$/;

/** For Vite, so that the tests draw with the same Ink. */
export const inkChangesInTests = {
  name: 'ink-changes',
  enforce: 'pre',
  // Ink names source maps that do not come with it, which Vite would complain of at each file.
  load: async (id) =>
    inkFiles.test(id) ? (await readFile(id, 'utf8')).replace(/^\/\/# sourceMappingURL=.*$/m, '') : null,
  transform(text, id) {
    const [path] = id.split('?');
    const change = changes.find((candidate) => wants(candidate, path));
    return change ? { code: apply(change, text), map: null } : null;
  },
};

export const changeNames = changes.map(({ name }) => name);

/** Names of the changes that the text of a bundle does not have. */
export const missingFrom = (bundle) =>
  changes
    .filter(({ shows, hides }) => (shows && !shows.test(bundle)) || hides?.test(bundle))
    .map(({ name }) => name);
