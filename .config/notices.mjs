/** The licences of the libraries that a bundle holds, as they ask for. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** The text of a file of notices, from the list of files that esbuild put together. */
export function noticesOf(metafile) {
  const folders = Object.values(metafile.outputs)
    .flatMap(({ inputs }) => Object.entries(inputs))
    .filter(([, { bytesInOutput }]) => bytesInOutput > 0)
    .map(([path]) => /^.*node_modules\/(?:@[^/]+\/)?[^/]+/.exec(path)?.[0])
    .filter((folder) => folder !== undefined);
  return [...new Set(folders)]
    .toSorted()
    .map(noticeOf)
    .join(`\n\n${'-'.repeat(80)}\n\n`);
}

function noticeOf(folder) {
  const { name, version, license, author } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  if (!license) throw new Error(`${name} ${version} does not say under which licence it may be bundled`);
  const files = readdirSync(folder).filter((file) => /^(?:licen[cs]e|notice|copying)/i.test(file));
  const by = typeof author === 'string' ? author : author?.name;
  const texts = files.map((file) => readFileSync(join(folder, file), 'utf8').trim());
  return [`${name} ${version} (${license})`, ...(texts.length > 0 ? texts : by ? [`By ${by}`] : [])].join(
    '\n\n',
  );
}
