import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Those that take longest, the longest first, as measured; one of them begun last keeps a core waiting for it alone. */
const longest = [
  'test/outside/sheet-in-browser',
  'test/terminal/trouble.timed',
  'test/terminal/switches.timed',
  'test/laws/text-gate',
  'test/laws/finding',
  'test/outside/sheets',
  'test/laws/squint',
  'test/laws/agreement',
  'test/laws/contrast',
  'source/screen/bench/rows/bench-rows',
  'source/sheet/terminal/drawings',
];

const rank = ({ moduleId }: TestSpecification): number => {
  const at = longest.findIndex((name) => moduleId.includes(`/${name}.`));
  return at < 0 ? longest.length : at;
};

/** On a fresh checkout nothing is known of how long each file takes, and large files are not the slow ones. */
export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    return sorted.toSorted((one, other) => rank(one) - rank(other));
  }
}
