/** Reads the program's own text for what it says: texts in which two words stand side by side. */
import { readdirSync, readFileSync } from 'node:fs';
import { parseAst } from 'vitest/node';

export interface Said {
  /** `source/chat/talk.ts:12`. */
  readonly at: string;
  readonly text: string;
}

interface Node {
  readonly type: string;
  readonly start: number;
  readonly [key: string]: unknown;
}

/** Two words side by side. */
const words = /[a-z]{2,}[,:;.]? [a-z]{2,}/i;
const word = /[a-z]{2,}/i;
/** A tag of HTML or XML, with its attributes. */
const tags = /<[/!?]?[a-z][^>]*>/g;
/** Not for the maker: types, modules, mistakes of our own. */
const passedBy = new Set(['ImportDeclaration', 'ExportAllDeclaration', 'TSLiteralType', 'ThrowStatement']);
/** Read by machines: examples of what can be typed, and the title of the schema. */
const isForMachines = (node: Node): boolean =>
  (node.type === 'Property' && /^examples?$/.test(nameOf(node.key) ?? '')) ||
  (node.type === 'Property' && nameOf(node.key) === 'usage' && isText(node.value)) ||
  (node.type === 'VariableDeclarator' &&
    /^(?:\w*[uU]sage|examples\w*|typedNames)$/.test(nameOf(node.id) ?? '')) ||
  node.value === 'Slantwise brief';
const isText = (value: unknown): boolean => isNode(value) && /^(?:Template)?Literal$/.test(value.type);
/** Lines to type, at a prompt or for a shell, of a script, or names of its variables. */
const forShells = /^(?:slantwise |[#.])|^[a-z]+ [A-Z]+(?:\.html)?$|^[A-Z_]+(?:, [A-Z_]+)+$/;

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && typeof (value as Node).type === 'string';

/** Of `words.say` it is `say`. */
function nameOf(value: unknown): string | null {
  if (!isNode(value)) return null;
  if (value.type === 'MemberExpression') return nameOf(value.property);
  return value.type === 'Identifier' ? (value.name as string) : null;
}

const partsOf = (template: Node): readonly string[] =>
  (template.quasis as readonly { readonly value: { readonly cooked: string } }[]).map(
    ({ value }) => value.cooked,
  );

export function readSentences(paths: readonly string[]): readonly Said[] {
  const said: Said[] = [];
  for (const path of paths) {
    const source = readFileSync(path, 'utf8');
    const walk = (node: Node): void => {
      if (passedBy.has(node.type) || isForMachines(node)) return;
      const text = textOf(node);
      if (text !== null) said.push({ at: `${path}:${source.slice(0, node.start).split('\n').length}`, text });
      const passed = isForBrowsers(node) ? node.quasi : null;
      for (const child of Object.values(node).flat()) if (isNode(child) && child !== passed) walk(child);
    };
    walk(parseAst(source, { lang: path.endsWith('x') ? 'tsx' : 'ts' }) as unknown as Node);
  }
  return said;
}

const isForBrowsers = (node: Node): boolean =>
  node.type === 'TaggedTemplateExpression' && /^(?:css|script)$/.test(nameOf(node.tag) ?? '');

function textOf(node: Node): string | null {
  if (node.type === 'Literal' && typeof node.value === 'string') return saidIn(node.value);
  if (node.type === 'TemplateLiteral') return saidIn(partsOf(node).join('…'));
  if (node.type === 'JSXText' && word.test(node.value as string)) return (node.value as string).trim();
  return null;
}

const saidIn = (text: string): string | null => (forShells.test(text) ? null : wordsOf(text));

/** The text, where it looks like words; between tags one is enough. */
function wordsOf(text: string): string | null {
  const bare = text.replace(tags, '');
  return (bare === text ? words : word).test(bare) ? bare.trim() : null;
}

/** The folders that speak to the maker; those below them have names and codes alone. */
const speaking = /^source\/(?:shared|journal|settings|chat|sheet|files|screen|cli)\b/;

export const programFiles = (): readonly string[] =>
  readdirSync('source', { recursive: true, encoding: 'utf8' })
    .map((path) => `source/${path}`)
    .filter((path) => /\.tsx?$/.test(path) && !/\.test\.tsx?$/.test(path))
    .filter((path) => speaking.test(path))
    .toSorted();
