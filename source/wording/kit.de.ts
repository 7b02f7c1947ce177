import type { Amounts } from './amounts.ts';
import type { KitWords } from './kit.en.ts';

export const kit = ({ list, yarnNeeded, massNeeded, lengthNeeded }: Amounts): KitWords => ({
  tools: ({ prongs, hasComb, clips }) =>
    `Werkzeug: ${list([
      `${prongs}er-Decker`,
      ...(hasComb ? ['Anschlagkamm'] : []),
      '2 Krallengewichte und ein kleines',
      `${clips} Garnklammern`,
      'Zungennadel am Griff',
      'stumpfe Nadel',
      'Schere',
      'Maßband',
    ])}.`,
  ravelCord: ({ ravelCordCm }) =>
    ravelCordCm === null ? '' : `Dazu ${lengthNeeded(ravelCordCm)} glatter Trennfaden.`,
  materials: ({ yarns, ravelCordCm }) =>
    `Material: ${list([
      ...yarns.map(({ yarn, metres, grams }) =>
        grams === null
          ? `${yarnNeeded(metres)} ${yarn === 'waste' ? 'Hilfsgarn' : `${yarn} als Hilfsgarn`}`
          : `${yarnNeeded(metres)} ${yarn} (${massNeeded(grams)} mit Reserve)`,
      ),
      ...(ravelCordCm === null ? [] : [`${lengthNeeded(ravelCordCm)} glatter Trennfaden`]),
    ])}.`,
});
