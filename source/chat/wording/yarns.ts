import { ravelCord } from '../../planning/brief.ts';
import { say } from '../../shared/say.ts';

/** A yarn by the name the maker gave it; two have names of ours. */
export function sayYarn(yarn: string): string {
  if (yarn === ravelCord) return say`ravel cord`;
  return yarn === 'waste' ? say`waste` : yarn;
}
