import type { YarnClass } from '../../planning/yarn-class.ts';
import { formatChoice, say } from '../../shared/say.ts';

/** `light (3)` */
export const nameClass = ({ number, name }: YarnClass): string => say`${name} (${number})`;

/** `fine (2), light (3) or medium (4)` */
export const nameClasses = (classes: readonly YarnClass[]): string => formatChoice(classes.map(nameClass));
