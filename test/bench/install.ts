/** What an installation brings with it. */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
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
  const figure = { bare: null };
  return [
    {
      ...figure,
      what: 'shipped, unpacked, bundled whole with its libraries',
      unit: 'kB',
      ours: unpackedSize / 1000,
      target: atMost('ours', 3000),
    },
    {
      ...figure,
      what: 'scripts run by an installation',
      unit: 'of them',
      ours: installScripts.filter((name) => name in scripts).length + librariesWithScripts(),
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

/** Of the libraries that an installation brings, those that run something of their own. */
function librariesWithScripts(): number {
  const lock: { packages: Record<string, { dev?: boolean; hasInstallScript?: boolean }> } = JSON.parse(
    readFileSync('package-lock.json', 'utf8'),
  );
  return Object.values(lock.packages).filter(({ dev, hasInstallScript }) => hasInstallScript && !dev).length;
}
