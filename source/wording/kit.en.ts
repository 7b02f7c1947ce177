import type { Kit } from '../planning/kit.ts';
import type { Amounts } from './amounts.ts';

export const kit = ({ list, yarnNeeded, massNeeded, lengthNeeded }: Amounts) => ({
  tools: ({ prongs, hasComb, clips }: Kit) =>
    `Tools: ${list([
      `transfer tool with ${prongs === 1 ? '1 prong' : `${prongs} prongs`}`,
      ...(hasComb ? ['cast-on comb'] : []),
      '2 claw weights and a small one',
      `${clips} yarn clips`,
      'latch tool',
      'blunt needle',
      'scissors',
      'tape measure',
    ])}.`,
  ravelCord: ({ ravelCordCm }: Kit) =>
    ravelCordCm === null ? '' : `Also ${lengthNeeded(ravelCordCm)} of smooth ravel cord.`,
  materials: ({ yarns, ravelCordCm }: Kit) =>
    `Materials: ${list([
      ...yarns.map(({ yarn, metres, grams }) =>
        grams === null
          ? `${yarnNeeded(metres)} of ${yarn === 'waste' ? 'waste yarn' : `${yarn}, the waste yarn`}`
          : `${yarnNeeded(metres)} of ${yarn} (${massNeeded(grams)} with its reserve)`,
      ),
      ...(ravelCordCm === null ? [] : [`${lengthNeeded(ravelCordCm)} of smooth ravel cord`]),
    ])}.`,
});

export type KitWords = ReturnType<typeof kit>;
