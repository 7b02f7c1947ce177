import { sayPedals, sayPedalsForgotten, sayPressNow, saySet } from '../../chat/wording/settings.ts';
import type { PedalAct, SettingChange } from '../../settings/settings.ts';
import type { BenchState, BenchStoreOptions } from './bench-state.ts';

interface BenchSettingsOptions extends Pick<BenchStoreOptions, 'keep' | 'speakIn'> {
  readonly get: () => BenchState;
  readonly publish: (next: Partial<BenchState>) => void;
  readonly tell: (...texts: readonly string[]) => void;
  /** Says the step again, or falls silent in the middle of it. */
  readonly announceAgain: () => void;
}

/** The settings of a bench, and its foot switches among them. */
export function createBenchSettings(options: BenchSettingsOptions) {
  const { get, publish, tell, announceAgain, keep, speakIn } = options;

  const set = (change: SettingChange): void => {
    publish({ settings: { ...get().settings, [change.name]: change.value } });
    keep?.(change);
  };

  /** What is said of it is in the language that was just chosen, which may have to be loaded. */
  const setAndTell = async (change: SettingChange): Promise<void> => {
    if (change.name === 'language') await speakIn?.(change.value);
    set(change);
    tell(saySet(change));
    if (change.name === 'speech') announceAgain();
  };

  const beginPedal = (act: PedalAct | 'off' | null): void => {
    const { settings } = get();
    if (act === null && Object.keys(settings.pedals).length > 0) return tell(sayPedals(settings));
    if (act === 'off') {
      set({ name: 'pedals', value: {} });
      return tell(sayPedalsForgotten());
    }
    publish({ assigning: act ?? 'confirm' });
    tell(sayPressNow(act ?? 'confirm'));
  };

  return { set, setAndTell, beginPedal };
}
