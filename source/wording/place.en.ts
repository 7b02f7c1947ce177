import type { Amounts } from './amounts.ts';

export const place = (_: Amounts) => ({});

export type PlaceWords = ReturnType<typeof place>;
