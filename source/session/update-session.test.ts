/** What the session takes and what it refuses, at the edges of what can be asked. */
import { describe, expect, it } from 'vitest';
import { jobOf, noChange, stripedBrief } from '../../test/fixtures/plan-of.ts';
import { faultIn, valueIn } from '../../test/tools/result.ts';
import type { Command } from './command.ts';
import { leastPlaces, type Session, startSession } from './session.ts';
import { updateSession } from './update-session.ts';

const job = jobOf(stripedBrief(20, 24, 60));
const { stepCount } = job;

const having = (...commands: readonly Command[]): Session =>
  commands.reduce((session, command) => {
    return valueIn(updateSession(session, command));
  }, startSession(job));

const faultOf = (session: Session, command: Command): unknown => {
  const next = updateSession(session, command);
  return next.ok ? null : next.fault;
};

const unchanged = { rows: job.plan.rows, ...noChange };

describe('confirming', () => {
  it('goes on by one step or several, to the last of them', () => {
    expect(having({ do: 'confirm', count: 1 }).done).toBe(1);
    expect(having({ do: 'confirm', count: 3 }, { do: 'confirm', count: stepCount - 3 }).done).toBe(stepCount);
  });

  it.each([0, -1, 1.5, stepCount + 1])('is refused for %d steps at once', (count) => {
    expect(faultOf(startSession(job), { do: 'confirm', count })).toEqual({
      code: 'session/too-many-steps',
      count,
      left: stepCount,
    });
  });

  it('is refused once the bag is finished', () => {
    expect(faultOf(having({ do: 'confirm', count: stepCount }), { do: 'confirm', count: 1 })).toEqual({
      code: 'session/nothing-to-confirm',
    });
  });
});

describe('taking back and doing again', () => {
  it('is refused where there is nothing of the kind', () => {
    expect(faultOf(startSession(job), { do: 'back' })).toEqual({ code: 'session/nothing-to-take-back' });
    expect(faultOf(startSession(job), { do: 'redo' })).toEqual({ code: 'session/nothing-to-redo' });
  });
});

describe('going to a step', () => {
  it('may go before the first and behind the last', () => {
    expect(having({ do: 'go', done: stepCount }).done).toBe(stepCount);
    expect(having({ do: 'go', done: 5 }, { do: 'go', done: 0 }).done).toBe(0);
  });

  it.each([-1, 2.5, stepCount + 1])('is refused for step %d', (done) => {
    expect(faultOf(startSession(job), { do: 'go', done })).toEqual({
      code: 'session/no-such-step',
      step: done + 1,
      stepCount,
    });
  });

  it('is refused where the work is there', () => {
    expect(faultOf(having({ do: 'go', done: 7 }), { do: 'go', done: 7 })).toEqual({
      code: 'session/already-there',
      done: 7,
    });
  });
});

describe('a note and a mark', () => {
  it('keep the place at which they were made', () => {
    const session = having(
      { do: 'confirm', count: 4 },
      { do: 'note', text: 'mint is tight' },
      { do: 'mark', name: 'left edge' },
      { do: 'confirm', count: 1 },
    );
    expect([...session.notes]).toEqual([{ done: 4, text: 'mint is tight' }]);
    expect([...session.marks]).toMatchObject([{ name: 'left edge', done: 4 }]);
  });

  it('are refused without a word in them', () => {
    const start = startSession(job);
    expect(faultOf(start, { do: 'note', text: ' ' })).toEqual({
      code: 'session/nothing-to-say',
      what: 'note',
    });
    expect(faultOf(start, { do: 'mark', name: '' })).toEqual({
      code: 'session/nothing-to-say',
      what: 'mark',
    });
  });
});

describe('what the scales show of a yarn', () => {
  const weighed = jobOf({
    ...stripedBrief(20, 24, 60),
    yarns: {
      plum: { colour: '#6b2d5c', metresPer100g: 190, grams: 60 },
      mint: { colour: '#9fd8c2', metresPer100g: 190 },
    },
  });
  const weigh = (yarn: string, grams: number) =>
    updateSession(startSession(weighed), { do: 'weigh', yarn, grams });

  it('takes the place of what they showed before', () => {
    const once = valueIn(weigh('plum', 50));
    const twice = valueIn(updateSession(once, { do: 'weigh', yarn: 'plum', grams: 0 }));
    expect([...twice.weighed]).toEqual([['plum', { grams: 0, done: 0 }]]);
  });

  it.each([
    ['teal', 5, { code: 'weigh/no-such-yarn', known: ['plum', 'mint'] }],
    ['mint', -1, { code: 'weigh/not-a-weight' }],
    ['mint', Number.NaN, { code: 'weigh/not-a-weight' }],
    ['mint', Number.POSITIVE_INFINITY, { code: 'weigh/not-a-weight' }],
    ['plum', 61, { code: 'weigh/more-than-before', haveGrams: 60 }],
  ])('is refused: %s, %d g', (yarn, grams, fault) => {
    expect(faultIn(weigh(yarn, grams))).toMatchObject({ yarn, ...fault });
  });

  it('may be all that there was, and any weight of a yarn that was not weighed before', () => {
    expect(valueIn(weigh('plum', 60)).weighed.get('plum')).toEqual({ grams: 60, done: 0 });
    expect(valueIn(weigh('mint', 999)).weighed.get('mint')).toEqual({ grams: 999, done: 0 });
  });
});

describe('another name', () => {
  it('is what the bag is called from then on, without the blanks around it', () => {
    expect(having({ do: 'rename', name: ' Die bag ' }).name).toBe('Die bag');
    expect(having({ do: 'rename', name: 'x'.repeat(200) }).name).toHaveLength(200);
  });

  it.each(['', '  ', 'x'.repeat(201)])('is refused where it is %j', (name) => {
    expect(faultOf(startSession(job), { do: 'rename', name })).toEqual({
      code: 'session/not-a-name',
      most: 200,
    });
  });
});

describe('planning again', () => {
  const replanned = (changes: object) =>
    having({ do: 'confirm', count: 40 }, { do: 'replan', ...unchanged, ...changes }).job.plan;

  it('takes stitch and row as they were measured', () => {
    const { gauge } = replanned({ stitchMm: 5.1, rowMm: 3.3 });
    expect([gauge.stitchMm, gauge.rowMm]).toEqual([5.1, 3.3]);
  });

  it('puts one yarn in the place of another, a new one with what is told of it', () => {
    const { stripes, brief } = replanned({ from: 'mint', to: 'sand', colour: '#d8c49a', metresPer100g: 190 });
    expect(stripes.at(-1)?.yarn).toBe('sand');
    expect(brief.yarns.get('sand')).toEqual({
      colour: '#d8c49a',
      metresPer100g: 190,
      grams: null,
      pricePer100g: null,
    });
  });

  it('makes the cord of another yarn, a new one with what is told of it', () => {
    expect(replanned({ cord: 'mint' }).cord.yarn).toBe('mint');
    const { cord, brief } = replanned({ cord: 'sand', colour: '#d8c49a', metresPer100g: 190 });
    expect(cord.yarn).toBe('sand');
    expect(brief.yarns.get('sand')).toMatchObject({ colour: '#d8c49a', metresPer100g: 190 });
  });

  it('tells once of a yarn that is new to the stripes and the cord', () => {
    const sand = { colour: '#d8c49a', metresPer100g: 190 };
    const { cord, stripes, brief } = replanned({ from: 'mint', to: 'sand', cord: 'sand', ...sand });
    expect([cord.yarn, stripes.at(-1)?.yarn]).toEqual(['sand', 'sand']);
    expect([...brief.yarns.keys()]).toEqual(['plum', 'mint', 'sand']);
  });

  it('is refused where a yarn would meet itself', () => {
    const command = { do: 'replan', ...unchanged, from: 'mint', to: 'plum' } as const;
    expect(faultOf(having({ do: 'confirm', count: 40 }), command)).toMatchObject({
      code: 'replan/colours-meet',
    });
  });
});

describe('taking back after a very long time', () => {
  it('reaches thousands of commands back, and lets go of what lies before them', () => {
    let session = startSession(job);
    const places: number[] = [];
    let most = 0;
    const carryOut = (command: Command): boolean => {
      const next = updateSession(session, command);
      if (next.ok) session = next.value;
      return next.ok;
    };
    // Just after the older half has been let go of, when fewest are left.
    for (let i = 0; i < 2 * leastPlaces + 3; i++) {
      places.push(session.done);
      carryOut({ do: 'go', done: (session.done + 7) % stepCount });
      most = Math.max(most, session.takeBack?.count ?? 0);
    }
    expect(most).toBeLessThan(2 * leastPlaces);
    const back: number[] = [];
    while (carryOut({ do: 'back' })) back.push(session.done);
    expect(back.length).toBeGreaterThanOrEqual(leastPlaces);
    expect(back.length).toBeLessThan(leastPlaces + 10);
    expect(back).toEqual(places.slice(-back.length).toReversed());
  });
});
