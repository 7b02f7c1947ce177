import { describe, expect, it } from 'vitest';
import { confirm, writeLog } from '../../test/fixtures/sample-log.ts';
import { valueIn } from '../../test/tools/result.ts';
import { readRecording } from '../journal/read-log.ts';
import { englishWords } from '../wording/words.ts';
import { formatLessonLineFault, readLessonLines } from './teaching.ts';

/** Steps 1 and 2 confirmed one by one, 3 to 6 together, then one taken back as far as the press goes. */
const read = valueIn(
  readRecording(writeLog([confirm(), confirm(), confirm(4), { event: { do: 'back' } }, confirm(5)]).bytes),
);
const recording = read;
const linesOf = (text: string) => readLessonLines(text, recording);

describe("a teacher's lines", () => {
  it('go where the step first comes next', () => {
    expect(linesOf('1 say Sit well.\n3 pause\n7 mark six done\n8 note slow here')).toEqual({
      ok: true,
      value: [
        { after: 0, event: { do: 'say', text: 'Sit well.' } },
        { after: 2, event: { do: 'pause' } },
        { after: 3, event: { do: 'mark', name: 'six done' } },
        { after: 5, event: { do: 'note', text: 'slow here' } },
      ],
    });
  });

  it('for a step confirmed together with others go before all of them', () => {
    expect(linesOf('5 say Four waste rows now.')).toMatchObject({ value: [{ after: 2 }] });
  });

  it('may be empty or begin with a #', () => {
    expect(linesOf('# for Tuesday\r\n\r\n  2 pause  \r\n')).toMatchObject({ value: [{ after: 1 }] });
  });

  it.each([
    ['2 shout Look!', 'Line 1 is not understood: "2 shout Look!". For example: 33 say'],
    ['\nsay Look!', 'Line 2 is not understood'],
    ['2 say', 'Line 1 is not understood'],
    ['2 pause now', 'Line 1 is not understood'],
    ['9 pause', 'Line 1 names step 9, but the log goes from step 1 to 8.'],
    ['0 pause', 'Line 1 names step 0'],
    ['# nothing', 'There is no line to add.'],
  ])('%j is refused with the line and an example', (text, sentence) => {
    const lines = linesOf(text);
    expect(lines.ok ? null : formatLessonLineFault(lines.fault, englishWords)).toContain(sentence);
  });
});
