/** Invented bags for the drawings: the four of the demo, and variations on the dice bag. */
import { readFileSync } from 'node:fs';
import type { Plan } from '../../source/planning/plan.ts';
import { planOf } from '../fixtures/plan-of.ts';

export const demoNames = ['dice-bag', 'card-box-bag', 'rulebook-bag', 'token-pouch'] as const;

export const demoPlan = (name: (typeof demoNames)[number]): Plan =>
  planOf(readFileSync(`demo/${name}.json`, 'utf8'));

/** The dice bag with some of its brief changed. */
export function diceBagWith(change: Record<string, unknown>): Plan {
  return planOf({ ...JSON.parse(readFileSync('demo/dice-bag.json', 'utf8')), ...change });
}

/** The dice bag in stripes of two other colours. */
export const twoColours = (first: string, second: string): Plan =>
  diceBagWith({
    yarns: {
      plum: { colour: first, metresPer100g: 190, grams: 60 },
      mint: { colour: second, metresPer100g: 190, grams: 45 },
    },
  });

const longName = `${'Grandmaster’s very roomy bag for dice, cards & counters '.repeat(4)}`.slice(0, 200);

/** Names that try to break out, run the other way, or do not end. */
export const hostileNames: Readonly<Record<string, string>> = {
  quotes: `"Dice" 'bag' \`x\` \${y}`,
  markup: '</title></style><script>window.hurt = 1</script><img src=x onerror="window.hurt=1">& <b>',
  emoji: 'Dice 🎲 bag 👩‍👩‍👧 🏴󠁧󠁢󠁳󠁣󠁴󠁿 ⚠️',
  'right to left': 'حقيبة نرد (שקית) 12',
  override: 'safe\u202Egnp.exe\u2066\u202D',
  control: 'a\u0000b\u001b[31mc\u0007d\ne',
  long: longName,
  'one long word': 'W'.repeat(200),
  markdown: '# *bag* | _x_ [a](http://b.example) ![c](d) <i> `code` www.e.example f@g.example $x$',
};

/** The plan with one yarn called something that no brief would let through. */
export function renameYarn(plan: Plan, from: string, to: string): Plan {
  const renamed = (yarn: string): string => (yarn === from ? to : yarn);
  const { brief } = plan;
  return {
    ...plan,
    brief: {
      ...brief,
      yarns: new Map([...brief.yarns].map(([name, yarn]) => [renamed(name), yarn])),
      stripes: brief.stripes.map((stripe) => ({ ...stripe, yarn: renamed(stripe.yarn) })),
      cord: { ...brief.cord, yarn: renamed(brief.cord.yarn) },
    },
    stripes: plan.stripes.map((stripe) => ({ ...stripe, yarn: renamed(stripe.yarn) })),
    yarn: plan.yarn.map((need) => ({ ...need, yarn: renamed(need.yarn) })),
    cord: { ...plan.cord, yarn: renamed(plan.cord.yarn) },
  };
}
