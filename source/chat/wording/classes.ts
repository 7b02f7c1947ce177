import type { YarnClass } from '../../planning/yarn-class.ts';
import { formatList } from './numbers.ts';

/** `light (3)` */
export const nameClass = ({ number, name }: YarnClass): string => `${name} (${number})`;

/** `fine (2), light (3) or medium (4)` */
export const nameClasses = (classes: readonly YarnClass[]): string =>
  formatList(classes.map(nameClass), 'or');
