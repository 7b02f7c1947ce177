/** A bench at work: its state outside React, and the machine that carries out what it wants done. */
import { createStore, type Effects } from '../parts/store.ts';
import type { BenchEffect, BenchMessage, BenchState, BenchStore } from './bench-state.ts';
import { updateBench } from './update-bench.ts';

export type BenchEffects = Effects<BenchState, BenchMessage, BenchEffect>;

export const createBenchStore = (first: BenchState, effects: BenchEffects): BenchStore =>
  createStore(first, updateBench, effects);
