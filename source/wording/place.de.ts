import type { Amounts } from './amounts.ts';
import type { PlaceWords } from './place.en.ts';

export const place = (_: Amounts): PlaceWords => ({});
