/**
 * `npm run bench`: measures everything, prints a table, writes it into RESULTS.md and keeps it as JSON, and says what got
 * slower since the last time. `--only start,press` measures those parts alone, `--quick` does a few runs of each, and
 * neither goes into RESULTS.md; `--json FILE` keeps the result there.
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { dirname, join } from 'node:path';
import { parseArgs } from 'node:util';
import { cacheFolder } from './bare-programs.ts';
import { countInstructions, measureCore } from './core.ts';
import { type Figure, formatTable, sayWorse, withFigures } from './figure.ts';
import { measureInstall } from './install.ts';
import { measureMemory } from './memory.ts';
import { measurePress } from './press.ts';
import { measureStart } from './start.ts';

const { values } = parseArgs({
  options: {
    only: { type: 'string' },
    quick: { type: 'boolean', default: false },
    json: { type: 'string', default: join(cacheFolder, 'figures.json') },
  },
});
const { quick } = values;
/** Far more than any one bag has. */
const manyEvents = 100_000;

const parts: Readonly<Record<string, () => Promise<readonly Figure[]> | readonly Figure[]>> = {
  start: () => measureStart(quick ? 5 : 40, manyEvents),
  press: () => measurePress(quick ? 100 : 2000, manyEvents),
  memory: () => (quick ? measureMemory(100, 300) : measureMemory(1000, 20_000)),
  core: () => measureCore(quick ? 0.5 : 4),
  install: measureInstall,
  instructions: countInstructions,
};

const wanted = values.only?.split(',') ?? Object.keys(parts);
const unknown = wanted.filter((name) => !(name in parts));
if (unknown.length > 0) {
  console.error(`No part ${unknown.join(', ')} here: --only takes ${Object.keys(parts).join(', ')}.`);
  process.exit(2);
}

const figures: Figure[] = [];
for (const name of wanted) figures.push(...((await parts[name]?.()) ?? []));

const machine = `${cpus().length} processors of the kind ${process.arch}, Node ${process.version}`;
const date = new Date().toISOString().slice(0, 10);
const measured = `${machine}, ${date}\n\n${formatTable(figures)}`;
console.log(`${measured}\n`);
const results = 'test/bench/RESULTS.md';
if (!quick && values.only === undefined)
  writeFileSync(results, withFigures(readFileSync(results, 'utf8'), measured));

const past = existsSync(values.json) ? JSON.parse(readFileSync(values.json, 'utf8')) : null;
const worse = past ? sayWorse(past.figures, figures) : [];
if (worse.length > 0) console.log(`Slower than on ${past.date}:\n${worse.join('\n')}`);
else
  console.log(
    past ? `Nothing is slower than on ${past.date}.` : 'There is no earlier result to compare with.',
  );

// A part measured alone replaces its own figures and leaves the others.
const others = (past?.figures ?? []).filter(({ what }: Figure) => !figures.some((one) => one.what === what));
mkdirSync(dirname(values.json), { recursive: true });
writeFileSync(values.json, JSON.stringify({ machine, date, figures: [...figures, ...others] }, null, 1));
console.log(`Kept in ${values.json}`);
process.exit(0);
