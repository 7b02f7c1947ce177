import { describe, expect, it } from 'vitest';
import { createStore } from './store.ts';

type Message = { readonly is: 'press' } | { readonly is: 'kept' };
type Effect = { readonly do: 'keep'; readonly first: true } | { readonly do: 'ring'; readonly first?: never };
interface State {
  readonly presses: number;
  readonly kept: number;
}

function openStore(keep: (send: (message: Message) => void) => void) {
  const order: string[] = [];
  const store = createStore<State, Message, Effect>(
    { presses: 0, kept: 0 },
    (state, message) =>
      message.is === 'press'
        ? [{ ...state, presses: state.presses + 1 }, [{ do: 'ring' }, { do: 'keep', first: true }]]
        : [{ ...state, kept: state.kept + 1 }, []],
    {
      keep: (_, send) => {
        order.push('keep');
        keep(send);
      },
      ring: () => void order.push('ring'),
    },
  );
  store.subscribe(() => {
    const { presses, kept } = store.get();
    order.push(`shown ${presses} ${kept}`);
  });
  return { store, order };
}

describe('a store', () => {
  it('keeps first, shows what came of it at once, and does the rest after that', () => {
    const { store, order } = openStore((send) => send({ is: 'kept' }));
    store.send({ is: 'press' });
    expect(order).toEqual(['keep', 'shown 1 1', 'ring']);
  });

  it('shows nothing of a press that could not be kept', () => {
    const { store, order } = openStore(() => {
      throw new Error('no log');
    });
    expect(() => store.send({ is: 'press' })).toThrow('no log');
    expect(store.get()).toEqual({ presses: 0, kept: 0 });
    expect(order).toEqual(['keep']);
  });
});
