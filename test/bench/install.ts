/** What an installation brings with it. */
import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { atMost, type Figure } from './figure.ts';

const installScripts = [
  'preinstall',
  'install',
  'postinstall',
  'prepublish',
  'preprepare',
  'prepare',
  'postprepare',
];

export function measureInstall(): readonly Figure[] {
  const packed = execFileSync('npm', ['pack', '--dry-run', '--json', '--ignore-scripts'], {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'ignore'],
  });
  const [{ unpackedSize = Number.NaN } = {}] = JSON.parse(packed) as { unpackedSize?: number }[];
  const { scripts, dependencies } = JSON.parse(readFileSync('package.json', 'utf8'));
  const bundled = readdirSync('dist').map((name) => statSync(join('dist', name)).size);
  const figure = { bare: null };
  return [
    {
      ...figure,
      what: 'shipped, unpacked, libraries within',
      unit: 'kB',
      ours: unpackedSize / 1000,
      target: atMost('ours', 1500),
    },
    {
      ...figure,
      what: 'bundled whole',
      unit: 'kB',
      ours: bundled.reduce((sum, size) => sum + size, 0) / 1000,
      target: atMost('ours', 3000),
    },
    {
      ...figure,
      what: 'scripts run by an installation',
      unit: 'of them',
      ours: installScripts.filter((name) => name in scripts).length,
      target: atMost('ours', 0),
    },
    {
      ...figure,
      what: 'libraries named for installation',
      unit: 'of them',
      ours: Object.keys(dependencies ?? {}).length,
      target: null,
    },
  ];
}
