import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readRecording } from '../../source/journal/read-log.ts';
import { layOutJob } from '../../source/steps/job.ts';
import { planOf } from '../fixtures/plan-of.ts';

const named = (ending: string): readonly string[] =>
  readdirSync('demo').filter((name) => name.endsWith(ending));

describe('what comes in demo/', () => {
  it.each(named('.json'))('%s gives a bag', (name) => {
    expect(layOutJob(planOf(readFileSync(`demo/${name}`, 'utf8'))).stepCount).toBeGreaterThan(80);
  });

  it.each(named('.jsonl'))('%s is a finished log that fits the steps of today', (name) => {
    const recording = readRecording(readFileSync(`demo/${name}`));
    expect(recording.ok ? recording.value.finished : recording.fault).toBe(true);
  });

  it('shows a bag that needs a rehang, one of three colours that crawls right, and a small one', () => {
    const plan = (name: string) => planOf(readFileSync(`demo/${name}.json`, 'utf8'));
    expect(plan('rulebook-bag').hangings.length).toBeGreaterThan(1);
    expect(plan('card-box-bag').brief).toMatchObject({ crawl: 'right' });
    expect(new Set(plan('card-box-bag').stripes.map((stripe) => stripe.yarn)).size).toBe(3);
    expect(plan('token-pouch').rows).toBeLessThan(20);
  });
});
