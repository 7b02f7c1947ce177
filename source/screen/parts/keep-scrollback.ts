const clearScrollback = '\x1b[3J';

/**
 * Output that never clears what has scrolled away. Ink does that when a window is made lower than what it drew last; all
 * that stood above is the viewer's own.
 */
export const keepScrollback = (output: NodeJS.WriteStream): NodeJS.WriteStream =>
  new Proxy(output, {
    get: (target, name) => {
      if (name === 'write') {
        return (text: string, ...rest: readonly unknown[]) =>
          Reflect.apply(target.write, target, [text.replaceAll(clearScrollback, ''), ...rest]);
      }
      const value = Reflect.get(target, name, target);
      return typeof value === 'function' ? value.bind(target) : value;
    },
  });
