import { describe, expect, it } from 'vitest';
import { confirm, type SampleLine, writeLog } from '../../test/fixtures/sample-log.ts';
import { valueIn } from '../../test/tools/result.ts';
import { type Recording, readRecording } from './read-log.ts';
import { recordOf, typicalRowMinutes } from './record.ts';

function recordingOf(...lines: readonly SampleLine[]): Recording {
  return valueIn(readRecording(writeLog(lines).bytes));
}

const press = (seconds: number): SampleLine => confirm(1, seconds * 1000);
const at = (seconds: number, event: SampleLine['event']): SampleLine => ({ event, afterMs: seconds * 1000 });

/** To the first yarn change of the small bag: 9 steps of casting on lie before it. */
const castOnSkipped = at(2, { do: 'go', done: 9 });

// The stripes of the small bag: thread, pass (row 1), pass (row 2), increase, decrease, thread, pass (row 3), pass (row 4).
const threeRows = [
  castOnSkipped,
  press(20),
  press(10),
  press(30),
  press(15),
  press(25),
  press(40),
  press(10),
];

describe('record', () => {
  it('gives each phase and stripe the time before its presses', () => {
    const { benchMs, restMs, byPhase, byStripe } = recordOf(recordingOf(...threeRows));
    expect([benchMs, restMs]).toEqual([152_000, 0]);
    expect([...byPhase]).toEqual([
      ['cast-on', 2000],
      ['stripes', 150_000],
    ]);
    expect([...byStripe]).toEqual([
      [1, 100_000],
      [2, 50_000],
    ]);
  });

  it('counts to a row its yarn change and its shaping move', () => {
    const { byRow } = recordOf(recordingOf(...threeRows));
    expect([...byRow]).toEqual([
      [1, 30_000],
      [2, 70_000],
      [3, 50_000],
    ]);
  });

  it('takes a gap over five minutes for a rest, unless many steps were confirmed at its end', () => {
    const { benchMs, restMs } = recordOf(
      recordingOf(confirm(1, 300_001), confirm(1, 300_000), confirm(4, 1_100_000)),
    );
    expect([benchMs, restMs]).toEqual([1_400_000, 300_001]);
    expect(recordOf(recordingOf(press(20)), 10_000)).toMatchObject({ benchMs: 0, restMs: 20_000 });
  });

  it('counts what was taken back, and the time it took to the step it belonged to', () => {
    const { takenBack, byPhase, sittings } = recordOf(
      recordingOf(
        press(5),
        at(3, { do: 'back' }),
        press(4),
        at(0, { do: 'resume', at: '2031-03-05T18:00:00.000Z' }),
      ),
    );
    expect([takenBack, sittings, byPhase.get('cast-on')]).toEqual([1, 2, 12_000]);
  });

  it('names the steps that took over three times as long as their like', () => {
    // Steps 34 to 40 are the seven pairs of the graft: ten seconds each, the third 45, the sixth just 30.
    const pairs = [10, 10, 45, 10, 10, 30, 10].map(press);
    const { slowPlaces } = recordOf(recordingOf(confirm(33, 0), ...pairs));
    expect(slowPlaces).toEqual([{ step: 36, row: 7, ms: 45_000, usualMs: 10_000 }]);
  });

  it('does not learn the pace of a row from rows confirmed together or jumped over', () => {
    expect(typicalRowMinutes([recordOf(recordingOf(castOnSkipped, confirm(5, 60_000)))])).toBeNull();
    expect(typicalRowMinutes([])).toBeNull();
  });

  it('takes the median row over all logs', () => {
    const quick = recordOf(recordingOf(castOnSkipped, press(5), press(5)));
    const steady = recordOf(recordingOf(...threeRows));
    // Rows of 10, 30, 50 and 70 seconds.
    expect(typicalRowMinutes([quick, steady])).toBeCloseTo(40 / 60, 12);
  });
});
