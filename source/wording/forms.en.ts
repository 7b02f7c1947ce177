/** English words for values that several topics say. */
import { ravelCord, unnamedWaste } from '../planning/brief.ts';

/** A yarn by the name that the maker gave it; two have names of ours. */
export const yarnName = (yarn: string): string =>
  yarn === unnamedWaste ? 'waste yarn' : yarn === ravelCord ? 'ravel cord' : yarn;
/** As what something is done with. */
export const theYarn = (yarn: string): string =>
  yarn === unnamedWaste || yarn === ravelCord ? `the ${yarnName(yarn)}` : yarn;
