import type { YarnClass } from '../../planning/yarn-class.ts';
import type { Words } from '../../wording/words.ts';

/** `light (3)` */
export const nameClass = ({ number, name }: YarnClass, words: Words): string =>
  words.prompt.yarnClass(name, number);

/** `fine (2), light (3) or medium (4)` */
export const nameClasses = (classes: readonly YarnClass[], words: Words): string =>
  words.amounts.choice(classes.map((one) => nameClass(one, words)));
